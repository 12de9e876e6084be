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

    /** The name of a file can hold what a terminal obeys: ECMA-48, 5.5 (ESC), 5.3 (CSI in one byte), from memory. */
    @Test
    void aHostileNameIsShownNotObeyed() throws Exception {
        Path pack = Files.createDirectory(folder.resolve("pack"));
        Files.writeString(pack.resolve("issue.json"), """
                {"program": "quaybook", "number": "1", "record": "81EZ-D3SW-FGV4-RK1Z-H0YD-Q", "revision": 1,
                 "date": "2026-05-14", "previous": null, "sha256": {"guide.pdf": "%s"}}
                """.formatted("0".repeat(64)));
        Files.writeString(pack.resolve("a\u001b[2J\u009b2J\u202e\npack: as issued"), "x");
        assertThat(run("verify", pack.toString())).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString())
                .contains("a<U+001B>[2J<U+009B>2J<U+202E><U+000A>")
                .doesNotContain("\u001b", "\u009b", "\u202e", "\npack: as issued");
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
