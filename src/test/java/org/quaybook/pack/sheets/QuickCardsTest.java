package org.quaybook.pack.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.job.Job;
import org.quaybook.pack.guide.CardDetail;
import org.quaybook.pack.guide.DemoJob;
import org.quaybook.pack.guide.PageRules;
import org.quaybook.pack.guide.PrintedGuide;
import org.quaybook.pack.guide.PrintedGuide.Letter;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

/** The quick card as it is printed. Sizes and limits without a named source are this project's own. */
class QuickCardsTest {

    private static final List<String> BOXES = List.of(
            "Switch on", "What can run", "The alarm sounds", "It tripped or went dark", "Leaving the", "In danger");

    private static final Map<String, PrintedGuide> PRINTED = new ConcurrentHashMap<>();

    private static PrintedGuide printed(String demo) {
        return PRINTED.computeIfAbsent(demo, name -> new PrintedGuide(card(DemoJob.of(name), DemoJob.WORDS)));
    }

    private static byte[] card(DemoJob demo, Words... words) {
        return QuickCards.pdf(
                Arrays.stream(words)
                        .map(language -> new Edition(demo.assessment(), language))
                        .toList(),
                demo.branding(),
                Templates.builtIn());
    }

    /** For those who want to look at the pages. */
    @AfterAll
    static void keep() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "sheets"));
        for (String demo : PRINTED.keySet()) {
            Files.write(folder.resolve(demo + "-quick-card.pdf"), printed(demo).bytes());
        }
    }

    /** ISO 216: A5 is 148 x 210 mm. Half of ANSI A (Letter, 8.5 x 11 in) is 5.5 x 8.5 in. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void isOnePageOfTheRulebooksPaper(String demo) {
        assertThat(printed(demo).pages()).isEqualTo(1);
        PDRectangle page = printed(demo).document().getPage(0).getMediaBox();
        boolean american = demo.equals("marmalade-meridian");
        assertThat(page.getWidth() / 72 * 25.4).isCloseTo(american ? 139.7 : 148, within(0.1));
        assertThat(page.getHeight() / 72 * 25.4).isCloseTo(american ? 215.9 : 210, within(0.1));
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void timesStandApart(String demo) {
        PageRules.assertTimesStandApart(printed(demo), 1, 2);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void hasTheSixBoxesInTheirOrder(String demo) {
        String text = text(card(DemoJob.of(demo), DemoJob.WORDS), false);
        List<Integer> places = BOXES.stream().map(text::indexOf).toList();
        assertThat(places).doesNotContain(-1).isSortedAccordingTo(Comparator.naturalOrder());
    }

    /** @param sorted by place on the page; otherwise in the order of the file, which is that of reading aloud */
    private static String text(byte[] pdf, boolean sorted) {
        try (var document = org.apache.pdfbox.Loader.loadPDF(pdf)) {
            var stripper = new org.apache.pdfbox.text.PDFTextStripper();
            stripper.setSortByPosition(sorted);
            return stripper.getText(document).replaceAll("[\\s\u00a0]+", " ");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The guide's first chapter is the same card: same sentences, but for the pages it refers to. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void saysWhatTheGuideSays(String demo) {
        String guide = text(DemoJob.of(demo).guide(), false);
        String card = text(printed(demo).bytes(), false);
        Map<String, Object> steps =
                org.quaybook.pack.guide.QuickCard.of(DemoJob.of(demo).assessment(), DemoJob.WORDS, CardDetail.FULL);
        assertThat(steps).hasSize(5);
        for (Object list : steps.values()) {
            for (Object step : (List<?>) list) {
                String sentence = step.toString().replace('\u00a0', ' ');
                assertThat(card).contains(sentence);
                assertThat(guide).contains(sentence);
            }
        }
        assertThat(card).doesNotContainIgnoringCase("page");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void figuresAreTheCalculatedOnes(String demo) {
        String card = text(printed(demo).bytes(), false);
        List<ApplianceFigures> running = DemoJob.of(demo).assessment().figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .toList();
        assertThat(running).isNotEmpty();
        running.stream()
                .sorted(Comparator.comparing(it -> it.time().value().seconds()))
                .limit(5)
                .forEach(it -> assertThat(card)
                        .contains(
                                it.appliance().name(),
                                DemoJob.WORDS.word(it.time().stated()).replace('\u00a0', ' ')));
    }

    /** The smallest print 7 points; a running text of 10 points or more after ISO/IEC Guide 37 (from memory). */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void isLargeEnoughAndInsideThePage(String demo) {
        List<Letter> letters = printed(demo).letters(1);
        double width = printed(demo).document().getPage(0).getMediaBox().getWidth() / 72 * 25.4;
        for (Letter letter : letters) {
            assertThat(letter.size()).as(letter.toString()).isGreaterThanOrEqualTo(7);
            assertThat(letter.x()).as(letter.toString()).isGreaterThan(7.5);
            assertThat(letter.x() + letter.width()).as(letter.toString()).isLessThan(width - 7.5);
            assertThat(letter.y()).as(letter.toString()).isBetween(7.0, 209.0);
        }
        assertThat(letters.stream().filter(letter -> letter.size() >= 10).count())
                .isGreaterThan(letters.size() / 2);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theCodeIsThatOfTheRecord(String demo) throws IOException {
        var it = DemoJob.of(demo).assessment();
        String address = RecordLink.of(it).address();
        for (int dpi : new int[] {150, 300}) {
            assertThat(QrReader.read(printed(demo).image(1, dpi)))
                    .as("at " + dpi)
                    .containsExactly(address);
        }
        assertThat(printed(demo).flowing())
                .contains(
                        it.job().job().record().toString(),
                        Objects.requireNonNull(it.installer().phone()));
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void saysNothingPersonal(String demo) {
        assertThat(printed(demo).flowing())
                .doesNotContain(Personal.of(DemoJob.of(demo).assessment()));
    }

    /** Two languages are the front and the back of one card. */
    @Test
    void eachLanguageHasAPage() throws IOException {
        try (PrintedGuide both = new PrintedGuide(card(DemoJob.of("second-biscuit"), DemoJob.WORDS, DemoJob.WORDS))) {
            assertThat(both.pages()).isEqualTo(2);
            assertThat(both.text(2)).isEqualTo(both.text(1)).contains("In danger");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "second-biscuit, appliances",
        "hut-seventeen, isolators",
        "hut-seventeen, charging",
        "hut-seventeen, generator"
    })
    void doesWithoutASection(String demo, String section) throws IOException {
        try (PrintedGuide card = new PrintedGuide(card(DemoJob.without(demo, section), DemoJob.WORDS))) {
            assertThat(card.pages()).isEqualTo(1);
            assertThat(card.text()).contains("What can run").doesNotContain("null", "{0}");
        }
    }

    @Test
    void saysThatItMustNotBeHandedOver() throws IOException {
        DemoJob unsafe = DemoJob.changed("lantern-moth", "neutral-bond: inverter-only", "neutral-bond: none");
        try (PrintedGuide card = new PrintedGuide(card(unsafe, DemoJob.WORDS))) {
            assertThat(card.pages()).isEqualTo(1);
            assertThat(card.text()).contains("Not for handover");
        }
    }

    /** The barge with more switches, of its battery and of its panels by turns. */
    private static DemoJob switches(int many, int places) {
        return DemoJob.changed(
                "lantern-moth",
                "isolators:\n",
                "isolators:\n"
                        + IntStream.rangeClosed(1, many)
                                .mapToObj(i -> "  - { id: X" + i + ", name: Feeder, where: locker " + i % places
                                        + ", isolates: [" + (i % 4 == 0 ? "solar" : "bank") + "] }\n")
                                .collect(Collectors.joining()));
    }

    private static String inDanger(String text) {
        return text.substring(text.indexOf("Get everybody out"), text.indexOf("Only what you can reach"));
    }

    /** Each as often as another in the box for danger, panels before the battery; nothing is left to be guessed. */
    @ParameterizedTest
    @CsvSource({"12, 1", "12, 3", "12, 12", "40, 1", "40, 40"})
    void namesEachOfManySwitchesInDanger(int many, int places) throws IOException {
        DemoJob job = switches(many, places);
        for (String language : Words.languages()) {
            try (PrintedGuide card = new PrintedGuide(card(job, Words.of(language)))) {
                assertThat(card.pages()).as(language).isEqualTo(1);
                assertThat(QrReader.read(card.image(1, 200)))
                        .containsExactly(RecordLink.of(job.assessment()).address());
            }
        }
        String danger = inDanger(text(card(job, DemoJob.WORDS), false));
        List<Integer> named = Pattern.compile("\\bX(\\d+)\\b")
                .matcher(danger)
                .results()
                .map(found -> Integer.parseInt(found.group(1)))
                .toList();
        List<Integer> panels =
                IntStream.rangeClosed(1, many).filter(i -> i % 4 == 0).boxed().toList();
        List<Integer> battery =
                IntStream.rangeClosed(1, many).filter(i -> i % 4 != 0).boxed().toList();
        assertThat(named)
                .containsExactlyElementsOf(
                        Stream.concat(panels.stream(), battery.stream()).toList());
        assertThat(danger).doesNotContain("null", "{");
    }

    /** Seven at as many places have a step each; a number of two digits stands on one line with its point. */
    @Test
    void numbersOfTwoDigitsAreNotBroken() {
        String danger = inDanger(text(card(switches(7, 7), DemoJob.WORDS), false));
        assertThat(danger).contains("9. Turn off X5 Feeder (locker 5)", "10. Turn off X6 Feeder (locker 6)");
    }

    /** By hand: of 400 every fourth is of the panels; the barge has one switch of its battery and one of its shore lead. */
    @Test
    void countsSwitchesThatNoCardHasRoomFor() throws IOException {
        DemoJob job = switches(400, 90);
        String text = text(card(job, DemoJob.WORDS), false);
        assertThat(inDanger(text))
                .contains(
                        "Turn off all 100 switches of the solar panels. The guide lists them under “Stay safe”.",
                        "Turn off all 301 battery switches. The guide lists them under “Stay safe”.");
        assertThat(text).contains("Turn on all 301 battery switches.");
        try (PrintedGuide card = new PrintedGuide(card(job, DemoJob.WORDS))) {
            assertThat(card.pages()).isEqualTo(1);
        }
    }

    /** What stays on: the one that takes most by name, how many more, and where they stand. */
    @Test
    void saysOfManyThatStayOnWhichTakesMost() throws IOException {
        DemoJob job = DemoJob.changed(
                "lantern-moth",
                "appliances:\n",
                "appliances:\n"
                        + IntStream.rangeClosed(1, 30)
                                .mapToObj(i -> "  - { name: Ventilator " + i
                                        + " behind the panelling of the long saloon, power: " + (700 + i)
                                        + " W (plate), left-on: yes }\n")
                                .collect(Collectors.joining()));
        int more = job.assessment().figures().absence().leftOn().size();
        try (PrintedGuide card = new PrintedGuide(card(job, DemoJob.WORDS))) {
            assertThat(card.pages()).isEqualTo(1);
            assertThat(card.flowing())
                    .contains("must run: Ventilator 30 behind the panelling of the long saloon")
                    .containsPattern(" and (" + (more - 1) + "|" + (more - 3)
                            + ") more, listed in the guide under “Leaving the boat”\\.");
        }
    }

    @Test
    void sameJobSameBytes() {
        assertThat(card(DemoJob.of("lantern-moth"), DemoJob.WORDS))
                .isEqualTo(card(DemoJob.of("lantern-moth"), DemoJob.WORDS));
    }

    /** What of a job is nobody's business but the owner's and the installer's. */
    static final class Personal {

        private Personal() {}

        static List<String> of(org.quaybook.checks.Assessment it) {
            Job job = it.job();
            List<String> personal = new ArrayList<>();
            if (job.owner() != null) {
                Stream.of(job.owner().name(), job.owner().phone(), job.owner().email())
                        .filter(Objects::nonNull)
                        .forEach(personal::add);
            }
            if (job.craft().berth() != null) {
                personal.add(job.craft().berth());
            }
            if (job.rehearsal() != null && job.rehearsal().with() != null) {
                personal.add(job.rehearsal().with());
            }
            assertThat(personal).isNotEmpty();
            // The installer's own telephone may be the one that a workboat's owner gives.
            personal.remove(it.installer().phone());
            return personal;
        }
    }
}
