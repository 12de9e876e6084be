package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Signing;
import picocli.CommandLine.Help.Ansi;

/** {@code key} and {@code verify} as they are typed. */
class VerifyCommandTest {

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    private String found(String form) {
        Matcher matcher = Pattern.compile(form).matcher(out.toString());
        assertThat(matcher.find()).as(out.toString()).isTrue();
        return matcher.group(1);
    }

    @Test
    void makesAKeySignsWithItAndVerifies() throws Exception {
        Path key = folder.resolve("our key");
        assertThat(run("key", key.toString())).isZero();
        String fingerprint = found("(?:\\b)([0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4})\\b");
        String publicKey = found("(?m)^public-key: ([A-Za-z0-9+/]{43}=)$");
        assertThat(run("key", key.toString())).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(err.toString()).contains("exists already");

        assertThat(run("pack", "demo-jobs/hut-seventeen", "--to", folder.toString()))
                .isZero();
        Path pack;
        try (var packs = Files.newDirectoryStream(folder, Files::isDirectory)) {
            pack = packs.iterator().next();
        }
        assertThat(run("verify", pack.toString())).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString()).contains("issue.sig: missing", "not signed", "NOT as issued");
        assertThat(run("key", pack.resolve("key").toString())).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(pack.resolve("key")).doesNotExist();

        byte[] manifest = Files.readAllBytes(pack.resolve("issue.json"));
        Files.write(pack.resolve("issue.sig"), Signing.sign(manifest, PrivateKeyFile.read(key, () -> new char[0])));
        assertThat(run("verify", pack.toString())).isZero();
        assertThat(out.toString()).contains("No key was given", fingerprint);
        for (String given : new String[] {publicKey, key + ".pub"}) {
            assertThat(run("verify", pack.toString(), "--key", given)).isZero();
            assertThat(out.toString())
                    .contains("as issued, and signed with the key given", fingerprint)
                    .doesNotContain("No key was given");
        }

        Files.writeString(pack.resolve("guide.pdf"), "%", StandardOpenOption.APPEND);
        assertThat(run("verify", pack.toString(), "--key", publicKey)).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString()).contains("guide.pdf: altered since it was issued", "To look into: 1.");

        Path other = folder.resolve("other");
        assertThat(run("key", other.toString())).isZero();
        assertThat(run("verify", pack.toString(), "--key", other + ".pub")).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString()).contains("issue.sig: signed with key " + fingerprint);
    }

    @Test
    void tellsWhatCannotBeVerified() {
        assertThat(run("verify", folder.toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("is no pack, no site");
        assertThat(run("verify", folder.resolve("none").toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(run("verify", "http://records.example.org/x/")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("is no https address");
        assertThat(run("verify", folder.toString(), "--key", "AAAA=")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("no Ed25519 public key");
        assertThat(run(
                        "verify",
                        folder.toString(),
                        "--key",
                        folder.resolve("k.pub").toString()))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("cannot be read");
    }

    /** The profile's key is half of the possible numbers off: a slip of the pen is told before it is printed. */
    @Test
    void aKeyOfTheProfileThatIsNoneIsTold() throws Exception {
        Path job = Files.createDirectory(folder.resolve("job"));
        for (String file : new String[] {"job.yaml", "installer.yaml"}) {
            Files.copy(Path.of("demo-jobs/hut-seventeen", file), job.resolve(file));
        }
        Files.writeString(
                job.resolve("installer.yaml"),
                "public-key: AgAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA=\n",
                StandardOpenOption.APPEND);
        assertThat(run("check", job.toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("installer.yaml", "no Ed25519 public key");
    }
}
