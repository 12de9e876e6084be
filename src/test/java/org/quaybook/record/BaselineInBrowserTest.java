package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Check;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.figures.BaselineRule.Form;
import org.quaybook.figures.Figures;
import org.quaybook.job.Job;
import org.quaybook.job.JobReader;
import org.quaybook.job.ReadingsReading;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.text.Words;

/**
 * Readings typed into the record page are judged as {@code revisit} judges them, in a real browser. The rules themselves are
 * common practice, no source; DriftTest and BaselineFiguresTest hold them to Ohm's and Joule's laws.
 */
class BaselineInBrowserTest {

    /** Everything that a visit can compare, read at 90 A and 19 °C. */
    private static final String HANDOVER = """
            tests:
              - { test: rest-voltage, result: 26.60 V, on: 2026-05-13 }
              - { test: bank-drop, at: 90 A, result: 0.30 V, on: 2026-05-13 }
              - { test: joint-drop, of: [bank, B1], at: 90 A, result: 9 mV, on: 2026-05-13 }
              - { test: joint-temperature, of: [F1], at: 90 A, result: 38 °C, ambient: 19 °C, on: 2026-05-13 }
              - { test: inverter-voltage, at: 90 A, result: 26.10 V, on: 2026-05-13 }
              - { test: neutral-bond, result: 0.30 Ω, on: 2026-05-13 }
            """;

    private static final Set<Check> BEYOND =
            Set.of(Check.RCD_SLOW, Check.INSULATION_LOW, Check.JOINT_HIGH, Check.JOINT_HOT);

    /** ISO 13297:2020 6.8 and IEC 60364-6 6.4.3.2, limits from common practice (from memory). */
    private static final double MOST_OHMS = 1;

    private static Phone phone;

    @TempDir
    static Path folder;

    private static Demos demo;

    @BeforeAll
    static void start() throws IOException {
        phone = new Phone();
        demo = Demos.changed("lantern-moth", folder, Map.of("tests:\n", HANDOVER));
        for (Map.Entry<String, byte[]> file : demo.site().entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    @AfterAll
    static void stop() {
        if (phone != null) {
            phone.close();
        }
    }

    @BeforeEach
    void open() {
        open(360, 640);
    }

    @AfterEach
    void scripts() {
        phone.javaScript(true);
    }

    private static void open(int width, int height) {
        phone.open("about:blank", width, height);
        phone.open(page("index.html"), width, height);
    }

    private static String page(String name) {
        return folder.resolve(demo.code()).resolve(name).toUri().toString();
    }

    private static List<Item> items() {
        return demo.assessment().figures().baseline().items();
    }

    private static int row(TestKind kind) {
        for (int i = 0; i < items().size(); i++) {
            if (items().get(i).kind() == kind && items().get(i).rule().isPresent()) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(kind + " was not read");
    }

    private static void enter(TestKind kind, String field, String text) {
        phone.enter("baseline-" + row(kind) + "-" + field + "-typed", text);
    }

    private static String verdict(TestKind kind) {
        return phone.attributes("tbody:has(#baseline-" + row(kind) + ") .verdict", "data-verdict")
                .get(0);
    }

    private static String subject(TestKind kind) {
        return Words.of("en-GB").say(items().get(row(kind) - 1).subject());
    }

    private static String said() {
        return phone.text().replaceAll("[\\s\u00A0\u202F]+", " ");
    }

    private static String unit(TestKind kind) {
        return switch (kind) {
            case JOINT_DROP -> "mV";
            case RCD_TRIP -> "ms";
            case LEAKAGE -> "mA";
            case INSULATION -> "MΩ";
            case EARTH_CONTINUITY, NEUTRAL_BOND -> "Ω";
            case JOINT_TEMPERATURE -> "°C";
            default -> "V";
        };
    }

    /** What a meter shows if what it measures is so many times that of the handover, at a load and in air of 24 °C. */
    private static double reading(Item item, double times, double load) {
        double first = item.first().orElseThrow().reading().canonical();
        double amperes = load / 90;
        return switch (item.rule().orElseThrow().form()) {
            case DROP -> first * times * amperes;
            case BEHIND -> 26.6 - 0.5 * times * amperes;
            case RISE -> 24 + 19 * times * amperes * amperes;
            case AS_READ -> item.kind() == TestKind.REST_VOLTAGE ? 26.6 + 0.2 * (times - 1) : first * times;
        };
    }

    private static String number(Item item, double value) {
        double factor = item.first()
                .orElseThrow()
                .reading()
                .kind()
                .unit(unit(item.kind()))
                .orElseThrow()
                .factor();
        return String.format(Locale.ROOT, "%.7f", value / factor);
    }

    /** A later visit that reads everything again; the rest voltage as at handover unless it is what is looked at. */
    private static Map<Integer, String> visit(double times, double load, boolean rest) {
        Map<Integer, String> typed = new LinkedHashMap<>();
        for (int i = 0; i < items().size(); i++) {
            Item item = items().get(i);
            if (item.rule().isPresent()) {
                double factor = item.kind() == TestKind.REST_VOLTAGE && !rest ? 1 : times;
                typed.put(i, number(item, reading(item, factor, load)));
            }
        }
        return typed;
    }

    private static List<TestResult> tests(Map<Integer, String> typed, double load) {
        StringBuilder text = new StringBuilder("job: 26-118\non: 2027-05-20\ntests:\n");
        typed.forEach((i, number) -> {
            Item item = items().get(i);
            text.append("  - { test: ")
                    .append(item.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                    .append(", of: ")
                    .append(item.of());
            item.source()
                    .ifPresent(source ->
                            text.append(", source: ").append(source.name().toLowerCase(Locale.ROOT)));
            boolean loaded = item.rule().orElseThrow().form() != Form.AS_READ;
            if (loaded) {
                text.append(", at: ").append(load).append(" A");
            } else if (item.kind() == TestKind.RCD_TRIP) {
                text.append(", at: 30 mA");
            }
            if (item.rule().orElseThrow().form() == Form.RISE) {
                text.append(", ambient: 24 °C");
            }
            text.append(", result: ")
                    .append(number)
                    .append(' ')
                    .append(unit(item.kind()))
                    .append(" }\n");
        });
        ReadingsReading reading = JobReader.parseReadings(text.toString(), "visit.yaml", demo.job());
        assertThat(reading.problems()).as(text.toString()).isEmpty();
        return Objects.requireNonNull(reading.readings()).tests();
    }

    /** What the program says of each number of a visit. */
    private static List<String> judged(Map<Integer, String> typed, double load) {
        Job later = demo.job().with(tests(typed, load));
        Figures figures = Objects.requireNonNull(
                Figures.of(later, demo.assessment().tables()).figures());
        Assessment it = Assessment.of(
                later, demo.assessment().installer(), figures, demo.assessment().tables());
        return typed.keySet().stream()
                .map(i -> figures.baseline().items().get(i))
                .map(item -> beyond(item, it)
                        ? "beyond"
                        : item.judgement().orElseThrow().name().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static boolean beyond(Item item, Assessment it) {
        TestResult latest = item.latest().orElseThrow().test();
        boolean ohms = item.kind() == TestKind.EARTH_CONTINUITY || item.kind() == TestKind.NEUTRAL_BOND;
        return (ohms && item.latest().orElseThrow().reading().canonical() > MOST_OHMS)
                || it.findings().stream()
                        .anyMatch(finding -> BEYOND.contains(finding.check())
                                && finding.place().equals(latest.place()));
    }

    private static List<String> onThePage(Map<Integer, String> typed, double load, boolean comma) {
        Map<String, String> fields = new LinkedHashMap<>();
        typed.forEach((i, number) -> {
            String id = "baseline-" + (i + 1) + "-";
            fields.put(id + "reading-typed", comma ? number.replace('.', ',') : number);
            Form form = items().get(i).rule().orElseThrow().form();
            if (form != Form.AS_READ) {
                fields.put(id + "load-typed", load == 90 && comma ? "" : String.valueOf(load));
            }
            if (form == Form.RISE) {
                fields.put(id + "air-typed", "24");
            }
        });
        phone.enterAll(fields);
        return phone.attributes("tbody[data-baseline] .verdict", "data-verdict");
    }

    /** Thirteen sizes of change at four loads, each read by meter and typed: page and program say the same of all numbers. */
    @Test
    void judgesAsTheProgramDoes() {
        List<Double> sizes = List.of(0.02, 0.4, 0.5, 0.6, 0.9, 1.0, 1.2, 1.49, 1.5, 1.51, 2.5, 4.0, 20.0);
        Set<String> seen = new TreeSet<>();
        boolean comma = false;
        for (double load : List.of(90.0, 120.0, 40.0, 4.0)) {
            for (double times : sizes) {
                for (boolean rest : List.of(false, true)) {
                    Map<Integer, String> typed = visit(times, load, rest);
                    comma = !comma;

                    List<String> program = judged(typed, load);

                    assertThat(onThePage(typed, load, comma))
                            .as("%s times at %s A: %s", times, load, typed)
                            .isEqualTo(program);
                    seen.addAll(program);
                }
            }
        }
        assertThat(seen).containsExactly("better", "beyond", "moved", "steady", "unclear");
    }

    /** Ohm's law: 0.12 V at 90 A are 1.33 mΩ; 0.10 V at 45 A are 2.22 mΩ, 1.67 times that. */
    @Test
    void namesTheRunThatMoved() {
        enter(TestKind.VOLTAGE_DROP, "reading", "0,10");
        assertThat(verdict(TestKind.VOLTAGE_DROP)).isEqualTo("steady");
        assertThat(said()).contains("Nothing that can be told from these readings has moved.");

        enter(TestKind.VOLTAGE_DROP, "load", "45");

        assertThat(verdict(TestKind.VOLTAGE_DROP)).isEqualTo("moved");
        assertThat(said()).contains("Moved: voltage drop, B1 and B2.");

        enter(TestKind.JOINT_DROP, "reading", "0.1 V");
        assertThat(said())
                .contains("Beyond its limit: " + subject(TestKind.JOINT_DROP) + ". Moved: voltage drop, B1 and B2.");

        enter(TestKind.JOINT_DROP, "reading", "9.5");
        enter(TestKind.VOLTAGE_DROP, "reading", "");
        assertThat(said()).doesNotContain("Beyond its limit:", "Moved: voltage");
        assertThat(phone.requests()).containsExactly(page("index.html"));
        assertThat(phone.complaints()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.1.2", "twelve", "12 A", "1e3", "> 5"})
    void whatIsNoReadingIsToldAndNotJudged(String typed) {
        enter(TestKind.VOLTAGE_DROP, "reading", typed);

        assertThat(verdict(TestKind.VOLTAGE_DROP)).isEqualTo("number");
        assertThat(said()).contains("Not a number with a unit that fits").doesNotContain("Moved: voltage");
    }

    /** Meters that reach their end show "> 200 MΩ". Without the air beside a joint nothing can be told of its warmth. */
    @Test
    void knowsMetersAtTheirEndAndWhatIsMissing() {
        enter(TestKind.INSULATION, "reading", "> 200");
        assertThat(verdict(TestKind.INSULATION)).isEqualTo("steady");
        enter(TestKind.JOINT_TEMPERATURE, "reading", "60");
        assertThat(verdict(TestKind.JOINT_TEMPERATURE)).isEqualTo("unclear");
        enter(TestKind.JOINT_TEMPERATURE, "air", "19");
        assertThat(verdict(TestKind.JOINT_TEMPERATURE)).isEqualTo("beyond");
        enter(TestKind.INVERTER_VOLTAGE, "reading", "25.0");
        assertThat(verdict(TestKind.INVERTER_VOLTAGE)).isEqualTo("unclear");
        enter(TestKind.REST_VOLTAGE, "reading", "26,6");
        assertThat(verdict(TestKind.INVERTER_VOLTAGE)).isEqualTo("moved");
    }

    @ParameterizedTest
    @ValueSource(ints = {320, 360, 1280})
    void fitsAndIsReadByEverybody(int width) {
        open(width, 800);
        enter(TestKind.JOINT_DROP, "reading", "100");

        assertThat(phone.wider()).isEmpty();
        assertThat(phone.barriers()).as("against WCAG 2.2 AA, by axe-core").isEmpty();
        assertThat(phone.leastSide(".fields input")).isGreaterThanOrEqualTo(44);
    }

    /** Without scripts, and on paper, blanks stand beside the handover and from where on each has moved: 1.5 times 0.12 V. */
    @Test
    void isATableToWriteOnWithoutScripts() throws IOException {
        phone.javaScript(false);
        open(360, 640);

        assertThat(said())
                .contains("Write your readings beside those of the handover and compare by hand.")
                .containsPattern("0\\.12 V at 90 A expected [0-9.]+ V from 0\\.18 V up")
                .contains("48 MΩ from 10 MΩ down")
                .containsPattern("38 °C at 90 A expected [0-9.]+ °C from 47(\\.5)? °C up")
                .doesNotContain("Type what you read");
        assertThat(phone.attributes("table.baseline input", "id")).isEmpty();
        assertThat(phone.wider()).isEmpty();
        try (PDDocument paper = Loader.loadPDF(phone.print())) {
            assertThat(new PDFTextStripper().getText(paper).replaceAll("[\\s\u00A0]+", " "))
                    .contains("from 0.18 V up", "Reading, V Load, A");
        }
    }

    /** The file to keep compares, too. */
    @Test
    void comparesInTheSavedFile() {
        phone.open(page("record.html"), 360, 640);
        enter(TestKind.VOLTAGE_DROP, "reading", "0.3");

        assertThat(said()).contains("Moved: voltage drop, B1 and B2.");
        assertThat(phone.complaints()).isEmpty();
    }

    @Test
    void comparesInASealedRecordThatIsOpen(@TempDir Path apart) throws IOException {
        Demos sealed = Demos.sealed("lantern-moth", apart);
        try (Host host = new Host(sealed.sealedSite(List.of()))) {
            phone.open(host.address() + sealed.code() + "/#" + Demos.SEAL_KEY, 360, 640);
            phone.awaitText("Readings at a later visit");
            List<String> ids = new ArrayList<>(phone.attributes("tbody[data-baseline] th", "id"));
            int at = phone.attributes("tbody[data-baseline]", "data-name").indexOf("voltage drop, B1 and B2");

            phone.enter(ids.get(at) + "-reading-typed", "0,3");

            assertThat(said()).contains("Moved: voltage drop, B1 and B2.");
            assertThat(phone.complaints()).isEmpty();
            assertThat(phone.barriers()).isEmpty();
        }
    }

    /** Nothing heavier than what opens where there is hardly any signal: 100 kB. */
    @Test
    void staysLight() {
        assertThat(demo.site().entrySet().stream()
                        .filter(file -> file.getKey().matches(".*/index(-..)?\\.html"))
                        .map(file -> file.getValue().length)
                        .collect(Collectors.toList()))
                .isNotEmpty()
                .allMatch(size -> size < 100_000);
    }
}
