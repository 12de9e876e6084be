package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.Job;
import org.quaybook.pack.guide.PrintedGuide.Letter;
import org.quaybook.quantity.Rounding;
import org.quaybook.record.RecordLink;

/** The guide as it is printed. Sizes and limits without a named source are this project's own. */
class GuideTest {

    private static final Map<String, PrintedGuide> PRINTED = new ConcurrentHashMap<>();

    /** Headings are set in 13 points and more, everything else smaller; the quick card's boxes are no headings. */
    private static final double HEADING = 12.9;

    private static final double FOOT = 210 - 15;

    private static PrintedGuide printed(String demo) {
        return PRINTED.computeIfAbsent(
                demo, name -> new PrintedGuide(DemoJob.of(name).guide()));
    }

    /** ISO 216: A5 is 148 x 210 mm, with 1.5 mm of tolerance. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyPageIsA5(String demo) {
        assertThat(printed(demo).pages()).isGreaterThan(10);
        for (PDPage page : printed(demo).document().getPages()) {
            assertThat(page.getMediaBox().getWidth() / 72 * 25.4).isCloseTo(148, within(0.1));
            assertThat(page.getMediaBox().getHeight() / 72 * 25.4).isCloseTo(210, within(0.1));
        }
    }

    /** ISO 10240 asks for a table of contents in more than four pages. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void contentsAndBookmarksLeadToTheChapters(String demo) throws IOException {
        PrintedGuide guide = printed(demo);
        Map<String, Integer> contents = contents(guide);
        assertThat(contents).hasSize(13);
        contents.forEach(
                (title, page) -> assertThat(headings(guide, page)).as(title).contains(title));
        Map<String, Integer> bookmarks = new LinkedHashMap<>();
        for (PDOutlineItem item :
                guide.document().getDocumentCatalog().getDocumentOutline().children()) {
            bookmarks.put(
                    item.getTitle().replaceAll("\\s+", " ").strip(),
                    guide.document().getPages().indexOf(item.findDestinationPage(guide.document())) + 1);
        }
        assertThat(bookmarks).containsEntry("Contents", 2);
        bookmarks.remove("Contents");
        assertThat(bookmarks).isEqualTo(contents);
    }

    private static Map<String, Integer> contents(PrintedGuide guide) {
        Map<String, Integer> contents = new LinkedHashMap<>();
        Matcher line = Pattern.compile("(?m)^(\\d+) ([^.]+?) ?\\.[ .]+(\\d+)$").matcher(guide.text(2));
        while (line.find()) {
            contents.put(line.group(1) + " " + line.group(2).strip(), Integer.valueOf(line.group(3)));
        }
        return contents;
    }

    private static List<String> headings(PrintedGuide guide, int page) {
        Map<Long, StringBuilder> lines = new LinkedHashMap<>();
        for (Letter letter : guide.letters(page)) {
            if (letter.size() > 17) {
                lines.computeIfAbsent(Math.round(letter.y()), y -> new StringBuilder())
                        .append(letter.text());
            }
        }
        return lines.values().stream()
                .map(line -> line.toString().replaceAll("[\\s\u00a0]+", " ").strip())
                .toList();
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theQuickCardIsOnePage(String demo) {
        List<Integer> pages = List.copyOf(contents(printed(demo)).values());
        assertThat(pages.get(1) - pages.get(0)).isEqualTo(1);
        assertThat(printed(demo).text(pages.get(0))).contains("Switch on", "What can run", "In danger", "112");
    }

    /** A list that says the same thing twice looks careless. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void noListSaysAThingTwice(String demo) {
        String text = printed(demo).text().replaceAll("\\s+", " ");
        List<String> points = Stream.of(text.split("• "))
                .skip(1)
                .map(point -> point.replaceFirst("(?<=[.?!]) .*", ""))
                .filter(point -> point.length() > 40)
                .toList();
        assertThat(points).isNotEmpty().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyFontIsEmbedded(String demo) throws IOException {
        assertThat(printed(demo).fonts()).isNotEmpty();
        assertThat(printed(demo).fonts().values()).containsOnly(true);
    }

    /** Smallest print 7 points; running text 10 points or more asked by ISO/IEC Guide 37 (from memory). */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void textIsLargeEnoughAndInsideThePage(String demo) {
        PrintedGuide guide = printed(demo);
        for (int page = 1; page <= guide.pages(); page++) {
            for (Letter letter : guide.letters(page)) {
                assertThat(letter.size()).isGreaterThanOrEqualTo(7);
                assertThat(letter.x()).as("page %s: %s", page, letter).isGreaterThan(9);
                assertThat(letter.x() + letter.width())
                        .as("page %s: %s", page, letter)
                        .isLessThan(148 - 9);
                assertThat(letter.y()).as("page %s: %s", page, letter).isBetween(5.0, 206.0);
            }
        }
        assertThat(guide.letters(2).stream()
                        .filter(letter -> letter.size() >= 10)
                        .count())
                .isGreaterThan(guide.letters(2).size() / 2);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void noHeadingIsTheLastLineOfAPageAndNoPageIsEmpty(String demo) {
        PrintedGuide guide = printed(demo);
        for (int page = 2; page <= guide.pages(); page++) {
            List<Letter> body = guide.letters(page).stream()
                    .filter(letter -> letter.y() > 14 && letter.y() < FOOT)
                    .toList();
            assertThat(body.size()).as("letters on page %s", page).isGreaterThan(4);
            Letter last =
                    body.stream().max(Comparator.comparingDouble(Letter::y)).orElseThrow();
            assertThat(last.size() < HEADING || guide.text(page).contains("Notes"))
                    .as("page %s ends with %s", page, last)
                    .isTrue();
        }
    }

    /** The layout engine may write letters where nobody sees them; whoever searches or listens would meet them. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void nothingIsHiddenInTheMargins(String demo) {
        PrintedGuide guide = printed(demo);
        var job = DemoJob.of(demo).assessment().job().job();
        String issue = job.record() + "·Revision" + job.revision();
        for (int page = 2; page <= guide.pages(); page++) {
            String foot = letters(guide, page, FOOT + 1, 210);
            assertThat(foot).isIn(issue + page, page + issue);
            assertThat(letters(guide, page, 0, 11).length()).isLessThan(60);
        }
    }

    private static String letters(PrintedGuide guide, int page, double top, double bottom) {
        return guide.letters(page).stream()
                .filter(letter -> letter.y() > top && letter.y() < bottom)
                .sorted(Comparator.comparingDouble(Letter::x))
                .map(Letter::text)
                .reduce("", String::concat)
                .replaceAll("[\\s\u00a0]", "");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void leavesNothingUnfilled(String demo) {
        assertThat(printed(demo).text())
                .doesNotContain("null", "NaN", "Infinity", "${", "{0}", "{1}", "\ufffd", "[]")
                .doesNotContainPattern("(?<![a-z])\\?")
                .doesNotContainPattern("\\b(guide|figure|workings|term)\\.[a-z]");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void tellsForEachApplianceHowLongItRuns(String demo) {
        String text = printed(demo).text();
        for (ApplianceFigures appliance : figures(demo).appliances()) {
            assertThat(text)
                    .containsPattern(Pattern.quote(appliance.appliance().name()) + " "
                            + Pattern.quote(word(appliance.power())) + " " + Pattern.quote(word(appliance.time())) + " "
                            + Pattern.quote(word(appliance.wornTime())));
        }
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyFigureIsTheCalculatedOne(String demo) {
        Figures figures = figures(demo);
        String text = printed(demo).flowing();
        Stream<Figure<?>> shown = Stream.of(
                figures.bank().usableCharge(),
                figures.bank().usableEnergy(),
                figures.bank().restAtReserve(),
                figures.bank().shortCircuit(),
                figures.inverter().alarm(),
                figures.inverter().cutOut(),
                figures.inverter().worstCurrent(),
                figures.supply().drop(),
                figures.supply().jointDrop(),
                figures.supply().bankDrop(),
                figures.absence().idleToReserve(),
                figures.absence().idlePerDay(),
                figures.absence().toReserveWorn(),
                figures.day().use(),
                figures.day().darkDays(),
                figures.fuses().get(0).least(),
                figures.fuses().get(0).most());
        shown.forEach(figure -> assertThat(text).as(figure.key()).contains(word(figure)));
        figures.bank()
                .restTable()
                .forEach(row -> assertThat(text)
                        .contains(DemoJob.WORDS.word(row.stateOfCharge()).replace('\u00a0', ' ') + " "
                                + DemoJob.WORDS
                                        .numbers()
                                        .fixed(row.rest().value(), "V", 2, Rounding.NEAREST)
                                        .replace('\u00a0', ' ')));
    }

    private static Figures figures(String demo) {
        return DemoJob.of(demo).assessment().figures();
    }

    private static String word(Figure<?> figure) {
        return DemoJob.WORDS.word(figure.stated()).replace('\u00a0', ' ');
    }

    @Test
    void tellsWhereTheAlarmSoundsThoughTheMeterReadsFull() {
        ApplianceFigures heatGun = figures("second-biscuit").appliances().get(0);
        assertThat(printed("second-biscuit").flowing())
                .contains("Heat gun: the alarm sounds below "
                        + word(heatGun.alarmBelow().orElseThrow()) + " charge. The battery then rests at "
                        + word(heatGun.alarmRest().orElseThrow()) + ".");
    }

    /** A guide printed again with another cut-out must not keep the old one anywhere. */
    @Test
    void followsTheJob() throws IOException {
        byte[] changed = DemoJob.changed("lantern-moth", "cut-out: 21.5 V", "cut-out: 22.4 V")
                .guide();
        try (PrintedGuide guide = new PrintedGuide(changed)) {
            assertThat(guide.text()).contains("22.4 V").doesNotContain("21.5 V");
        }
        assertThat(printed("lantern-moth").text()).contains("21.5 V").doesNotContain("22.4 V");
    }

    @Test
    void leavesOutWhatTheJobHasNot() throws IOException {
        assertThat(printed("second-biscuit").text())
                .contains("rotten eggs", "dying battery", "Battery acid")
                .doesNotContain("reads 0 V", "frosty", "lithium");
        assertThat(printed("lantern-moth").text())
                .contains("reads 0 V", "frosty morning", "goes dark without an alarm")
                .doesNotContain("rotten eggs", "dying battery", "Battery acid", "distilled");
        assertThat(printed("persimmon-tug").text()).contains("distilled water");
        try (PrintedGuide noLamp =
                new PrintedGuide(DemoJob.changed("lantern-moth", "polarity-lamp: yes", "polarity-lamp: no")
                        .guide())) {
            assertThat(noLamp.text()).doesNotContain("polarity lamp", "Polarity lamp");
        }
    }

    @Test
    void speaksOfTheCraftThatItIs() throws IOException {
        byte[] motorhome = DemoJob.changed("second-biscuit", "kind: boat", "kind: motorhome")
                .guide();
        try (PrintedGuide guide = new PrintedGuide(motorhome)) {
            assertThat(guide.text())
                    .contains("Leaving the motorhome", "in the motorhome", "site post")
                    .doesNotContain("the boat", "on board", "Nobody in the water", "VHF");
        }
    }

    @Test
    void saysOnTheCoverWhatForbidsHandingOver() throws IOException {
        DemoJob unsafe = DemoJob.changed("lantern-moth", "neutral-bond: inverter-only", "neutral-bond: none");
        assertThat(unsafe.assessment().forbidsHandover()).isTrue();
        try (PrintedGuide guide = new PrintedGuide(unsafe.guide())) {
            assertThat(guide.text(1)).contains("DANGER", "Not for hand-over");
        }
        assertThat(printed("lantern-moth").text(1)).doesNotContain("Not for hand-over");
    }

    /** The guide may lie beside a published record: nothing of the owner, no tester's name, no berth. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void saysNothingPersonal(String demo) {
        Job job = DemoJob.of(demo).assessment().job();
        String text = printed(demo).flowing();
        List<String> personal = new ArrayList<>();
        if (job.owner() != null) {
            personal.addAll(Stream.of(
                            job.owner().name(), job.owner().phone(), job.owner().email())
                    .filter(Objects::nonNull)
                    .toList());
        }
        if (job.craft().berth() != null) {
            personal.add(job.craft().berth());
        }
        job.tests().stream()
                .map(test -> test.by())
                .filter(by -> by != null && !by.equals(job.job().fitter()))
                .forEach(personal::add);
        assertThat(personal).isNotEmpty();
        // The installer's own telephone may be the one that a workboat's owner gives.
        personal.remove(DemoJob.of(demo).assessment().installer().phone());
        assertThat(text).doesNotContain(personal);
    }

    /** For those who want to look at the pages. */
    @AfterAll
    static void keep() throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "guides"));
        for (String demo : PRINTED.keySet()) {
            Files.write(folder.resolve(demo + ".pdf"), printed(demo).bytes());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {150, 300})
    void theCodeIsReadFromThePageByTwoReaders(int dpi, @TempDir Path folder) throws Exception {
        PrintedGuide guide = printed("lantern-moth");
        DemoJob demo = DemoJob.of("lantern-moth");
        String base = demo.assessment().installer().records();
        RecordLink link = new RecordLink(base, demo.assessment().job().job().record());
        int page = List.copyOf(contents(guide).values()).get(12);
        assertThat(guide.text(page))
                .contains(demo.assessment().job().job().record().toString());
        assertThat(guide.text(page).replace("\n", "")).contains(link.folder());
        BufferedImage image = guide.image(page, dpi);
        assertThat(readByZxing(image)).containsExactly(link.address());
        assertThat(readByZbar(image, folder)).containsExactly(link.address());
    }

    private static List<String> readByZxing(BufferedImage page) throws Exception {
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(page)));
        Map<DecodeHintType, Boolean> hints = Map.of(DecodeHintType.TRY_HARDER, true);
        return Arrays.stream(new QRCodeMultiReader().decodeMultiple(bitmap, hints))
                .map(Result::getText)
                .toList();
    }

    /** A reader whose authors are not the encoder's. */
    private static List<String> readByZbar(BufferedImage page, Path folder) throws IOException, InterruptedException {
        File picture = folder.resolve("page.png").toFile();
        ImageIO.write(page, "png", picture);
        Path read = folder.resolve("read.txt");
        Process zbar;
        try {
            zbar = new ProcessBuilder("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture.getPath())
                    .redirectOutput(read.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw new AssertionError("this test needs the program zbarimg: install zbar-tools (Debian) or zbar", e);
        }
        assertThat(zbar.waitFor()).as("zbarimg found a code").isZero();
        return Files.readAllLines(read, StandardCharsets.UTF_8);
    }

    @Test
    void sameJobSameBytes() {
        assertThat(DemoJob.of("lantern-moth").guide())
                .isEqualTo(DemoJob.of("lantern-moth").guide());
    }

    /** A guide without shore, sockets, circuits or appliances is still a guide. */
    @ParameterizedTest
    @ValueSource(strings = {"appliances", "isolators", "expiries", "charging", "tests"})
    void doesWithoutASection(String section) throws IOException {
        try (PrintedGuide guide =
                new PrintedGuide(DemoJob.without("second-biscuit", section).guide())) {
            assertThat(guide.pages()).isGreaterThan(10);
            assertThat(guide.text()).doesNotContain("null", "{0}");
            assertThat(contents(guide)).hasSize(13);
        }
    }
}
