package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Help.Ansi;

/** From job to published, verified and withdrawn record on the command line. */
class RecordCommandTest {

    private static final String JOB = "demo-jobs/persimmon-tug";
    private static final String CODE = "NEG8KHQNYXPWTE8ST5FB9";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    private String at(String name) {
        return folder.resolve(name).toString();
    }

    @BeforeEach
    void key() {
        assertThat(run("key", at("key.pem"))).isZero();
    }

    @Test
    void publishesVerifiesAndWithdraws() throws IOException {
        assertThat(run("pack", JOB, "--to", at("packs"))).isZero();
        assertThat(run("record", at("packs"), "--to", at("site"), "--key", at("key.pem"), "--index", at("own")))
                .isZero();

        assertThat(out.toString()).contains("signed and published");
        assertThat(Files.readString(folder.resolve("own/index.html")))
                .contains("NEG8-KHQN-YXPW-TE8S-T5FB-9", "26-140", "Persimmon", "/" + CODE + "\"");
        assertThat(run("verify", at("site"), "--key", at("key.pem.pub"))).isZero();
        assertThat(run("verify", at("packs/26-140"), "--key", at("key.pem.pub")))
                .isZero();

        Files.writeString(folder.resolve("site/" + CODE + "/index.html"), "forged");
        assertThat(run("verify", at("site"), "--key", at("key.pem.pub"))).isEqualTo(Exit.FORBIDDEN);

        assertThat(run("record", at("packs"), "--to", at("site"), "--key", at("key.pem")))
                .isZero();
        assertThat(run("verify", at("site"), "--key", at("key.pem.pub"))).isZero();

        assertThat(run("withdraw", JOB, "--to", at("site"))).isZero();
        assertThat(Files.readString(folder.resolve("site/" + CODE + "/index.html")))
                .contains("This record has been withdrawn");
        assertThat(run("record", at("packs"), "--to", at("site"), "--key", at("key.pem")))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("its code is not used again");
    }

    @Test
    void refusesWhatItCannotPublish() throws IOException {
        Files.createDirectories(folder.resolve("empty"));
        assertThat(run("record", at("empty"), "--to", at("site"), "--key", at("key.pem")))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("record", at("nowhere"), "--to", at("site"), "--key", at("key.pem")))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("record", at("nowhere"), "--to", at("site"), "--key", at("no-key.pem")))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(run("record", at("nowhere"), "--to", at("site"), "--key", at("key.pem"), "--index", at("site/own")))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString())
                .contains(
                        "is no pack and holds none", "is no pack that can be published", "must not lie in the folder");
        assertThat(folder.resolve("site")).doesNotExist();
    }

    private void change(String from, String to) throws IOException {
        Path job = folder.resolve("job/job.yaml");
        String text = Files.readString(job);
        assertThat(text).contains(from);
        Files.writeString(job, text.replace(from, to));
    }

    private String printed(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        run(arguments);
        return out.toString() + err;
    }

    /** Two revisions from job to site, with a draft between, and what each step refuses. */
    @Test
    void aChangedJobGivesTheNextRevision() throws IOException {
        Files.createDirectories(folder.resolve("job"));
        for (String name : new String[] {"job.yaml", "installer.yaml"}) {
            Files.copy(Path.of(JOB, name), folder.resolve("job").resolve(name));
        }
        String[] pack = {"pack", at("job"), "--to", at("packs")};
        String[] publish = {"record", at("packs"), "--to", at("site"), "--key", at("key.pem")};
        assertThat(printed(pack)).contains("The pack is in").doesNotContain("changes.pdf");
        run(publish);
        byte[] issued = Files.readAllBytes(folder.resolve("packs/26-140/issue.json"));

        assertThat(printed(pack)).contains("has been issued and would be the same");

        change("reserve: 50 %", "reserve: 60 %");
        assertThat(printed(pack)).contains("Revision 1 of 2026-07-02 was issued", "Set revision 2");
        assertThat(Files.readAllBytes(folder.resolve("packs/26-140/issue.json")))
                .isEqualTo(issued);

        change("revision: 1", "revision: 3");
        assertThat(printed(pack)).contains("The job is of revision 3", "The next is revision 2");

        change("revision: 3", "revision: 2");
        assertThat(printed(pack))
                .contains(
                        "the one issued before lies beside it", "Battery: reserve", "Labels replaced:", "Chapters of");
        assertThat(Files.readAllBytes(folder.resolve("packs/26-140-revision-1/issue.json")))
                .isEqualTo(issued);
        assertThat(folder.resolve("packs/26-140/changes.pdf")).exists();
        String page = Files.readString(folder.resolve("packs/26-140/record/" + CODE + "/index.html"));
        assertThat(page).contains("What revision 2 changes", "href=\"revision-1/index.html\"");

        // A draft is replaced, and still compared with what was issued.
        assertThat(printed(pack)).contains("The pack is in", "Battery: reserve");
        assertThat(printed(publish)).contains("published as the next revision");
        assertThat(printed(publish)).contains("as an earlier revision", "nothing has changed");
        assertThat(run("verify", at("site"), "--key", at("key.pem.pub"))).isZero();
        assertThat(Files.readString(folder.resolve("site/" + CODE + "/index.html")))
                .isEqualTo(page);
        assertThat(folder.resolve("site/" + CODE + "/revision-1/index.html")).exists();
    }

    /** A sealed job from its first issue to its end: nothing of it is published readable, and nothing else is lost. */
    @Test
    void aSealedJobIsIssuedAgainAndWithdrawn() throws IOException {
        Files.createDirectories(folder.resolve("job"));
        for (String name : new String[] {"job.yaml", "installer.yaml"}) {
            Files.copy(Path.of(JOB, name), folder.resolve("job").resolve(name));
        }
        change("revision: 1\n", "revision: 1\n  sealed: yes\n  seal-key: 3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4\n");
        String[] pack = {"pack", at("job"), "--to", at("packs")};
        String[] publish = {"record", at("packs"), "--to", at("site"), "--key", at("key.pem"), "--index", at("own")};
        run(pack);
        assertThat(printed(publish)).contains("signed and published");
        assertThat(printed(publish)).contains("nothing has changed");
        assertThat(Files.readString(folder.resolve("own/index.html"))).contains("Persimmon", "/" + CODE + "\"");

        change("reserve: 50 %", "reserve: 60 %");
        change("revision: 1", "revision: 2");
        assertThat(printed(pack)).contains("Battery: reserve", "Labels replaced:", "Chapters of");
        assertThat(folder.resolve("packs/26-140/changes.pdf")).exists();
        assertThat(Files.readString(folder.resolve("packs/26-140/unsealed/record.html")))
                .contains("What revision 2 changes", "Battery: reserve");
        assertThat(printed(publish)).contains("published as the next revision");
        assertThat(run("verify", at("site"), "--key", at("key.pem.pub"))).isZero();
        assertThat(run("verify", at("packs/26-140"), "--key", at("key.pem.pub")))
                .isZero();
        assertThat(folder.resolve("site/" + CODE + "/revision-1/record.html.sealed"))
                .exists();
        assertThat(Files.readString(folder.resolve("site/" + CODE + "/index.html")))
                .contains("revision-1/index.html")
                .doesNotContain("Persimmon");

        assertThat(run("withdraw", at("job"), "--to", at("site"))).isZero();
        try (Stream<Path> left = Files.list(folder.resolve("site/" + CODE))) {
            assertThat(left.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("index.html", "withdrawn");
        }
    }
}
