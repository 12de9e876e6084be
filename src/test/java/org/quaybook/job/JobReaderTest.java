package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Severity;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.TimeSpan;

class JobReaderTest {

    private static final String FULL = JobFiles.text("full.yaml");

    @TempDir
    private Path folder;

    private Path jobFile;

    @BeforeEach
    void jobWithoutInstaller() throws IOException {
        Path jobs = Files.createDirectories(folder.resolve("firm/jobs"));
        jobFile = Files.writeString(jobs.resolve("job.yaml"), FULL);
    }

    @Test
    void fullJobIsRead() {
        JobReading reading = JobReader.read(JobFiles.FOLDER.resolve("full.yaml"), JobFiles.VOCABULARY);

        assertThat(reading.problems()).isEmpty();
        Job job = job(reading);
        assertThat(job.job().languages()).containsExactly("en-GB", "nl");
        assertThat(job.job().date()).isEqualTo(LocalDate.of(2026, 5, 14));
        assertThat(job.craft().kind()).isEqualTo(CraftKind.BOAT);
        assertThat(Given.isYes(job.craft().metalHull())).isTrue();
        assertThat(job.bank().block().fitted()).isEqualTo(YearMonth.of(2026, 4));
        assertThat(job.bank().temperature().known().orElseThrow().celsius()).isEqualTo(-2);
        assertThat(job.cables().get(0).fitted()).isNotNull();
        assertThat(Given.maybe(job.cables().get(0).fitted()).orElseThrow()).hasToString("2 × 70 mm²");
        assertThat(Given.maybe(job.cables().get(1).fitted()).orElseThrow()).hasToString("2/0 AWG");
        assertThat(job.cables().get(1).length().known().orElseThrow().metres()).isEqualTo(2.1336);
        assertThat(job.acCircuits().get(1).rcd()).isEqualTo("R1");
        Quantity tripped = Given.maybe(job.tests().get(0).result()).orElseThrow();
        assertThat(tripped).isEqualTo(new TimeSpan(0.021));
        assertThat(Given.maybe(job.tests().get(0).at())).contains(new Current(0.03));
        assertThat(reading.installer()).isNotNull();
    }

    /** Packs stand in folders of that name, and Windows has no such folders (its documentation of file names, from memory). */
    @ParameterizedTest
    @CsvSource({
        "CON, false",
        "nul.2, false",
        "Lpt1, false",
        "26-118., false",
        "., false",
        "CON-1, true",
        "COM10, true",
        "26.118, true",
        "7, true"
    })
    void aJobNumberNamesAFolderOnEverySystem(String number, boolean does) {
        assertThat(JobReader.parse(
                                FULL.replace("number: 26-118", "number: " + number), "full.yaml", JobFiles.VOCABULARY)
                        .problems())
                .hasSize(does ? 0 : 1);
    }

    @Test
    void everyKeyOfTheFormatIsInTheFullJob() {
        assertThat(Unused.in(Job.class, job(JobReader.parse(FULL, "full.yaml", JobFiles.VOCABULARY))))
                .isEmpty();
    }

    @Test
    void placesLeadToTheText() {
        Job job = job(JobReader.parse(FULL, "boat.yaml", JobFiles.VOCABULARY));
        String before = FULL.substring(0, FULL.indexOf("    capacity: "));
        assertThat(job.bank().block().capacity().place())
                .hasToString("boat.yaml:" + (before.lines().count() + 1) + ":15");
        assertThat(job.bank().block().capacity().place().path()).isEqualTo("bank.block.capacity");
        assertThat(job.cables().get(1).length().place().path()).isEqualTo("cables[1].length");
        long line = FULL.substring(0, FULL.indexOf("\ninverter:") + 2).lines().count();
        assertThat(job.inverter().place()).hasToString("boat.yaml:" + line + ":1");
    }

    @Test
    void problemsShowTheirLine() {
        Diagnostic problem = JobReader.parse(FULL.replace("series: 2", "series: 99"), "x", JobFiles.VOCABULARY)
                .problems()
                .get(0);
        assertThat(problem.excerpt()).isEqualTo("  series: 99");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "23.0 V | STATED | | ",
                "23.0 V (plate) | PLATE | | ",
                "23.0 V(told) | TOLD | | ",
                "23.0 V (measured, J. Fen) | MEASURED | J. Fen | ",
                "23.0 V (measured, J. Fen, 2026-05-13) | MEASURED | J. Fen | 2026-05-13",
                "23.0 V (assumed, 2026-05-13, J. Fen) | ASSUMED | J. Fen | 2026-05-13",
                "{ value: 23.0 V } | STATED | | ",
                "{ known: plate, value: 23000 mV, by: J. Fen, on: 2026-05-13 } | PLATE | J. Fen | 2026-05-13",
                "not seen | NOT_SEEN | | ",
                "{ known: not seen, by: J. Fen } | NOT_SEEN | J. Fen | "
            })
    void valuesCarryHowTheyAreKnown(String written, Provenance known, String by, LocalDate on) {
        JobReading reading = JobReader.parse(
                FULL.replace("  alarm: 23.0 V\n", "  alarm: " + written + "\n"), "x", JobFiles.VOCABULARY);
        assertThat(reading.problems()).isEmpty();
        var alarm = job(reading).inverter().alarm();
        assertThat(alarm.provenance()).isEqualTo(known);
        assertThat(alarm.by()).isEqualTo(by);
        assertThat(alarm.on()).isEqualTo(on);
        alarm.known().ifPresent(volts -> assertThat(volts.volts()).isEqualTo(23));
    }

    @Test
    void textsKeepTheirOwnBrackets() {
        Given<String> stack = job(JobReader.parse(FULL.replace("nut (plate)", "nut (M8)"), "x", JobFiles.VOCABULARY))
                .bank()
                .stack();
        assertThat(Given.maybe(stack)).contains("lug, flat washer (steel), spring washer, nut (M8)");
    }

    /** Conversions: 1 ft = 0.3048 m and 1 in = 0.0254 m exactly (NIST SP 811, from memory); 32 °F = 0 °C. */
    @ParameterizedTest
    @CsvSource({
        "35 cm, 0.35",
        "350mm, 0.35",
        "7 ft, 2.1336",
        "10 in, 0.254",
        "1 inch, 0.0254",
        "'0.30 m', 0.3",
        "'0.3\u00a0m', 0.3",
        "+0.3 m, 0.3"
    })
    void lengthsAreReadToTheLastDigit(String written, double metres) throws Refusal {
        assertThat(Scalars.read(org.quaybook.quantity.Length.class, written))
                .isEqualTo(new org.quaybook.quantity.Length(metres));
    }

    /**
     * NIST SP 811 Appendix B, from memory: 1 lbf·in is 0.112 984 8 N·m, 1 lbf·ft 1.355 818 N·m, 1 lb 0.453 592 37 kg, 1
     * ft³/min 4.719 474e-4 m³/s, 1 in² 6.4516e-4 m².
     */
    @ParameterizedTest
    @CsvSource({
        "Torque, 100 lbf·in, 11.29848",
        "Torque, 10 ft-lb, 13.55818",
        "Torque, 10 lbf ft, 13.55818",
        "Torque, 100 in-lb, 11.29848",
        "Mass, 100 lb, 45.359237",
        "AirFlow, 10 cfm, 16.9901064",
        "AirFlow, 10 ft3/min, 16.9901064",
        "Area, 10 sq in, 6451.6",
        "Area, 10 in², 6451.6"
    })
    void customaryUnitsAreRead(String kind, String written, double canonical) throws Exception {
        Class<?> quantity = Class.forName("org.quaybook.quantity." + kind);
        Quantity read = (Quantity) Scalars.read(quantity, written);
        assertThat(read.canonical()).isCloseTo(canonical, withinPercentage(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"50 °F, 10", "-40 F, -40", "\u22125 °C, -5", "5 degC, 5"})
    void temperaturesAreRead(String written, double celsius) throws Refusal {
        var read = (org.quaybook.quantity.Temperature) Scalars.read(org.quaybook.quantity.Temperature.class, written);
        assertThat(read.celsius()).isCloseTo(celsius, within(1e-9));
    }

    @Test
    void lineEndsAndByteOrderMarkDoNotMatter() {
        Job unix = job(JobReader.parse(FULL, "x", JobFiles.VOCABULARY));
        Job dos = job(JobReader.parse("\uFEFF" + FULL.replace("\n", "\r\n"), "x", JobFiles.VOCABULARY));
        assertThat(dos).isEqualTo(unix);
    }

    @ParameterizedTest
    @ValueSource(strings = {"installer.yaml", "../installer.yaml", "firm/we.yml"})
    void installerLiesNearTheJob(String path) throws IOException {
        Path profile = jobFile.resolveSibling(path);
        Files.createDirectories(Objects.requireNonNull(profile.getParent()));
        Files.writeString(profile, JobFiles.text("installer.yaml"));
        Files.writeString(jobFile, FULL.replace("installer: installer.yaml", "installer: " + path));

        JobReading reading = JobReader.read(jobFile, JobFiles.VOCABULARY);

        assertThat(reading.problems()).isEmpty();
        assertThat(Objects.requireNonNull(reading.installer()).place().file()).isEqualTo(profile.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../installer.yaml", "/tmp/installer.yaml", "a/../../../i.yaml", "C:\\i.yaml", "i.json"})
    void installerElsewhereIsNotRead(String path) throws IOException {
        Files.writeString(jobFile, FULL.replace("installer: installer.yaml", "installer: " + path));

        JobReading reading = JobReader.read(jobFile, JobFiles.VOCABULARY);

        assertThat(reading.problems()).extracting(Diagnostic::rule).containsExactly("job.bad-form");
        assertThat(reading.installer()).isNull();
    }

    @Test
    void bothFilesAreReportedInOneRun() throws IOException {
        Files.writeString(jobFile, FULL.replace("series: 2", "series: two"));
        Files.writeString(jobFile.resolveSibling("installer.yaml"), "firm: Marrow\n");

        List<Diagnostic> problems = JobReader.read(jobFile, JobFiles.VOCABULARY).problems();

        assertThat(problems).extracting(Diagnostic::rule).containsExactly("job.bad-whole-number", "job.missing-key");
        assertThat(problems.get(1).place().file()).endsWith("installer.yaml");
    }

    @Test
    void missingFilesAreReported() {
        assertThat(rules(jobFile)).containsExactly("job.file-missing");
        assertThat(rules(folder.resolve("nothing.yaml"))).containsExactly("job.file-missing");
        assertThat(rules(folder)).containsExactly("job.file-unreadable");
    }

    @Test
    void otherEncodingsAreReported() throws IOException {
        Files.write(jobFile, "craft: { name: Möwe }".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(rules(jobFile)).containsExactly("job.file-not-utf8");
    }

    @Test
    void hugeFilesAreNotRead() throws IOException {
        Files.writeString(jobFile, "#".repeat(JobReader.LARGEST_FILE));
        assertThat(rules(jobFile)).containsExactly("job.file-empty");
        Files.writeString(jobFile, "#".repeat(JobReader.LARGEST_FILE + 1));
        assertThat(rules(jobFile)).containsExactly("job.file-too-large");
    }

    @Test
    void refusalOfARecordIsReported() {
        Problems problems = new Problems("x", "odd: 7");
        YamlTree.read("odd: 7", problems)
                .ifPresent(root -> assertThat(new Binder(problems, new Found()).file(Even.class, root))
                        .isEmpty());
        assertThat(problems.sorted()).extracting(Diagnostic::rule).containsExactly("job.refused");
    }

    /** Whatever a file holds, reading ends with an answer: a job, or errors that say why there is none. */
    @Test
    void noDamageMakesReadingFail() {
        Random random = new Random(20260514);
        String scraps = "\n\n  -:[]{}'\"|>&*!#%@,.()0123456789 VAWmhns\u00e9\u202e\t";
        for (int i = 0; i < 500; i++) {
            StringBuilder text = new StringBuilder(FULL);
            for (int hits = 1 + random.nextInt(4); hits > 0; hits--) {
                int at = random.nextInt(text.length() - 30);
                int length = random.nextInt(30);
                String scrap = random.nextBoolean() ? "" : "" + scraps.charAt(random.nextInt(scraps.length()));
                text.replace(at, at + length, scrap);
            }
            JobReading reading = JobReader.parse(text.toString(), "damaged.yaml", JobFiles.VOCABULARY);
            assertThat(reading.job() == null)
                    .as("%s in %s", reading.problems(), text)
                    .isEqualTo(reading.problems().stream().anyMatch(it -> it.severity() == Severity.ERROR));
        }
    }

    /** A record of which only even numbers make one. */
    @Means("an even number")
    record Even(@Means("the number") Integer odd) {
        public Even {
            if (odd % 2 != 0) {
                throw new IllegalArgumentException(odd + " is odd");
            }
        }
    }

    private List<String> rules(Path file) {
        return JobReader.read(file, JobFiles.VOCABULARY).problems().stream()
                .map(Diagnostic::rule)
                .toList();
    }

    private static Job job(JobReading reading) {
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(reading.job());
    }
}
