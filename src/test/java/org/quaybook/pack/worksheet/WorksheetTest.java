package org.quaybook.pack.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.checks.Alike;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.figures.Figure;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;

/** The worksheet as it is printed. Sizes and limits without a named source are this project's own. */
class WorksheetTest {

    private static final Words WORDS = Words.of("en-GB");
    private static final double MILLIMETRES = 25.4 / 72;
    private static final Map<String, Printed> PRINTED = new ConcurrentHashMap<>();

    @TempDir
    Path folder;

    /** A letter's place and size in millimetres and points. */
    private record Letter(int page, double x, double right, double y, double size) {}

    private record Printed(Assessment it, List<String> pages, List<Letter> letters, List<double[]> papers) {

        /** All text, line breaks and no-break spaces as spaces. */
        String text() {
            return String.join(" ", pages).replaceAll("[\\s\\u00a0]+", " ");
        }

        /** The text of one sheet. */
        String sheet(String title) {
            return pages.stream()
                    .filter(page -> page.replace('\u00a0', ' ').contains(title))
                    .reduce("", (a, b) -> a + " " + b)
                    .replaceAll("[\\s\\u00a0]+", " ");
        }
    }

    private static Printed print(Path job) {
        Road.Judged judged = Road.judge(job);
        Assessment it = Objects.requireNonNull(judged.assessment(), judged.problems()::toString);
        try {
            return read(it, Road.worksheet(it, judged.branding(), null));
        } catch (NotPrinted e) {
            throw new AssertionError(e.diagnostics().toString(), e);
        }
    }

    /** Which figures a job has hangs on the job: a title that is missing would stop the pack of some only. */
    @Test
    void eachFamilyOfFiguresHasATitle() throws IOException {
        Set<String> families = Files.readAllLines(Path.of("templates/words/en-GB/workings.properties")).stream()
                .filter(line -> line.startsWith("figure."))
                .map(line -> line.split("[. ]", 3)[1])
                .collect(Collectors.toSet());

        assertThat(families)
                .contains("bank", "isolator")
                .allSatisfy(family ->
                        assertThat(WORDS.say("worksheet.workings." + family)).isNotBlank());
    }

    private static Printed demo(String name) {
        return PRINTED.computeIfAbsent(name, demo -> print(Path.of("demo-jobs", demo)));
    }

    private static Printed read(Assessment it, byte[] pdf) {
        List<String> pages = new ArrayList<>();
        List<Letter> letters = new ArrayList<>();
        List<double[]> papers = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                papers.add(new double[] {
                    page.getMediaBox().getWidth() * MILLIMETRES,
                    page.getMediaBox().getHeight() * MILLIMETRES
                });
            }
            for (int page = 1; page <= papers.size(); page++) {
                int number = page;
                PDFTextStripper stripper = new PDFTextStripper() {
                    @Override
                    protected void writeString(String text, List<TextPosition> positions) throws IOException {
                        positions.forEach(at -> letters.add(new Letter(
                                number,
                                at.getXDirAdj() * MILLIMETRES,
                                (at.getXDirAdj() + at.getWidthDirAdj()) * MILLIMETRES,
                                at.getYDirAdj() * MILLIMETRES,
                                at.getFontSizeInPt())));
                        super.writeString(text, positions);
                    }
                };
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Printed(it, pages, letters, papers);
    }

    private Path changed(String demo, String... replacements) throws IOException {
        for (String file : List.of("installer.yaml", "logo.svg")) {
            Path from = Path.of("demo-jobs", demo, file);
            if (Files.exists(from)) {
                Files.copy(from, folder.resolve(file));
            }
        }
        String text = Files.readString(Path.of("demo-jobs", demo, "job.yaml"));
        for (int i = 0; i < replacements.length; i += 2) {
            assertThat(text).contains(replacements[i]);
            text = text.replace(replacements[i], replacements[i + 1]);
        }
        return Files.writeString(folder.resolve("job.yaml"), text);
    }

    /** A switch that a charger passes too has a working of its own, under a heading of its own. */
    @Test
    void whatPassesASwitchIsWorkedOut() throws IOException {
        Printed it = print(
                changed("lantern-moth", "current: 60 A, cold-stop", "current: 60 A, through: [F1, B1, B2], cold-stop"));
        assertThat(it.text()).contains("Battery switches", "Switch S1: the most that passes it");
    }

    /** ISO 216: A4 is 210 x 297 mm; ANSI Y14.1: Letter is 8.5 x 11 in. */
    @ParameterizedTest
    @CsvSource({"lantern-moth, 210, 297", "marmalade-meridian, 215.9, 279.4"})
    void paperIsThatOfTheRegion(String demo, double width, double height) {
        assertThat(demo(demo).papers()).allSatisfy(paper -> {
            assertThat(paper[0]).isCloseTo(width, within(0.2));
            assertThat(paper[1]).isCloseTo(height, within(0.2));
        });
    }

    /** A date beside an empty box says both that it was done and that it was not. */
    @Test
    void whatTheOwnerHasDoneIsTicked() {
        assertThat(demo("hut-seventeen").text())
                .containsPattern("ran an appliance on the inverter\\s+✓\\s+11 September 2026");
        assertThat(demo("persimmon-tug").text().contains("✓"))
                .as("without a rehearsal in the job")
                .isFalse();
    }

    /** A signature alone on a page would stand under nothing. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void isSignedUnderWhatIsSigned(String demo) {
        Map.of("Tested by", "Started the system", "Surveyed by", "Seen besides|What the photograph shows")
                .forEach((signature, above) -> assertThat(demo(demo).pages())
                        .filteredOn(page -> page.contains(signature))
                        .singleElement()
                        .asString()
                        .containsPattern(above));
    }

    /** Nothing smaller than 7 points and nothing outside the margins. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void isLegibleAndInsideThePage(String demo) {
        Printed sheet = demo(demo);
        double width = sheet.papers().get(0)[0];
        double height = sheet.papers().get(0)[1];
        assertThat(sheet.letters()).allSatisfy(letter -> {
            assertThat(letter.x()).isGreaterThan(19);
            assertThat(letter.right()).isLessThan(width - 11);
            assertThat(letter.y()).isBetween(6.0, height - 5);
        });
        // Subscripts of the symbol font are drawn small on purpose; everything else is 7 points or more.
        assertThat(sheet.letters()).allMatch(letter -> letter.size() >= 7);
        assertThat(sheet.text()).doesNotContain("null", "{0}", "${");
    }

    @ParameterizedTest
    @ValueSource(strings = {"lantern-moth", "second-biscuit", "marmalade-meridian", "persimmon-tug"})
    void holdsEveryFindingWithRemedyAndSource(String demo) {
        Printed sheet = demo(demo);
        Words words = Words.forInstaller(sheet.it().job().job().languages());
        for (Alike alike : Alike.of(sheet.it().findings())) {
            Finding finding = alike.finding();
            String others = alike.others().isEmpty() ? "" : " The same goes for " + words.list(alike.others()) + ".";
            assertThat(sheet.sheet("2 Findings"))
                    .contains(plain(words.say(finding.message()) + others))
                    .contains(plain(words.say(finding.remedy())))
                    .contains(finding.check().id());
        }
    }

    /** Every figure of the job, its value as everywhere; those that differ in one number only stand in one line. */
    @ParameterizedTest
    @ValueSource(strings = {"lantern-moth", "persimmon-tug"})
    void worksOutEveryFigure(String demo) {
        String workings = close(demo(demo).sheet("7 Workings"));
        Set<String> series = new HashSet<>();
        for (Figure<?> figure : demo(demo).it().figures().all()) {
            String value = WORDS.word(figure.stated());
            Matcher number = Pattern.compile("(.*-(?:at|from))-(\\d+)").matcher(figure.key());
            if (number.matches() && !series.add(number.group(1))) {
                assertThat(workings).contains(close("at " + number.group(2) + ": " + value));
            } else {
                assertThat(workings).contains(close(figure.key())).contains(close(value));
            }
        }
        assertThat(series).isNotEmpty();
    }

    /** ISO 13297:2020 6.8: one tie in each mode; an inverter's short mostly does not trip a breaker at once (IEC 60898-1). */
    @Test
    void commissioningSaysWhereNeutralIsTiedAndWhatEndsAFault() {
        assertThat(demo("lantern-moth").sheet("5 Commissioning"))
                .contains("on the inverter at the inverter as it must be")
                .contains("on shore power through the inverter ashore only as it must be")
                .contains("A1 Galley sockets the inverter itself the RCD");
        assertThat(demo("hut-seventeen").sheet("5 Commissioning"))
                .contains("on the generator at the generator as it must be");
    }

    @Test
    void partsNameCablesLugsFusesAndASpare() {
        assertThat(demo("lantern-moth").sheet("3 Parts and cut list"))
                .contains("B1 battery + → inverter +, insulation 90 °C 70 mm² 2 1.6 m 4")
                .contains("B2", "1.8 m")
                .contains("link between strings 70 mm² 4 0.3 m 8")
                .contains("F1 class T 225 A", "1 + 1 spare")
                .contains("hole of 8 mm");
    }

    /** AC finished and tested before DC, plus last, fuses in after that. */
    @Test
    void orderOfWorkIsAcBeforeDcAndPlusLast() {
        assertThat(demo("lantern-moth").sheet("4 Order of work"))
                .containsSubsequence(
                        "licensed people",
                        "Pull the shore lead",
                        "Prove dead",
                        "Finish the AC side",
                        "Test it dead",
                        "Run the DC cables",
                        "Leave the fuse out",
                        "Connect minus",
                        "Connect plus last",
                        "Insert the fuses",
                        "Torque list",
                        "B1 at battery + 12 N·m");
    }

    @ParameterizedTest
    @CsvSource({
        "lantern-moth, alternator panels",
        "persimmon-tug, alternator",
        "hut-seventeen, panels",
    })
    void orderOfWorkSpeaksOfTheSourcesThatTheJobHas(String demo, String sources) {
        String order = demo(demo).sheet("4 Order of work");
        assertThat(List.of("alternator", "panels", "wind turbine"))
                .filteredOn(source -> order.contains(source))
                .containsExactly(sources.split(" "));
    }

    @Test
    void commissioningHasLimitExpectedValueResultAndEachSource() {
        String tests = demo("lantern-moth").sheet("5 Commissioning");
        assertThat(tests)
                .contains("0.12 V", "at 90 A", "0.114 V", "at most 300 ms", "IEC 61008-1", "48 MΩ", "ML-08")
                .contains("licensed people");
        assertThat(tests.split("RCD trip time", -1)).hasSize(4);
        assertThat(tests).contains("RCD trip time R2 on inverter", "RCD trip time R2 on shore power");
    }

    @Test
    void baselineHasEveryReadingAndALineForEachJoint() {
        String baseline = demo("lantern-moth").sheet("6 Baseline for later visits");
        assertThat(baseline)
                .contains("0.12 V at 90 A = 1.333 mΩ")
                .contains("B1, joint 4 of 4", "B2, joint 4 of 4")
                .contains("Later visit");
    }

    @Test
    void surveyAsksForWhatNobodyHasSeen() throws IOException {
        Printed sheet = print(changed("lantern-moth", "breaker-distance: 1.2 m", "breaker-distance: not seen"));
        assertThat(sheet.sheet("1 Survey on site"))
                .contains("conductor length from inlet to breaker", "stern rail, port side", "not seen")
                .contains("smallest supply", "6 A (T)");
    }

    /** The unit is the one that somebody with a rule in hand writes, and there is one for what has two. */
    @Test
    void surveySaysInWhatToWrite() throws IOException {
        Printed sheet = print(changed("long-way-round", "diameter: 13 mm, torque: 10 Nm }", "torque: 10 Nm }"));
        assertThat(sheet.sheet("1 Survey on site"))
                .contains("Shore charger: conductor between it and the bank – mm² or AWG")
                .containsPattern("outside diameter, for its tags battery \\+ . ?inverter \\+ – mm ")
                .doesNotContain("S2: continuous current")
                .doesNotContain("petrol vapour");
    }

    /** An American has both units to ring, but for what the thing itself is marked with. */
    @Test
    void surveyAsksAmericansForWhatTheyMeasureIn() {
        assertThat(demo("marmalade-meridian").sheet("1 Survey on site"))
                .containsPattern("B1: hottest usual air along it [^°]* °F / °C")
                .containsPattern("air that a fan moves while the bank is charged .{0,60} cfm / m³/h")
                .containsPattern("length of one run of it [^/]* ft / m")
                .containsPattern("temperature rating of the cable’s insulation [^/°]* °C");
        assertThat(demo("lantern-moth").sheet("1 Survey on site")).doesNotContain("°F", "ft / m");
    }

    /** A job that must not be handed over says so on every page. */
    @Test
    void whatMustNotBeHandedOverSaysSoOnEveryPage() {
        Printed sheet = print(Path.of("demo-jobs/lantern-moth/as-found.yaml"));
        assertThat(sheet.pages()).allMatch(page -> page.contains("NOT FOR HANDING OVER"));
        assertThat(demo("lantern-moth").text()).doesNotContain("NOT FOR HANDING OVER");
    }

    /** A job that lacks what the figures need still has its survey sheet. */
    @Test
    void aJobThatLacksValuesHasItsSurveySheet() throws Exception {
        Road.Judged judged = Road.judge(changed("lantern-moth", "length: 1.6 m (measured)", "length: not seen"));
        assertThat(judged.assessment()).isNull();
        byte[] pdf = Road.survey(judged.unfinished().orElseThrow(), null);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
            assertThat(text).contains("B1: length of this one run", "cannot be reached", "Survey on site");
            assertThat(text).doesNotContain("Workings");
        }
    }

    /** The owner is nobody's business on the installer's paper. */
    @Test
    void theOwnerIsNotInIt() {
        assertThat(demo("lantern-moth").text()).doesNotContain("Oatcake,", "07700 900118", "oatcake@", "Nowhere Basin");
    }

    /** A name may be broken after a hyphen. */
    private static String close(String text) {
        return text.replaceAll("[\\s\\u00a0]+", "");
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
