package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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

    /** What lies in a folder, but for what the program remembers there. */
    private static long inside(Path folder) throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.filter(path -> !path.toString().endsWith(".made")).count();
        }
    }

    @Test
    void packsADemo() {
        assertThat(run("pack", BARGE, "--to", folder.toString())).isZero();
        assertThat(folder.resolve("26-118"))
                .isDirectoryContaining("glob:**/guide.pdf")
                .isDirectoryContaining("glob:**/labels.pdf")
                .isDirectoryContaining("glob:**/worksheet.pdf")
                .isDirectoryContaining("glob:**/record")
                .isDirectoryContaining("glob:**/figures.json")
                .isDirectoryContaining("glob:**/issue.json");
        assertThat(out.toString()).contains("may be handed over").contains("26-118");
        assertThat(err.toString()).isEmpty();
    }

    /** What it prints goes into the head of a job file as it is. */
    @Test
    void makesKeysForSealing() throws IOException {
        assertThat(run("seal-key")).isZero();
        String lines = out.toString().indent(2);
        Files.writeString(
                folder.resolve("job.yaml"),
                Files.readString(Path.of(BARGE, "job.yaml")).replace("  revision: 1\n", lines + "  revision: 1\n"));
        Files.copy(Path.of(BARGE, "installer.yaml"), folder.resolve("installer.yaml"));
        Files.copy(Path.of(BARGE, "logo.svg"), folder.resolve("logo.svg"));

        assertThat(lines).contains("sealed: yes", "seal-key: ");
        assertThat(run("check", folder.toString())).isZero();
    }

    @Test
    void packsSeveralAndGoesOnAfterABadOne() throws IOException {
        assertThat(run("pack", "demo-jobs/no-such-job", "demo-jobs/second-biscuit", "--to", folder.toString()))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(inside(folder)).isEqualTo(1);
        assertThat(err.toString()).contains("no-such-job");
    }

    /** SARIF 2.1.0 (OASIS): a run with its tool, each result with rule, level, message and place. */
    @Test
    void checksForEditors() throws IOException {
        assertThat(run("check", "--format", "sarif", BARGE, BARGE + "/as-found.yaml"))
                .isEqualTo(Exit.FORBIDDEN);
        JsonNode sarif = new ObjectMapper().readTree(out.toString());
        assertThat(sarif.path("version").asText()).isEqualTo("2.1.0");
        JsonNode run = sarif.path("runs").path(0);
        assertThat(run.path("tool").path("driver").path("name").asText()).isEqualTo("quaybook");
        List<String> rules = run.path("tool").path("driver").path("rules").findValuesAsText("id");
        @Nullable JsonNode cold = null;
        for (JsonNode result : run.path("results")) {
            assertThat(rules).contains(result.path("ruleId").asText());
            assertThat(result.path("level").asText()).isIn("error", "warning", "note");
            JsonNode region =
                    result.path("locations").path(0).path("physicalLocation").path("region");
            assertThat(region.path("startLine").asInt()).isPositive();
            cold = result.path("ruleId").asText().equals("cold-charge") ? result : cold;
        }
        assertThat(Objects.requireNonNull(cold).path("level").asText()).isEqualTo("error");
        assertThat(cold.path("locations")
                        .path(0)
                        .path("physicalLocation")
                        .path("artifactLocation")
                        .path("uri")
                        .asText())
                .isEqualTo(BARGE + "/as-found.yaml");
    }

    @Test
    void checksForPrograms() throws IOException {
        assertThat(run("check", "--format", "json", "demo-jobs/second-biscuit", "demo-jobs/no-such-job"))
                .isEqualTo(Exit.BAD_INPUT);
        JsonNode jobs = new ObjectMapper().readTree(out.toString()).path("jobs");
        assertThat(jobs).hasSize(2);
        assertThat(jobs.path(0).path("hand-over").asBoolean()).isTrue();
        assertThat(jobs.path(0).path("findings").findValuesAsText("check")).contains("supply-drop", "alarm-early");
        assertThat(jobs.path(1).path("calculated").asBoolean()).isFalse();
        assertThat(jobs.path(1).path("problems")).isNotEmpty();
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void writesTheWorksheetAloneWhileAFindingForbids() throws IOException {
        assertThat(run("pack", BARGE + "/as-found.yaml", "--to", folder.toString()))
                .isEqualTo(Exit.FORBIDDEN);
        assertThat(inside(folder)).isEqualTo(1);
        assertThat(folder).isDirectoryContaining("glob:**/26-118-as-found-worksheet.pdf");
        assertThat(err.toString()).contains("cold-charge").contains("must not be handed over");
    }

    @Test
    void writesTheSurveySheetWhileTheFiguresLackValues() throws IOException {
        String text =
                Files.readString(Path.of(BARGE, "job.yaml")).replace("length: 1.6 m (measured)", "length: not seen");
        Path job = Files.writeString(folder.resolve("job.yaml"), text);
        Files.copy(Path.of(BARGE, "installer.yaml"), folder.resolve("installer.yaml"));
        Files.copy(Path.of(BARGE, "logo.svg"), folder.resolve("logo.svg"));
        Path packs = folder.resolve("packs");
        assertThat(run("pack", job.toString(), "--to", packs.toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(packs).isDirectoryContaining("glob:**/26-118-worksheet.pdf");
        assertThat(inside(packs)).isEqualTo(1);
        assertThat(err.toString()).contains("cables[0].length", "survey sheet");
    }

    @Test
    void aFolderInTheWayOfTheWorksheetIsLeftAlone() throws IOException {
        Path inTheWay = Files.createDirectory(folder.resolve("26-118-as-found-worksheet.pdf"));
        assertThat(run("pack", BARGE + "/as-found.yaml", "--to", folder.toString()))
                .isEqualTo(Exit.NOT_WRITTEN);
        assertThat(inTheWay).isEmptyDirectory();
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

    /** 90 A and 0.12 V at handover are 1.33 mΩ; 60 A and 0.15 V are 2.5 mΩ (Ohm's law). */
    @Test
    void revisitNamesWhatHasMoved() {
        String visit = BARGE + "/visit.yaml";
        assertThat(run("revisit", BARGE, visit)).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString().replace('\u00a0', ' '))
                .contains(
                        "voltage drop, B1 and B2", "= 1.333 mΩ", "= 2.50 mΩ", "MOVED", "baseline-moved", "visit.yaml:8")
                .contains("not read again", "steady", "Moved: 1.");
    }

    @Test
    void revisitIsQuietWhenNothingMoved() throws IOException {
        Path visit = Files.writeString(
                folder.resolve("visit.yaml"),
                "{ job: 26-118, on: 2027-05-20, tests: [ { test: insulation, result: 45 Mohm } ] }");
        assertThat(run("revisit", BARGE, visit.toString())).isZero();
        assertThat(run("revisit", BARGE)).isZero();
        assertThat(out.toString()).contains("Nothing has moved.");
    }

    /** A slow RCD fails its limit (IEC 61008-1: 300 ms) even where the file of readings is all that says so. */
    @Test
    void revisitJudgesReadingsByTheirLimits() throws IOException {
        Path visit = Files.writeString(
                folder.resolve("visit.yaml"),
                "{ job: 26-118, on: 2027-05-20, tests: "
                        + "[ { test: rcd-trip, of: [R2], source: inverter, at: 30 mA, result: 310 ms } ] }");
        assertThat(run("revisit", BARGE, visit.toString())).isEqualTo(Exit.FORBIDDEN);
        assertThat(out.toString()).contains("rcd-slow");
    }

    @Test
    void revisitNamesBadReadings() throws IOException {
        Path visit = Files.writeString(folder.resolve("visit.yaml"), "{ job: 26-1, on: 2027-05-20, tests: [] }");
        assertThat(run("revisit", BARGE, visit.toString())).isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("visit.yaml:1:", "26-118");
        assertThat(run("revisit", BARGE, folder.resolve("none.yaml").toString()))
                .isEqualTo(Exit.BAD_INPUT);
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

    /** A job copied with the files that it names. */
    private Path copied(String demo) throws IOException {
        Path copy = Files.createDirectories(folder.resolve("copy"));
        try (Stream<Path> files = Files.list(Path.of(demo))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }

    @Test
    void watchingMakesThePackAgainWhenTheJobIsSaved() throws Exception {
        Path copy = copied("demo-jobs/second-biscuit");
        Path job = copy.resolve("job.yaml");
        Path packs = folder.resolve("packs");
        Thread watching = new Thread(() -> run("pack", "--watch", copy.toString(), "--to", packs.toString()));
        watching.start();
        try {
            awaitText(packs, "\"revision\" : 1");
            Files.writeString(job, Files.readString(job).replace("revision: 1", "revision: 2"));
            awaitText(packs, "\"revision\" : 2");
            Files.writeString(job, "broken");
            for (int i = 0; i < 300 && !err.toString().contains("job.yaml"); i++) {
                Thread.sleep(100);
            }
            assertThat(err.toString()).contains("job.yaml");
            assertThat(watching.isAlive()).isTrue();
        } finally {
            watching.interrupt();
            watching.join(10_000);
        }
        assertThat(watching.isAlive()).isFalse();
    }

    private static void awaitText(Path packs, String text) throws Exception {
        for (int i = 0; i < 600; i++) {
            try (Stream<Path> files = Files.exists(packs) ? Files.walk(packs, 2) : Stream.empty()) {
                Optional<Path> issue =
                        files.filter(file -> file.endsWith("issue.json")).findFirst();
                if (issue.isPresent() && Files.readString(issue.get()).contains(text)) {
                    return;
                }
            } catch (IOException | java.io.UncheckedIOException beingReplaced) {
                // The next look finds the new one.
            }
            Thread.sleep(100);
        }
        throw new AssertionError("no issue.json with " + text);
    }

    @Test
    void aTranslationThatChangesWhatIsFoundIsRefused() throws IOException {
        Path copy = copied("demo-jobs/second-biscuit");
        Path job = copy.resolve("job.yaml");
        Files.writeString(
                job, Files.readString(job).replace("nut = cosse, rondelle plate", "nut = rondelle plate, cosse"));
        assertThat(run("pack", copy.toString(), "--to", folder.resolve("packs").toString()))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("fr").contains("what is calculated or found");
        assertThat(folder.resolve("packs")).doesNotExist();
    }

    @Test
    void aFaultInOnesOwnTemplateIsNamedWithItsLine() throws IOException {
        Path own = Files.createDirectories(folder.resolve("own/guide"));
        Files.writeString(own.resolve("terms.ftlx"), "<p>\n${no.such.thing}</p>\n");
        assertThat(run(
                        "pack",
                        "demo-jobs/second-biscuit",
                        "--templates",
                        folder.resolve("own").toString(),
                        "--to",
                        folder.resolve("packs").toString()))
                .isEqualTo(Exit.BAD_INPUT);
        assertThat(err.toString()).contains("guide/terms.ftlx:2").contains("asks for no,");
    }

    /** A list cut short by a full disk must not pass for a whole one. */
    @Test
    void saysThatItsOutputWasLost() {
        PrintWriter full = new PrintWriter(new java.io.Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("No space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });
        assertThat(Main.run(full, new PrintWriter(err, true), Ansi.OFF, "stock"))
                .isEqualTo(Exit.NOT_WRITTEN);
        assertThat(err.toString()).contains("standard output");
    }

    @Test
    void saysWhyAFolderCannotBeWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("packs"), "a file");
        assertThat(run("pack", BARGE, "--to", file.toString())).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(err.toString())
                .contains("could not be written: " + file + " is in the way. What was there before is still there.");
        assertThat(file).hasContent("a file");
    }

    @Test
    void aTemplateThatCallsItselfIsOneMessage() throws IOException {
        Path own = Files.createDirectories(folder.resolve("templates"));
        Path card = Files.createDirectories(own.resolve("sheets")).resolve("quick-card.ftlx");
        Files.writeString(card, "<#macro round><@round/></#macro><@round/>");
        assertThat(run("pack", BARGE, "--to", folder.resolve("packs").toString(), "--templates", own.toString()))
                .isEqualTo(Exit.OUR_FAULT);
        assertThat(err.toString()).contains("nested too deeply");
        assertThat(err.toString().lines().count()).isLessThan(30);
        assertThat(folder.resolve("packs")).doesNotExist();
    }
}
