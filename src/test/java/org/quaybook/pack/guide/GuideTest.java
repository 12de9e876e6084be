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
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.AtShoreFigures;
import org.quaybook.figures.ChargeFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.TogetherFigures;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Socket;
import org.quaybook.pack.guide.PrintedGuide.Letter;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Rounding;
import org.quaybook.record.Edition;
import org.quaybook.record.RecordLink;
import org.quaybook.render.PageFormat;
import org.quaybook.render.Templates;
import org.quaybook.text.Words;

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
        assertThat(contents.keySet()).containsExactlyElementsOf(chapters(DemoJob.of(demo)));
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

    /** Under "as it is now" stand the minutes of that bank, under "plan on" the shorter ones; both are figures of the job. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theMinutesAfterTheAlarmAreThoseOfTheirColumn(String demo) {
        PrintedGuide guide = printed(demo);
        String all =
                IntStream.rangeClosed(1, guide.pages()).mapToObj(guide::text).collect(Collectors.joining(" "));
        String table = all.substring(all.indexOf("Each appliance, battery as it is now"))
                .replaceAll("\\s+", " ");
        table = table.substring(0, table.indexOf("from the alarm until all goes dark"));
        assertThat(table).contains("Then", "left", "Plan on");
        for (ApplianceFigures it : DemoJob.of(demo).assessment().figures().appliances()) {
            if (it.runs() && it.running().warning().isPresent()) {
                var warning = it.running().warning().get();
                String plan = warning.toPlanOn()
                        .map(left -> DemoJob.WORDS.word(left.stated()))
                        .orElse("–");
                String first = it.appliance().name().split(" ", -1)[0];
                String times = (DemoJob.WORDS.word(warning.time().stated()) + " " + plan).replace('\u00a0', ' ');
                assertThat(table)
                        .as(it.appliance().name())
                        .containsPattern(Pattern.quote(first) + "[^–]{0,60} " + Pattern.quote(times) + " ");
            }
        }
    }

    /** What the guide of a job must have, by what the job has. */
    private static List<String> chapters(DemoJob demo) {
        Job job = demo.assessment().job();
        List<String> titles = new ArrayList<>(List.of("Quick card", "Stay safe", "What you can run"));
        if (job.appliances().size() > 1) {
            titles.add("What can run together");
        }
        titles.addAll(List.of("The battery by voltage", "Why it cuts out early", "What is normal"));
        if (!job.charging().isEmpty()) {
            titles.add("Filling up again");
        }
        if (job.shore() != null) {
            titles.add(job.generator() == null ? "Shore power" : "Shore power and generator");
        } else if (job.generator() != null) {
            titles.add("The generator");
        }
        titles.add("What feeds which socket");
        if (job.shore() != null) {
            titles.add("Try it: pull the plug");
        }
        titles.addAll(List.of(
                "Leaving the " + job.craft().kind().name().toLowerCase(java.util.Locale.ROOT),
                "Winter and summer",
                job.rcds().isEmpty() ? "Care and dates" : "RCD test, care and dates",
                "Something is wrong",
                "Everything is off: start here",
                "Your installation",
                "How the figures were reached",
                "Words explained",
                "Who to call",
                "Log and notes"));
        return IntStream.range(0, titles.size())
                .mapToObj(i -> (i + 1) + " " + titles.get(i))
                .toList();
    }

    private static int pageOf(PrintedGuide guide, String title) {
        return contents(guide).entrySet().stream()
                .filter(entry -> entry.getKey().endsWith(" " + title))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    /** The text of a chapter, with line breaks as spaces. */
    private static String chapter(PrintedGuide guide, String title) {
        int from = pageOf(guide, title);
        int to = contents(guide).values().stream()
                .filter(page -> page > from)
                .min(Comparator.naturalOrder())
                .orElse(guide.pages() + 1);
        return IntStream.range(from, to)
                .mapToObj(guide::text)
                .collect(Collectors.joining("\n"))
                .replaceAll("\\s+", " ");
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

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void tellsWhatIsNormalHere(String demo) {
        Figures figures = figures(demo);
        String text = chapter(printed(demo), "What is normal");
        assertThat(text)
                .contains(
                        "Full, at rest " + word(figures.bank().restFull()),
                        word(figures.bank().restAtReserve()),
                        word(figures.inverter().alarm()),
                        word(figures.inverter().idle()),
                        "up to "
                                + Given.maybe(DemoJob.of(demo)
                                                .assessment()
                                                .job()
                                                .bank()
                                                .chargeVoltage())
                                        .map(set -> DemoJob.WORDS.word(set).replace('\u00a0', ' '))
                                        .orElseGet(() ->
                                                word(figures.bankCharging().voltage())));
        ApplianceFigures heavy = figures.appliances().stream()
                .filter(ApplianceFigures::runs)
                .max(Comparator.comparing(it -> it.power().value()))
                .orElseThrow();
        assertThat(text)
                .contains(heavy.appliance().name() + " on, battery full: at the inverter "
                        + DemoJob.WORDS
                                .numbers()
                                .fixed(heavy.runningVoltage().orElseThrow().value(), "V", 2, Rounding.DOWN)
                                .replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void tellsHowLongEachChargerTakes(String demo) {
        String text = chapter(printed(demo), "Filling up again");
        for (ChargeFigures charger : figures(demo).charging()) {
            String name = String.valueOf(charger.charging().name());
            charger.recharge()
                    .ifPresent(recharge -> assertThat(text)
                            .contains(
                                    name,
                                    word(recharge.left()),
                                    word(recharge.toKnee().orElseThrow()) + " "
                                            + word(recharge.toFull().orElseThrow())));
            charger.summerDay().ifPresent(summer -> assertThat(text).contains(name + " " + word(summer)));
        }
        figures(demo).generator().ifPresent(generator -> assertThat(text).contains(word(generator.power())));
        figures(demo)
                .generator()
                .filter(generator -> generator.charger().value().watts() > 0)
                .ifPresent(generator -> assertThat(text)
                        .contains(word(generator.charger()))
                        .contains(
                                generator.beyond().isEmpty()
                                        ? List.of(word(generator.needed()))
                                        : generator.beyond().stream()
                                                .map(it -> word(it.startPower()))
                                                .toList()));
    }

    /** The well pump starts at 5.5 times 1.1 kW, that is 6.05 kW; the set gives 4.8 kW. */
    @Test
    void whatTheGeneratorCannotStartStaysOff() {
        assertThat(chapter(printed("hut-seventeen"), "The generator"))
                .contains("Leave this off: Well pump. It asks for more than the generator gives.");
        assertThat(chapter(printed("hut-seventeen"), "Filling up again"))
                .contains("Well pump: this can ask it for 6.05 kW.")
                .doesNotContain("too much at once");
    }

    /** A row of marks in the table says for each pair what the figures say. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void marksWhatCanRunTogether(String demo) {
        String text = chapter(printed(demo), "What can run together");
        List<ApplianceFigures> able = figures(demo).appliances().stream()
                .filter(ApplianceFigures::runs)
                .toList();
        for (ApplianceFigures row : able) {
            String marks = able.stream()
                    .map(column -> mark(demo, row.key(), column.key()))
                    .collect(Collectors.joining(" "));
            assertThat(text).contains(row.appliance().name() + " " + word(row.power()) + " " + marks);
        }
        figures(demo)
                .atShore()
                .filter(AtShoreFigures::tight)
                .ifPresentOrElse(
                        shore -> assertThat(text).contains("Reckoned with " + word(shore.available())),
                        () -> assertThat(text).doesNotContain("On shore power"));
    }

    private static String mark(String demo, String row, String column) {
        if (row.equals(column)) {
            return "·";
        }
        Set<String> both = Set.of(row, column);
        TogetherFigures.Order order = figures(demo).pairs().stream()
                .filter(pair -> Set.of(pair.first().key(), pair.second().key()).equals(both))
                .findFirst()
                .orElseThrow()
                .order();
        return order == TogetherFigures.Order.ANY ? "●" : order == TogetherFigures.Order.NEVER ? "✕" : "◐";
    }

    @Test
    void tellsWhichMustStartFirst() throws IOException {
        DemoJob pump = DemoJob.changed("hut-seventeen", "power: 10 kW (plate)", "power: 6.1 kW (plate)");
        try (PrintedGuide guide = new PrintedGuide(pump.guide())) {
            assertThat(chapter(guide, "What can run together"))
                    .contains("◐", "Start Well pump first. Let it settle. Then switch on Chainsaw chargers.");
        }
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void mapsEachSocket(String demo) {
        Job job = DemoJob.of(demo).assessment().job();
        PrintedGuide guide = printed(demo);
        int page = pageOf(guide, "What feeds which socket");
        assertThat(pageAfter(guide, page)).isEqualTo(page + 1);
        String text = guide.text(page).replaceAll("\\s+", " ");
        for (Socket socket : job.sockets()) {
            String off =
                    DemoJob.WORDS.term(Objects.requireNonNull(socket.shoreOff().value()));
            assertThat(text).contains(socket.name().split(" "));
            assertThat(text).contains(marked(off));
            if (job.shore() != null) {
                assertThat(text)
                        .contains(marked(DemoJob.WORDS.term(
                                Objects.requireNonNull(socket.shoreOn().value()))));
            }
        }
        assertThat(text.contains(" fails")).isEqualTo(job.shore() != null);
    }

    private static String marked(String word) {
        return Map.of("shore power", "■ ", "inverter", "▨ ", "generator", "◆ ", "nothing", "□ ")
                        .get(word)
                + word;
    }

    private static int pageAfter(PrintedGuide guide, int page) {
        return contents(guide).values().stream()
                .filter(next -> next > page)
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** Pages that somebody acts by are not turned over. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void recoveryAndRehearsalAreOnePageEach(String demo) {
        PrintedGuide guide = printed(demo);
        DemoJob it = DemoJob.of(demo);
        int recovery = pageOf(guide, "Everything is off: start here");
        assertThat(pageAfter(guide, recovery)).isEqualTo(recovery + 1);
        assertThat(guide.text(recovery).replaceAll("\\s+", " "))
                .containsSubsequence(
                        "Take your time.",
                        "Step 1",
                        "nothing gets worse while you read",
                        "Date and time",
                        "Charge, %",
                        word(it.assessment().figures().bank().restAtReserve()) + " or below: charge first",
                        Objects.requireNonNull(it.assessment().installer().phone()),
                        it.assessment().job().job().record().toString());
        if (it.assessment().job().shore() != null) {
            int rehearsal = pageOf(guide, "Try it: pull the plug");
            assertThat(pageAfter(guide, rehearsal)).isEqualTo(rehearsal + 1);
            assertThat(guide.text(rehearsal)).contains("You must see", "If not", "☐", "Date", "Who");
        }
    }

    /** Nearer to the battery a short carries more: the figure under the table is enough for each fuse in it. */
    @Test
    void whatFusesMustBreakIsThatOfTheWorstPlace() throws IOException {
        DemoJob demo = DemoJob.changed(
                "lantern-moth",
                "\n\nisolators:",
                "\n  - { id: F2, protects: [], role: branch, feeds: Bilge pump, conductor: 16 mm2, load: 20 A, family: midi,"
                        + " rating: 40 A, distance: 20 mm }\n\nisolators:");
        List<FuseFigures> fuses = demo.assessment().figures().fuses();
        Current main = fuses.get(0).mustInterrupt().value();
        Figure<Current> branch = fuses.get(1).mustInterrupt();
        assertThat(branch.value()).isGreaterThan(main);
        try (PrintedGuide guide = new PrintedGuide(demo.guide())) {
            assertThat(guide.flowing())
                    .contains("F2 MIDI 40 A Bilge pump")
                    .contains("it must be able to break "
                            + DemoJob.WORDS.word(branch.stated()).replace('\u00a0', ' '));
        }
    }

    /** Long words and long sentences of another language must not push a page to act by over its end. */
    @ParameterizedTest
    @MethodSource("org.quaybook.text.Words#languages")
    void pagesToActByAreOnePageInEveryLanguage(String language) throws IOException {
        Words words = Words.of(language);
        DemoJob demo = DemoJob.of("marmalade-meridian");
        byte[] pdf = new Guide(new Edition(demo.assessment(), words), demo.branding(), Templates.builtIn())
                .on(PageFormat.A5)
                .pdf(List.of());
        try (PrintedGuide guide = new PrintedGuide(pdf)) {
            for (String chapter : List.of("sockets", "rehearsal", "recovery")) {
                int page = pageOf(guide, words.say("guide.chapter." + chapter).replace('\u00a0', ' '));
                assertThat(pageAfter(guide, page)).as(chapter).isEqualTo(page + 1);
            }
        }
    }

    /** What must be seen follows the changeover: one that takes over keeps sockets live, one that stays off does not. */
    @Test
    void theRehearsalFollowsTheChangeover() {
        assertThat(rehearsed("lantern-moth"))
                .contains("Still lit: Galley worktop and Saloon. Dark: Water heater.")
                .doesNotContain("Every lamp goes dark.", "Switch on the inverter.");
        assertThat(rehearsed("persimmon-tug")).contains("Every lamp goes dark.", "Switch on the inverter.");
        assertThat(rehearsed("second-biscuit"))
                .contains("Every lamp goes dark.", "Turn the changeover to “inverter”. Switch on the inverter.");
    }

    /** The cells of the rehearsal; each of their words is on its page. */
    private static List<String> rehearsed(String demo) {
        Map<String, Object> facts =
                new RehearsalChapter(Briefing.of(DemoJob.of(demo).assessment(), DemoJob.WORDS)).facts();
        List<String> cells = ((List<?>) Objects.requireNonNull(facts.get("steps")))
                .stream()
                        .flatMap(step -> ((Map<?, ?>) step).values().stream())
                        .map(Object::toString)
                        .toList();
        String text = chapter(printed(demo), "Try it: pull the plug");
        cells.forEach(cell -> assertThat(text).contains(cell.split("\\s+")));
        return cells;
    }

    @Test
    void namesWhatMustNotFail() {
        assertThat(printed("long-way-round").flowing()).contains("What must not fail", "Breathing machine: plan on ");
        assertThat(printed("lantern-moth").text()).doesNotContain("What must not fail");
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
            assertThat(guide.text(1)).contains("DANGER", "Not for handover");
        }
        assertThat(printed("lantern-moth").text(1)).doesNotContain("Not for handover");
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
        RecordLink link = RecordLink.of(demo.assessment());
        int page = pageOf(guide, "Who to call");
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
        DemoJob without = DemoJob.without("second-biscuit", section);
        try (PrintedGuide guide = new PrintedGuide(without.guide())) {
            assertThat(guide.pages()).isGreaterThan(10);
            assertThat(guide.text()).doesNotContain("null", "{0}");
            assertThat(contents(guide).keySet()).containsExactlyElementsOf(chapters(without));
        }
    }

    /** A dash that stands in the table of uses is explained above it, one that does not stand there is not. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void dashesAmongTheUsesAreExplained(String demo) {
        String text = printed(demo).text().replaceAll("\\s+", " ");
        List<ApplianceFigures> able = DemoJob.of(demo).assessment().figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .toList();
        boolean single = able.stream().anyMatch(it -> it.sharePerUse().isPresent());
        boolean several = able.stream().anyMatch(it -> it.sharePerUse().isEmpty());

        assertThat(text.contains("A dash: its length of use is not known.")).isEqualTo(single && several);
        assertThat(text.contains("A dash in the last column"))
                .isEqualTo(able.stream().anyMatch(it -> it.alarmBelow().isEmpty()));
    }
}
