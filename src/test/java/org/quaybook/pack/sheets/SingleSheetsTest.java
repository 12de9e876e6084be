package org.quaybook.pack.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.checks.Assessment;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.figures.FuseFigures;
import org.quaybook.job.Given;
import org.quaybook.job.TestResult;
import org.quaybook.pack.guide.DemoJob;
import org.quaybook.pack.guide.PrintedGuide;
import org.quaybook.pack.guide.PrintedGuide.Letter;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The single sheets as they are printed. Sizes and limits without a named source are this project's own. */
class SingleSheetsTest {

    private static final String HARBOUR = "sheet-harbour.pdf";
    private static final String SURVEYOR = "sheet-surveyor.pdf";
    private static final String ELECTRICIAN = "sheet-electrician.pdf";

    private static final Words WORDS = DemoJob.WORDS;

    /** Of what may be long. */
    private static final List<String> HEADINGS = Stream.of(
                    "harbour.rcds",
                    "harbour.tests",
                    "surveyor.open",
                    "surveyor.scope",
                    "surveyor.ac",
                    "surveyor.tests",
                    "surveyor.policy",
                    "electrician.baseline",
                    "electrician.scope",
                    "electrician.changed")
            .map(key -> "sheets." + key)
            .toList();

    private static final Map<String, Map<String, PrintedGuide>> PRINTED = new ConcurrentHashMap<>();

    private static Map<String, PrintedGuide> printed(String demo) {
        return PRINTED.computeIfAbsent(demo, name -> printed(DemoJob.of(name)));
    }

    private static Map<String, PrintedGuide> printed(DemoJob demo) {
        Map<String, PrintedGuide> sheets = new ConcurrentHashMap<>();
        pdfs(demo).forEach((name, pdf) -> sheets.put(name, new PrintedGuide(pdf)));
        return sheets;
    }

    private static Map<String, byte[]> pdfs(DemoJob demo) {
        return SingleSheets.pdfs(demo.assessment(), WORDS, demo.branding(), Templates.builtIn());
    }

    private static PrintedGuide sheet(String demo, String sheet) {
        return Objects.requireNonNull(printed(demo).get(sheet));
    }

    /** What is read on a sheet, in the order of the file, so that a cell's lines stand together. */
    private static String text(PrintedGuide sheet) {
        try {
            return new org.apache.pdfbox.text.PDFTextStripper()
                    .getText(sheet.document())
                    .replaceAll("[\\s\u00a0]+", " ");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String text(String demo, String sheet) {
        return text(sheet(demo, sheet));
    }

    private static String word(Object value) {
        return WORDS.word(value).replace('\u00a0', ' ');
    }

    private static String word(Figure<?> figure) {
        return word(figure.stated());
    }

    private static Assessment it(String demo) {
        return DemoJob.of(demo).assessment();
    }

    /** For those who want to look at the pages. */
    @AfterAll
    static void keep() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "sheets"));
        for (String demo : PRINTED.keySet()) {
            for (Map.Entry<String, PrintedGuide> sheet : printed(demo).entrySet()) {
                Files.write(
                        folder.resolve(demo + "-" + sheet.getKey()),
                        sheet.getValue().bytes());
            }
        }
    }

    /** Only who has shore power plugs in. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void hasItsSheets(String demo) {
        List<String> sheets = new ArrayList<>(List.of(SURVEYOR, ELECTRICIAN));
        if (!demo.equals("hut-seventeen")) {
            sheets.add(HARBOUR);
        }
        assertThat(printed(demo)).containsOnlyKeys(sheets);
    }

    /** ISO 216: A4 is 210 x 297 mm. ANSI A (Letter) is 215.9 x 279.4 mm. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void eachIsExactlyOnePageOfTheRulebooksPaper(String demo) {
        boolean american = demo.equals("marmalade-meridian");
        printed(demo).forEach((name, sheet) -> {
            assertThat(sheet.pages()).as(name).isEqualTo(1);
            PDRectangle page = sheet.document().getPage(0).getMediaBox();
            assertThat(page.getWidth() / 72 * 25.4).isCloseTo(american ? 215.9 : 210, within(0.1));
            assertThat(page.getHeight() / 72 * 25.4).isCloseTo(american ? 279.4 : 297, within(0.1));
        });
    }

    /** The least is 7.5 points; PDFBox tells full points only. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void nothingIsTooSmallOrOutsideThePage(String demo) {
        printed(demo).forEach((name, sheet) -> {
            PDRectangle page = sheet.document().getPage(0).getMediaBox();
            for (Letter letter : sheet.letters(1)) {
                assertThat(letter.size()).as("%s %s", name, letter).isGreaterThanOrEqualTo(7);
                assertThat(letter.x()).as("%s %s", name, letter).isGreaterThan(11.5);
                assertThat(letter.x() + letter.width())
                        .as("%s %s", name, letter)
                        .isLessThan(page.getWidth() / 72 * 25.4 - 11.5);
                assertThat(letter.y()).as("%s %s", name, letter).isBetween(8.0, page.getHeight() / 72 * 25.4 - 8.0);
            }
        });
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyFontIsEmbedded(String demo) throws IOException {
        for (PrintedGuide sheet : printed(demo).values()) {
            assertThat(sheet.fonts()).isNotEmpty();
            assertThat(sheet.fonts().values()).containsOnly(true);
        }
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void eachSaysWhichJobAndOpensItsRecord(String demo) throws IOException {
        Assessment it = it(demo);
        String address = RecordLink.of(it).address();
        for (PrintedGuide sheet : printed(demo).values()) {
            assertThat(text(sheet))
                    .contains(
                            it.job().craft().name(),
                            it.job().job().record().toString(),
                            "revision " + it.job().job().revision(),
                            word(it.job().job().date()),
                            it.installer().firm(),
                            "Local codes and licensed practice go before this sheet");
            for (int dpi : new int[] {150, 300}) {
                assertThat(QrReader.read(sheet.image(1, dpi))).as("at " + dpi).containsExactly(address);
            }
        }
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void leavesNothingUnfilled(String demo) {
        printed(demo)
                .values()
                .forEach(sheet -> assertThat(text(sheet))
                        .doesNotContain("null", "NaN", "Infinity", "${", "{0}", "{1}", "\ufffd", "[]", " ,", "..")
                        .doesNotContainPattern("\\b(sheets|guide|record|term)\\.[a-z]"));
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void saysNothingOfTheOwner(String demo) {
        List<String> personal = QuickCardsTest.Personal.of(it(demo));
        it(demo).job().tests().stream()
                .map(TestResult::by)
                .filter(by -> by != null && !by.equals(it(demo).job().job().fitter()))
                .forEach(personal::add);
        printed(demo).values().forEach(sheet -> assertThat(text(sheet)).doesNotContain(personal));
    }

    /** A name of the owner's in a free text of the job is blanked; the sheet still names who tested. */
    @Test
    void blanksTheOwnerInFreeTexts() {
        DemoJob told =
                DemoJob.changed("lantern-moth", "not touched, not tested", "not touched, as Wilhelmina Oatcake asked");
        String surveyor = text(Objects.requireNonNull(printed(told).get(SURVEYOR)));
        assertThat(surveyor).contains("not touched, as [name left out] asked").doesNotContain("Oatcake");
        assertThat(surveyor).contains("Tested by J. Fennimore-Quill");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theHarbourSheetHasTheCalculatedLoad(String demo) {
        Assessment it = it(demo);
        if (it.job().shore() == null) {
            return;
        }
        String text = text(demo, HARBOUR);
        var back = it.figures().shoreReturn().orElseThrow();
        assertThat(text)
                .contains(word(back.mostByItself()) + " (calculated)", word(back.voltage()))
                .contains("Inlet rated " + word(it.job().shore().inlet().known().orElseThrow()))
                .contains("Please do not unplug");
        back.heater().ifPresent(heater -> assertThat(text).contains(heater, word(back.mostWithHeater())));
        back.chargers().forEach(charger -> assertThat(text).contains("up to " + word(charger.input())));
    }

    @Test
    void theHarbourSheetSaysWhatWasTestedOnShorePower() {
        assertThat(text("lantern-moth", HARBOUR))
                .contains("24 ms", "6 mA", "13 May 2026", "9 mA or less at rest")
                // Measured on the inverter, not on shore power.
                .doesNotContain("21 ms");
        assertThat(text("marmalade-meridian", HARBOUR))
                .contains("62 ms", "58 ms")
                .doesNotContain("60 ms", "61 ms");
    }

    @Test
    void theHarbourSheetSaysWhatHappensWithoutSupply() {
        var absence = it("lantern-moth").figures().absence();
        assertThat(text("lantern-moth", HARBOUR))
                .contains(
                        "does not make the sockets dead",
                        "About " + word(absence.toReserve()) + " to the reserve. Plan on "
                                + word(absence.toReserveWorn()));
        assertThat(text("marmalade-meridian", HARBOUR))
                .contains("this stops: Refrigerator and ice maker")
                .doesNotContain("does not make the sockets dead");
        assertThat(text("long-way-round", HARBOUR))
                .contains("For the site office", "Pitch")
                .doesNotContain("Berth");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theSurveyorsSheetHoldsProtectionAndTests(String demo) {
        Assessment it = it(demo);
        String text = text(demo, SURVEYOR);
        assertThat(text)
                .contains(it.tables().rules().title())
                .contains(
                        word(it.figures().bank().energy()),
                        word(it.figures().bank().shortCircuit()))
                .contains(word(it.figures().inverter().worstCurrent()))
                .contains(
                        word(it.figures().supply().decidingDrop()),
                        word(it.figures().supply().allowedDrop()));
        for (FuseFigures fuse : it.figures().fuses()) {
            assertThat(text)
                    .contains(word(fuse.family().orElseThrow()) + ", "
                            + word(fuse.rating().orElseThrow()))
                    .contains(word(fuse.interrupts().orElseThrow()), word(fuse.mustInterrupt()), word(fuse.most()));
        }
        it.figures()
                .supply()
                .runs()
                .forEach(run -> assertThat(text)
                        .contains(run.rating().conductor().toString().replace('\u00a0', ' '), word(run.allowed())));
        for (TestResult test : it.job().tests()) {
            if (test.result() != null) {
                assertThat(text).contains(word(test.result().known().orElseThrow()));
            }
            assertThat(text).contains(word(Objects.requireNonNull(test.on())));
        }
        it.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE
                        || finding.accepted().isPresent())
                .forEach(finding -> assertThat(text).contains(word(finding.message())));
        Stream.concat(it.job().scope().stream(), it.job().policyConditions().stream())
                .forEach(line -> assertThat(text).contains(line));
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theElectriciansSheetSaysHowItGoesDead(String demo) {
        Assessment it = it(demo);
        String text = text(demo, ELECTRICIAN);
        it.job()
                .isolators()
                .forEach(isolator -> assertThat(text)
                        .contains(isolator.id() + " " + isolator.name() + ": off (" + isolator.where() + ")"));
        assertThat(text)
                .contains("Check the tester on a known source", "The battery stays live")
                .contains("DC clamp meter for " + word(it.figures().inverter().worstCurrent()))
                .contains("Torque wrench for "
                        + word(Given.maybe(it.job().bank().torque()).orElseThrow()))
                .contains("Codes and passwords are never printed");
        it.figures()
                .fuses()
                .forEach(fuse -> assertThat(text)
                        .contains(
                                word(fuse.family().orElseThrow()),
                                word(fuse.rating().orElseThrow())));
    }

    /** Four on the barge: battery, shore, alternator, panels; the panels have no switch. */
    @Test
    void theElectriciansSheetCountsTheSources() {
        assertThat(text("lantern-moth", ELECTRICIAN))
                .contains("Sources that can make it live: 4", "live in daylight – stays live", "switch S1");
    }

    /** Whoever has turned off every switch of the bank still finds the fuse board live that is connected before them. */
    @Test
    void theElectriciansSheetNamesWhatNoSwitchTakesOffTheBattery() {
        assertThat(text("long-way-round", ELECTRICIAN))
                .contains("On the battery all the same, whatever is switched: F2 Living fuse board.");
        assertThat(text("hut-seventeen", ELECTRICIAN)).doesNotContain("On the battery all the same");
    }

    /** What the job leaves out is a line to write on, never a proposal or a guess. */
    @Test
    void whatTheJobDoesNotSayIsBlank() {
        DemoJob bare = DemoJob.changed("lantern-moth", "family: class-t, rating: 225 A, ", "");
        Map<String, PrintedGuide> sheets = printed(bare);
        FuseFigures fuse = bare.assessment().figures().fuses().get(0);
        String proposed =
                word(fuse.family().orElseThrow()) + ", " + word(fuse.rating().orElseThrow());
        assertThat(text(Objects.requireNonNull(sheets.get(SURVEYOR))))
                .contains("F1")
                .doesNotContain(proposed);
        assertThat(text(Objects.requireNonNull(sheets.get(ELECTRICIAN))))
                .doesNotContain(word(fuse.rating().orElseThrow()));
        String untested = text(Objects.requireNonNull(
                printed(DemoJob.without("lantern-moth", "tests")).get(SURVEYOR)));
        assertThat(untested)
                .contains("RCD trip time: R1 (shore power)", "RCD trip time: R2 (inverter)", "insulation resistance")
                .doesNotContain("24 ms", "48 MΩ", "ML-08", "passed");
    }

    @Test
    void whatNobodyHasSeenSaysSo() {
        DemoJob unseen = DemoJob.changed(
                "lantern-moth", "torque: 12 Nm (measured, J. Fennimore-Quill, 2026-05-12)", "torque: not seen");
        assertThat(text(Objects.requireNonNull(printed(unseen).get(ELECTRICIAN))))
                .contains("Torque not seen");
    }

    /** Longer words and sentences must still fit their pages. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void fitsInEveryLanguage(String demo) throws IOException {
        DemoJob job = DemoJob.of(demo);
        for (String language : Words.languages()) {
            Words words = Words.of(language);
            Map<String, byte[]> sheets = new java.util.TreeMap<>(
                    SingleSheets.pdfs(job.assessment(), words, job.branding(), Templates.builtIn()));
            sheets.put(
                    "quick-card.pdf",
                    QuickCards.pdf(List.of(new Edition(job.assessment(), words)), job.branding(), Templates.builtIn()));
            for (Map.Entry<String, byte[]> sheet : sheets.entrySet()) {
                try (PrintedGuide printed = new PrintedGuide(sheet.getValue())) {
                    assertThat(printed.pages())
                            .as(language + " " + sheet.getKey())
                            .isEqualTo(1);
                    assertThat(printed.text())
                            .as(language + " " + sheet.getKey())
                            .doesNotContain("{0}", "null");
                    double right = printed.document().getPage(0).getMediaBox().getWidth() / 72 * 25.4 - 7.5;
                    assertThat(printed.letters(1))
                            .as(language + " " + sheet.getKey())
                            .allSatisfy(letter ->
                                    assertThat(letter.x() + letter.width()).isLessThan(right));
                }
            }
        }
    }

    private static String more(int many, IntFunction<String> line) {
        return IntStream.rangeClosed(1, many)
                .mapToObj(i -> "  - " + line.apply(i) + "\n")
                .collect(Collectors.joining());
    }

    /** The tug as a motor yacht: so many more circuits, each with its RCD, tested. */
    private static DemoJob yacht(int many) {
        String job = "persimmon-tug";
        return DemoJob.changed(
                job,
                Map.of(
                        "rcds:\n",
                        more(many, i -> "{ id: RX" + i + ", rating: 30 mA, type: A, source: inverter, where: board }"),
                        "ac-circuits:\n",
                        more(
                                many,
                                i -> "{ id: AX" + i + ", name: Cabin light " + i
                                        + " port, breaker: 10 A, curve: B, cable: 2.5 mm2, source: inverter, rcd: RX"
                                        + i + " }"),
                        "tests:\n",
                        more(
                                many,
                                i -> "{ test: insulation, of: [AX" + i + "], result: " + (100 + i)
                                        + " Mohm, on: 2026-07-01, instrument: NK-M1 }"),
                        "scope:\n",
                        more(many, i -> "Old wire " + i + " aft")));
    }

    /** How often each number is found, which each is to be equally often. */
    private static void assertEach(String text, String pattern, int many, int times) {
        List<Integer> found = Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(match -> Integer.parseInt(match.group(1)))
                .sorted()
                .toList();
        assertThat(found)
                .as(pattern)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, many)
                        .boxed()
                        .flatMap(i -> Collections.nCopies(times, i).stream())
                        .toList());
    }

    /** Nothing is lost or told twice where pages meet; counts by hand. */
    @ParameterizedTest
    @ValueSource(ints = {14, 40})
    void runsOnOverPages(int many) throws IOException {
        Map<String, PrintedGuide> sheets = printed(yacht(many));
        PrintedGuide surveyor = Objects.requireNonNull(sheets.get(SURVEYOR));
        String text = text(surveyor);
        assertThat(surveyor.pages()).isGreaterThan(1);
        assertEach(text, "\\bAX(\\d+) Cabin light", many, 1);
        assertEach(text, "\\bRCD RX(\\d+): 30 mA", many, 1);
        assertEach(text, "Cabin light (\\d+) port", many, 1);
        assertEach(text, "insulation resistance: AX(\\d+) 1\\d\\d MΩ", many, 1);
        assertEach(text, "RCD trip time: RX(\\d+) \\(inverter\\)", many, 1);
        assertEach(text, "Old wire (\\d+) aft", many, 1);
        assertThat(surveyor.flowing().indexOf("Open points")).isLessThan(text.indexOf("Protection of the bank"));
        String harbour = text(Objects.requireNonNull(sheets.get(HARBOUR)));
        assertEach(harbour, "insulation resistance: AX(\\d+) 1\\d\\d MΩ", many, 1);
        assertEach(harbour, "\\bRX(\\d+) 30 mA", many, 1);
        assertThat(harbour.indexOf("Please do not unplug")).isLessThan(harbour.indexOf("insulation resistance: AX"));
        assertEach(text(Objects.requireNonNull(sheets.get(ELECTRICIAN))), "Old wire (\\d+) aft", many, 1);
        String address = RecordLink.of(yacht(many).assessment()).address();
        for (PrintedGuide sheet : sheets.values()) {
            assertThat(QrReader.read(sheet.image(1, 150))).containsExactly(address);
        }
    }

    /** Pages tell their number and of what they are; tables begin with their heads on each; no heading ends a page. */
    @ParameterizedTest
    @MethodSource("org.quaybook.text.Words#languages")
    void pagesTellWhatTheyAreOf(String language) {
        Words words = Words.of(language);
        DemoJob job = yacht(40);
        SingleSheets.pdfs(job.assessment(), words, job.branding(), Templates.builtIn())
                .forEach((name, pdf) -> assertPages(name, new PrintedGuide(pdf), words));
    }

    private static void assertPages(String name, PrintedGuide sheet, Words words) {
        assertThat(sheet.pages()).as(name).isGreaterThan(1);
        String title = sheet.text(1).lines().findFirst().orElseThrow();
        for (int page = 1; page <= sheet.pages(); page++) {
            List<String> lines = sheet.text(page)
                    .replace('\u00a0', ' ')
                    .lines()
                    .filter(line -> !line.isBlank())
                    .map(String::strip)
                    .toList();
            String as = words.language() + " " + name + " " + page;
            assertThat(lines.get(lines.size() - 1))
                    .as(as)
                    .endsWith(words.say("sheets.page", page, sheet.pages()))
                    .contains("NEG8-KHQN");
            assertThat(HEADINGS.stream().map(words::say)).as(as).doesNotContain(lines.get(lines.size() - 2));
            if (page > 1) {
                assertThat(lines.get(0)).as(as).contains("Persimmon Tug", "26-140");
                assertThat(title).as(as).startsWith(lines.get(0).substring(0, 12));
            }
            if (lines.stream().anyMatch(line -> line.matches("AX\\d+ Cabin light.*"))) {
                assertThat(lines)
                        .as(as)
                        .anyMatch(
                                line -> line.startsWith(words.say("sheets.id") + " " + words.say("sheets.name") + " "));
            }
            for (Letter letter : sheet.letters(page)) {
                assertThat(letter.size()).as(as).isGreaterThanOrEqualTo(8);
                assertThat(letter.x()).as(as).isBetween(11.5, 198.0);
                assertThat(letter.y()).as(as).isBetween(8.0, 289.0);
            }
        }
    }

    /** Forty rounds of a yearly test: the office reads the last, and how many came before. */
    @Test
    void theHarbourReadsWhatATestSaysNow() {
        DemoJob old = DemoJob.changed(
                "persimmon-tug",
                "tests:\n",
                "tests:\n"
                        + more(
                                40,
                                i -> "{ test: insulation, of: [A1], result: " + (100 + i) + " Mohm, on: " + (1980 + i)
                                        + "-07-01, instrument: NK-M1 }"));
        PrintedGuide sheet = Objects.requireNonNull(printed(old).get(HARBOUR));
        assertThat(sheet.pages()).isEqualTo(1);
        assertThat(text(sheet))
                .contains("140 MΩ", "60 MΩ", "Left out because a later test says how it is now: 39.")
                .doesNotContain("139 MΩ", "101 MΩ");
        assertEach(text(Objects.requireNonNull(printed(old).get(SURVEYOR))), "\\b1([0-4]\\d) MΩ", 40, 1);
    }

    @Test
    void sameJobSameBytes() {
        Map<String, byte[]> again = pdfs(DemoJob.of("lantern-moth"));
        pdfs(DemoJob.of("lantern-moth"))
                .forEach((name, pdf) -> assertThat(again.get(name)).as(name).isEqualTo(pdf));
    }
}
