package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Help.Ansi;

/** Commands, what they print and their exit codes. */
class MainTest {

    private static final String BARGE = "demo-jobs/lantern-moth";

    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), Ansi.OFF, arguments);
    }

    private static long inside(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.count();
        }
    }

    @Test
    void packsADemo() {
        assertThat(run("pack", BARGE, "--to", folder.toString())).isZero();
        assertThat(folder.resolve("26-118"))
                .isDirectoryContaining("glob:**/guide.pdf")
                .isDirectoryContaining("glob:**/labels.pdf")
                .isDirectoryContaining("glob:**/record")
                .isDirectoryContaining("glob:**/figures.json")
                .isDirectoryContaining("glob:**/issue.json");
        assertThat(out.toString()).contains("may be handed over").contains("26-118");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void packsSeveralAndGoesOnAfterABadOne() throws IOException {
        assertThat(run("pack", "demo-jobs/no-such-job", "demo-jobs/second-biscuit", "--to", folder.toString()))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(inside(folder)).isEqualTo(1);
        assertThat(err.toString()).contains("no-such-job");
    }

    @Test
    void writesNothingWhileAFindingForbids() throws IOException {
        assertThat(run("pack", BARGE + "/as-found.yaml", "--to", folder.toString()))
                .isEqualTo(Exit.FORBIDDEN);
        assertThat(inside(folder)).isZero();
        assertThat(err.toString()).contains("cold-charge").contains("must not be handed over");
    }

    @Test
    void checkPrintsFindingsWorstFirst() {
        assertThat(run("check", BARGE + "/as-found.yaml")).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString())
                .containsSubsequence(
                        "Forbids handing over",
                        "cold-charge",
                        "as-found.yaml:",
                        "Must be decided",
                        "left-on-take-over");
    }

    @Test
    void badInputNamesFileLineColumnAndTheLikelyWord() throws IOException {
        String text = Files.readString(Path.of(BARGE, "job.yaml")).replace("  reserve: 20 %", "  reserv: 20 %");
        Path bad = Files.writeString(folder.resolve("job.yaml"), text.replace("installer.yaml", "firm.yaml"));
        Files.copy(Path.of(BARGE, "installer.yaml"), folder.resolve("firm.yaml"));
        Files.copy(Path.of(BARGE, "logo.svg"), folder.resolve("logo.svg"));
        assertThat(run("check", bad.toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString())
                .contains("job.yaml:")
                .contains("reserv")
                .contains("reserve")
                .contains("^");
    }

    @Test
    void aPlaceThatCannotBeWrittenIsCode3() throws IOException {
        Path file = Files.writeString(folder.resolve("packs"), "a file");
        assertThat(run("pack", BARGE, "--to", file.toString())).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(file).hasContent("a file");
    }

    @Test
    void usageMistakesAreCode2() {
        assertThat(run()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run("pakc", BARGE)).isEqualTo(Exit.BAD_INPUT);
        assertThat(run("pack")).isEqualTo(Exit.BAD_INPUT);
        assertThat(run("pack", BARGE, "--templates", "no-such-folder")).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("no-such-folder");
    }

    @Test
    void explainListsFiguresAndWorksOneOut() {
        assertThat(run("explain", BARGE)).isZero();
        assertThat(out.toString()).contains("bank.capacity = 690").contains("inverter.worst-current = ");
        out.getBuffer().setLength(0);
        assertThat(run("explain", BARGE, "inverter.worst-current")).isZero();
        assertThat(out.toString())
                .containsSubsequence(
                        "I = P / U", "inverter.full-input", "inverter.continuous", "job.yaml:", "read off the plate");
        assertThat(run("explain", BARGE, "no.such.figure")).isEqualTo(Exit.BAD_INPUT);
    }

    @Test
    void schemaPrintsJson() {
        assertThat(run("schema")).isZero();
        assertThat(out.toString()).startsWith("{").contains("\"$schema\"").contains("take-off");
    }

    @Test
    void helpIsWorthReading() {
        assertThat(run("--help")).isZero();
        assertThat(out.toString())
                .contains("Exit codes:")
                .contains("Makes the handover pack of each job.")
                .contains("pack")
                .contains("check")
                .contains("schema");
        assertThat(run("pack", "--help")).isZero();
        assertThat(out.toString()).contains("--to").contains("job.yaml");
    }
}
