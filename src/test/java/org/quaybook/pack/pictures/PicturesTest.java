package org.quaybook.pack.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.DemoJobs;
import org.quaybook.KeptFile;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.DayFigures.Course;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Rcd;
import org.quaybook.job.Source;
import org.quaybook.pack.pictures.DrawnPicture.Line;
import org.quaybook.pack.pictures.DrawnPicture.Text;
import org.quaybook.text.Words;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The pictures of all demo jobs, read back from their SVG. Sizes and limits without a named source are this project's own.
 */
class PicturesTest {

    /** ISO 216: A5 is 148 mm wide; inner and outer margin of the guide take 30 mm. */
    private static final double TEXT_WIDTH = (148 - 30) / 25.4 * 72;

    /** ANSI/ASME Y14.1 half Letter is 5.5 inches wide. */
    private static final double HALF_LETTER = (5.5 * 25.4 - 30) / 25.4 * 72;

    private static final double LEAST_POINTS = 7;

    /** 210 mm less margins of 16 and 15 mm and a heading. */
    private static final double MOST_HEIGHT = 168 / 25.4 * 72;

    private static final Map<String, DrawnJob> DRAWN = new ConcurrentHashMap<>();

    private static DrawnJob drawn(String demo) {
        return DRAWN.computeIfAbsent(demo, DrawnJob::of);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void drawsEveryPicture(String demo) {
        assertThat(drawn(demo).pictures())
                .containsOnlyKeys("system", "batterySide", "mainsSide", "symbols", "run", "running", "rest", "day");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void isLegibleOnSmallPaper(String demo) {
        drawn(demo).pictures().values().forEach(PicturesTest::assertLegible);
    }

    @ParameterizedTest
    @MethodSource("languages")
    void isLegibleInEveryLanguage(String language) {
        for (String demo : DemoJobs.ALL) {
            Pictures.of(drawn(demo).assessment(), Words.of(language), new Look("#1b3a4b", "#e8ebed"))
                    .forEach((name, svg) ->
                            assertLegible(new DrawnPicture(language + " " + demo + " " + name, svg.text())));
        }
    }

    static List<String> languages() {
        return Words.languages();
    }

    private static void assertLegible(DrawnPicture picture) {
        assertThat(picture.width()).isCloseTo(TEXT_WIDTH, within(1.0));
        assertThat(picture.height()).as("height of %s", picture.name()).isLessThan(MOST_HEIGHT);
        List<Text> texts = picture.texts();
        assertThat(texts).isNotEmpty();
        for (Text text : texts) {
            assertThat(text.size() * HALF_LETTER / picture.width())
                    .as("%s: %s", picture.name(), text)
                    .isGreaterThanOrEqualTo(LEAST_POINTS);
            assertThat(text.left()).as("%s: %s", picture.name(), text).isGreaterThanOrEqualTo(-0.2);
            assertThat(text.right()).as("%s: %s", picture.name(), text).isLessThanOrEqualTo(picture.width() + 0.2);
            assertThat(text.top()).as("%s: %s", picture.name(), text).isGreaterThanOrEqualTo(picture.top() - 0.2);
            assertThat(text.bottom()).as("%s: %s", picture.name(), text).isLessThanOrEqualTo(picture.bottom());
        }
        for (int i = 0; i < texts.size(); i++) {
            for (int j = i + 1; j < texts.size(); j++) {
                assertThat(texts.get(i).overlaps(texts.get(j)))
                        .as("%s: %s and %s", picture.name(), texts.get(i), texts.get(j))
                        .isFalse();
            }
        }
        for (Line line : picture.lines()) {
            for (Text text : texts) {
                assertThat(line.crosses(text))
                        .as("%s: %s through %s", picture.name(), line, text)
                        .isFalse();
            }
        }
    }

    /** Names beside curves stand in the order of the curves where the first of them ends. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void namesOfCurvesStandInTheOrderOfTheCurves(String demo) {
        for (String name : List.of("running", "day")) {
            DrawnPicture picture = drawn(demo).picture(name);
            List<List<double[]>> curves = new ArrayList<>();
            List<double[]> names = new ArrayList<>();
            for (Element series : picture.parts("series")) {
                List<double[]> corners = DrawnPicture.corners(
                        (Element) series.getElementsByTagName("path").item(0));
                double[] end = corners.get(corners.size() - 1);
                curves.add(corners);
                names.add(leaderFrom(picture, end));
            }
            assertThat(curves).as(name).hasSizeGreaterThan(1);
            for (int i = 0; i < curves.size(); i++) {
                for (int j = 0; j < curves.size(); j++) {
                    double x = Math.min(end(curves.get(i)), end(curves.get(j)));
                    if (heightAt(curves.get(i), x) < heightAt(curves.get(j), x) - 0.05) {
                        assertThat(names.get(i)[1])
                                .as("%s: name of curve %s above that of %s", name, i, j)
                                .isLessThan(names.get(j)[1]);
                    }
                }
            }
        }
    }

    private static double end(List<double[]> curve) {
        return curve.get(curve.size() - 1)[0];
    }

    private static double heightAt(List<double[]> curve, double x) {
        for (int i = 1; i < curve.size(); i++) {
            double[] from = curve.get(i - 1);
            double[] to = curve.get(i);
            if (x <= to[0] + 1e-6) {
                return from[1] + (x - from[0]) / (to[0] - from[0]) * (to[1] - from[1]);
            }
        }
        throw new IllegalArgumentException("the curve ends before " + x);
    }

    /** Where the thin line from the end of a curve reaches a name. */
    private static double[] leaderFrom(DrawnPicture picture, double[] end) {
        return picture.elements("path").stream()
                .map(DrawnPicture::corners)
                .filter(corners -> corners.size() == 3)
                .filter(corners -> Math.abs(corners.get(0)[1] - end[1]) < 0.02)
                .filter(corners -> corners.get(0)[0] > end[0] && corners.get(0)[0] < end[0] + 5)
                .map(corners -> corners.get(2))
                .findFirst()
                .orElseThrow();
    }

    /** The key of symbols breaks lines between words only. */
    @ParameterizedTest
    @MethodSource("languages")
    void keyOfSymbolsBreaksNoWord(String language) {
        Words words = Words.of(language);
        for (String demo : DemoJobs.ALL) {
            DrawnPicture picture =
                    Pictures.of(drawn(demo).assessment(), words, new Look("#1b3a4b", "#e8ebed")).entrySet().stream()
                            .filter(drawing -> drawing.getKey().equals("symbols"))
                            .map(drawing -> new DrawnPicture(
                                    language + " " + demo, drawing.getValue().text()))
                            .findFirst()
                            .orElseThrow();
            String flowing = picture.flowing();
            for (Element symbol : picture.parts("symbol")) {
                assertThat(flowing)
                        .as(picture.name())
                        .contains(words.say("pictures.symbol." + symbol.getAttribute("data-symbol")));
            }
        }
    }

    /** A name in bold begins a note: it stands further from the line above it than lines of one note from each other. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void notesStandApart(String demo) {
        for (String name : List.of("batterySide", "mainsSide")) {
            List<Text> texts = drawn(demo).picture(name).texts();
            for (Text upper : texts) {
                for (Text lower : texts) {
                    double gap = lower.top() - upper.bottom();
                    if (lower.bold()
                            && !upper.bold()
                            && gap > 0
                            && lower.left() < upper.right()
                            && upper.left() < lower.right()) {
                        assertThat(gap)
                                .as("%s: %s below %s", name, lower, upper)
                                .isGreaterThan(1.4 * IN_NOTE);
                    }
                }
            }
        }
    }

    /** From a baseline to the tops of the capitals below it, inside a note of small letters. */
    private static final double IN_NOTE = Lettering.SMALL.leading() - Lettering.SMALL.capitals();

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyPartHasItsSymbol(String demo) {
        DrawnJob drawn = drawn(demo);
        Job job = drawn.assessment().job();
        DrawnPicture battery = drawn.picture("batterySide");
        DrawnPicture mains = drawn.picture("mainsSide");
        assertThat(battery.of("fuse"))
                .containsExactlyInAnyOrderElementsOf(
                        job.fuses().stream().map(fuse -> fuse.id()).toList());
        Set<String> switches = new TreeSet<>(battery.of("isolator"));
        switches.addAll(mains.of("isolator"));
        switches.addAll(mains.of("breaker"));
        assertThat(switches)
                .containsAll(job.isolators().stream().map(it -> it.id()).toList());
        assertThat(mains.of("rcd"))
                .containsExactlyInAnyOrderElementsOf(
                        job.rcds().stream().map(rcd -> rcd.id()).toList());
        assertThat(mains.of("breaker"))
                .containsAll(job.acCircuits().stream().map(it -> it.id()).toList());
        assertThat(mains.count("shore-inlet")).isEqualTo(job.shore() == null ? 0 : 1);
        assertThat(mains.count("transformer"))
                .isEqualTo(job.shore() == null || job.shore().transformer() == null ? 0 : 1);
        assertThat(mains.count("generator")).isEqualTo(job.generator() == null ? 0 : 1);
        assertThat(mains.count("changeover")).isEqualTo(1);
        assertThat(mains.count("inverter")).isEqualTo(1);
        assertThat(battery.count("inverter")).isEqualTo(1);
        assertThat(mains.parts("bond")).hasSize(1);
        assertThat(battery.parts("cable")).hasSize(job.cables().size());
        assertThat(battery.parts("earth")).hasSize(job.earths().size());
        assertThat(battery.of("alternator")).containsExactlyInAnyOrderElementsOf(names(job, ChargeKind.ALTERNATOR));
        assertThat(battery.of("solar")).containsExactlyInAnyOrderElementsOf(names(job, ChargeKind.SOLAR));
        assertThat(battery.of("charger"))
                .containsAll(names(job, ChargeKind.SHORE_CHARGER))
                .containsAll(names(job, ChargeKind.GENERATOR));
        assertThat(mains.of("charger"))
                .hasSize(names(job, ChargeKind.SHORE_CHARGER).size()
                        + names(job, ChargeKind.GENERATOR).size());
        Set<String> used = new TreeSet<>();
        List.of(battery, mains)
                .forEach(picture -> picture.parts("symbol").forEach(it -> used.add(it.getAttribute("data-symbol"))));
        Set<String> explained = new TreeSet<>();
        drawn.picture("symbols").parts("symbol").forEach(it -> explained.add(it.getAttribute("data-symbol")));
        assertThat(explained).isEqualTo(used);
    }

    private static List<String> names(Job job, ChargeKind kind) {
        return job.charging().stream()
                .filter(charging -> charging.kind() == kind)
                .map(Charging::name)
                .toList();
    }

    /**
     * An isolating transformer stands between the main breaker and the RCD, and neither conductor passes it: IEC 60617, two
     * circles that reach into one another, from memory.
     */
    @Test
    void anIsolatingTransformerPartsTheShoreFromTheBoard(@TempDir Path folder) {
        DrawnJob drawn = DrawnJob.changed(
                "lantern-moth",
                folder,
                text -> text.replace(
                        "shore:\n", "shore:\n  transformer: { neutral-tied: yes, shore-earth-goes-on: no }\n"));
        drawn.pictures().values().forEach(PicturesTest::assertLegible);
        DrawnPicture mains = drawn.picture("mainsSide");

        Element symbol = onlySymbol(mains, "transformer");
        NodeList circles = symbol.getElementsByTagName("circle");
        assertThat(circles.getLength()).isEqualTo(2);
        Element upper = (Element) circles.item(0);
        Element lower = (Element) circles.item(1);
        double radius = Double.parseDouble(upper.getAttribute("r"));
        double upperMiddle = Double.parseDouble(upper.getAttribute("cy"));
        double lowerMiddle = Double.parseDouble(lower.getAttribute("cy"));
        assertThat(lower.getAttribute("r")).isEqualTo(upper.getAttribute("r"));
        assertThat(lowerMiddle - upperMiddle).isGreaterThan(radius).isLessThan(2 * radius);
        double x = Double.parseDouble(upper.getAttribute("cx"));
        assertThat(mains.lines())
                .noneMatch(line -> line.x1() == x
                        && line.x2() == x
                        && Math.max(line.y1(), line.y2()) > upperMiddle - radius + 0.1
                        && Math.min(line.y1(), line.y2()) < lowerMiddle + radius - 0.1);
        assertThat(upperMiddle).isGreaterThan(height(onlySymbol(mains, "shore-inlet")));
        assertThat(mains.flowing()).contains("Isolating transformer", "neutral behind it tied to earth there");
        assertThat(drawn.picture("symbols").count("transformer")).isEqualTo(1);
        assertThat(mains.description()).contains("Behind the inlet an isolating transformer");
    }

    private static Element onlySymbol(DrawnPicture picture, String symbol) {
        List<Element> found = picture.parts("symbol").stream()
                .filter(part -> part.getAttribute("data-symbol").equals(symbol))
                .toList();
        assertThat(found).as(symbol).hasSize(1);
        return found.get(0);
    }

    /** The lowest corner of the paths of a symbol. */
    private static double height(Element symbol) {
        NodeList paths = symbol.getElementsByTagName("path");
        return IntStream.range(0, paths.getLength())
                .mapToObj(i -> DrawnPicture.corners((Element) paths.item(i)))
                .flatMap(List::stream)
                .mapToDouble(corner -> corner[1])
                .max()
                .orElseThrow();
    }

    /** Strings and blocks as the job has them: one symbol each up to five strings of four blocks. */
    @Test
    void drawsTheBankAsItIs() {
        assertThat(drawn("lantern-moth").picture("batterySide").count("battery"))
                .isEqualTo(3);
        assertThat(drawn("marmalade-meridian").picture("batterySide").count("battery"))
                .isEqualTo(8);
        assertThat(drawn("persimmon-tug").picture("batterySide").of("battery"))
                .containsExactlyInAnyOrder("1/1", "1/12");
        Map.of("lantern-moth", "opposite-ends", "second-biscuit", "same-end", "hut-seventeen", "busbar")
                .forEach((demo, ends) -> assertThat(
                                drawn(demo).picture("batterySide").parts("take-off"))
                        .extracting(part -> part.getAttribute("data-take-off"))
                        .containsExactly(ends));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 24})
    void drawsAnyNumberOfStrings(int strings, @TempDir Path folder) {
        for (String ends : List.of("opposite-ends", "same-end", "busbar")) {
            DrawnJob drawn = DrawnJob.changed(
                    "lantern-moth",
                    folder,
                    text -> text.replace("parallel: 3", "parallel: " + strings)
                            .replace("take-off: opposite-ends", "take-off: " + ends)
                            .replace("Lantern Moth", "Lantern Moth the Second"));
            drawn.pictures().values().forEach(PicturesTest::assertLegible);
            assertThat(drawn.picture("batterySide").count("battery")).isEqualTo(Math.min(strings, strings > 5 ? 4 : 5));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 5, 14, 40, 120})
    void drawsAnyNumberOfCircuits(int circuits, @TempDir Path folder) {
        for (String demo : List.of("lantern-moth", "marmalade-meridian", "hut-seventeen")) {
            DrawnJob drawn = DrawnJob.changed(demo, folder, text -> withCircuits(text, circuits));
            drawn.pictures().values().forEach(PicturesTest::assertLegible);
            List<DrawnPicture> mains = drawn.all("mainsSide");
            assertThat(mains).hasSizeGreaterThanOrEqualTo(circuits / 20);
            assertGoesOn(mains);
            // Circuits hang on a conductor, wherever their diagram is cut.
            mains.stream()
                    .skip(1)
                    .forEach(lower -> assertThat(wiresAt(lower, lower.top() + 5))
                            .as(lower.name())
                            .isNotEmpty());
            assertThat(all(mains, "breaker").filter(id -> id.startsWith("C")))
                    .containsExactlyInAnyOrderElementsOf(IntStream.rangeClosed(1, circuits)
                            .mapToObj(i -> "C" + i)
                            .toList());
            assertThat(all(mains, "rcd"))
                    .containsExactlyInAnyOrderElementsOf(drawn.assessment().job().rcds().stream()
                            .map(Rcd::id)
                            .toList());
        }
    }

    private static Stream<String> all(List<DrawnPicture> pictures, String symbol) {
        return pictures.stream()
                .flatMap(picture -> picture.parts("symbol").stream())
                .filter(it -> it.getAttribute("data-symbol").equals(symbol))
                .map(it -> it.getAttribute("data-of"));
    }

    /** What leaves a picture at its foot comes in at the head of the next one, and both say so. */
    private static void assertGoesOn(List<DrawnPicture> pictures) {
        for (int i = 1; i < pictures.size(); i++) {
            DrawnPicture upper = pictures.get(i - 1);
            DrawnPicture lower = pictures.get(i);
            assertThat(lower.title()).endsWith("part %d of %d".formatted(i + 1, pictures.size()));
            assertThat(upper.flowing())
                    .contains("part %d of %d: goes on in part %d".formatted(i, pictures.size(), i + 1));
            assertThat(lower.flowing()).contains("part %d of %d: from part %d".formatted(i + 1, pictures.size(), i));
            assertThat(wiresAt(lower, lower.top() + 5))
                    .as("%s after %s", lower.name(), upper.name())
                    .isEqualTo(wiresAt(upper, upper.bottom() - 8));
        }
    }

    private static Set<String> wiresAt(DrawnPicture picture, double y) {
        Set<String> wires = new TreeSet<>();
        for (Line line : picture.lines()) {
            if (line.x1() == line.x2() && Math.min(line.y1(), line.y2()) <= y && Math.max(line.y1(), line.y2()) >= y) {
                wires.add("x=" + line.x1());
            }
        }
        return wires;
    }

    /** Each of what the battery side consists of stands in one of its pictures, and in one only. */
    @ParameterizedTest
    @ValueSource(ints = {3, 12, 60})
    void drawsAnyNumberOfChargersBranchesAndEarths(int each, @TempDir Path folder) {
        DrawnJob drawn = DrawnJob.changed(
                "lantern-moth",
                folder,
                text -> more(
                        more(
                                more(
                                        text,
                                        "charging",
                                        each,
                                        "{ kind: solar, name: Panel %d, current: 5 A, per-day: 4 h }"),
                                "fuses",
                                each,
                                "{ id: FB%d, protects: [], role: branch, feeds: Pump %1$d, conductor: 6 mm2, load: 10 A,"
                                        + " family: midi, rating: 30 A, distance: 100 mm }"),
                        "earths",
                        each,
                        "{ id: EX%d, kind: bond, from: thing %1$d, to: hull, fitted: 16 mm2, length: 1.4 m }"));
        drawn.pictures().values().forEach(PicturesTest::assertLegible);
        List<DrawnPicture> battery = drawn.all("batterySide");
        assertThat(battery).hasSizeGreaterThan(each / 8);
        assertGoesOn(battery);
        Job job = drawn.assessment().job();
        assertThat(all(battery, "fuse"))
                .containsExactlyInAnyOrderElementsOf(
                        job.fuses().stream().map(it -> it.id()).toList());
        assertThat(all(battery, "solar")).containsExactlyInAnyOrderElementsOf(names(job, ChargeKind.SOLAR));
        assertThat(battery.stream().flatMap(picture -> picture.parts("earth").stream()))
                .extracting(it -> it.getAttribute("data-earth"))
                .containsExactlyInAnyOrderElementsOf(
                        job.earths().stream().map(it -> it.id()).toList());
        String all =
                String.join(" ", battery.stream().map(DrawnPicture::flowing).toList());
        assertThat(all).contains("Pump 1 ", "Pump " + each);
        assertThat(drawn.picture("system").flowing()).contains(each > 3 ? "more" : "Panel 3");
    }

    /** It carries what the charger gives, and feeds nothing. */
    @Test
    void aChargersFuseIsDrawnInItsOwnLine(@TempDir Path folder) {
        DrawnJob drawn = DrawnJob.changed(
                "lantern-moth",
                folder,
                text -> more(
                        more(
                                text,
                                "charging",
                                2,
                                "{ kind: solar, name: Panel %d, current: 5 A, per-day: 4 h, fuse: FC }"),
                        "fuses",
                        1,
                        "{ id: FC, role: branch, feeds: Panel fuse %d, conductor: 6 mm2, load: 10 A, family: midi, rating: 30 A }"));
        List<DrawnPicture> battery = drawn.all("batterySide");
        battery.forEach(PicturesTest::assertLegible);
        assertThat(all(battery, "fuse")).containsOnlyOnce("FC");
        assertThat(String.join(" ", battery.stream().map(DrawnPicture::flowing).toList()))
                .contains("Panel 1 FC · ", "Panel 2 behind FC")
                .doesNotContain("Panel fuse 1");
    }

    private static String more(String text, String list, int each, String item) {
        String items = IntStream.rangeClosed(1, each)
                .mapToObj(i -> "  - " + item.formatted(i) + "\n")
                .collect(Collectors.joining());
        return text.replaceFirst("(?m)^" + list + ":\n", Matcher.quoteReplacement(list + ":\n" + items));
    }

    /** IEC 60617, from memory: a converter is a square whose diagonal ends in its corners. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void convertersAreSquare(String demo) {
        for (String name : List.of("batterySide", "mainsSide", "symbols")) {
            for (Element symbol : drawn(demo).picture(name).parts("symbol")) {
                NodeList squares = symbol.getElementsByTagName("rect");
                if (Set.of("inverter", "charger").contains(symbol.getAttribute("data-symbol"))) {
                    Element square = (Element) squares.item(0);
                    double side = Double.parseDouble(square.getAttribute("width"));
                    double left = Double.parseDouble(square.getAttribute("x"));
                    double top = Double.parseDouble(square.getAttribute("y"));
                    assertThat(Double.parseDouble(square.getAttribute("height")))
                            .isEqualTo(side);
                    List<double[]> diagonal = DrawnPicture.corners(
                            (Element) symbol.getElementsByTagName("path").item(0));
                    assertThat(diagonal.get(0)).containsExactly(new double[] {left, top + side}, within(0.02));
                    assertThat(diagonal.get(1)).containsExactly(new double[] {left + side, top}, within(0.02));
                }
            }
        }
    }

    /** The picture for a glance names some of many outlets, and how many more there are. */
    @Test
    void namesSomeOfManyOutlets(@TempDir Path folder) {
        DrawnJob drawn = DrawnJob.changed(
                "lantern-moth",
                folder,
                text -> more(
                        text,
                        "sockets",
                        200,
                        "{ name: Outlet %d, where: cabin, shore-on: shore, shore-off: inverter }"));
        drawn.pictures().values().forEach(PicturesTest::assertLegible);
        long outlets = drawn.assessment().job().sockets().stream()
                .filter(socket -> Given.maybe(socket.shoreOff())
                        .filter(Source.INVERTER::equals)
                        .isPresent())
                .count();
        assertThat(drawn.picture("system").flowing()).contains("Outlet 22 and " + (outlets - 22) + " more");
    }

    /** Every third circuit on shore only where there is one, two RCDs in turn, and one circuit without any. */
    private static String withCircuits(String text, int circuits) {
        boolean two = text.contains("id: R2");
        StringBuilder list = new StringBuilder("ac-circuits:\n");
        for (int i = 1; i <= circuits; i++) {
            boolean shore = two && i % 3 == 0;
            list.append("  - { id: C")
                    .append(i)
                    .append(", name: Sockets of cabin number ")
                    .append(i);
            list.append(", breaker: 16 A, curve: B, cable: 2.5 mm2, source: ").append(shore ? "shore" : "inverter");
            list.append(i == 4 ? "" : ", rcd: " + (two && !shore ? "R2" : "R1")).append(" }\n");
        }
        return text.replaceFirst("(?m)^ac-circuits:\n(^  .*\n)+", Matcher.quoteReplacement(list.toString()))
                .replaceAll("(?m)^.*of: \\[A1.*\n", "")
                .replace(", circuit: A3", "");
    }

    @Test
    void drawsWithoutShoreAndWithoutMuchElse(@TempDir Path folder) {
        DrawnJob bare = DrawnJob.changed(
                "second-biscuit",
                folder,
                text -> without(
                        text,
                        "shore",
                        "sockets",
                        "charging",
                        "earths",
                        "isolators",
                        "rcds",
                        "ac-circuits",
                        "tests",
                        "appliances"));
        assertThat(bare.pictures()).doesNotContainKeys("run", "running");
        bare.pictures().values().forEach(PicturesTest::assertLegible);
        assertThat(bare.picture("mainsSide").count("shore-inlet")).isZero();
        assertThat(bare.picture("mainsSide").count("changeover")).isZero();
        assertThat(bare.picture("system").flowing()).doesNotContain("shore", "Shore");
    }

    private static String without(String text, String... sections) {
        String left = text;
        for (String section : sections) {
            left = left.replaceFirst("(?m)^" + section + ":.*\n(^[ \t].*\n|^\n)*", "");
        }
        return left;
    }

    /** Long names must wrap, not run into each other. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void survivesLongNames(String demo, @TempDir Path folder) {
        DrawnJob drawn = DrawnJob.changed(
                demo,
                folder,
                text -> text.replaceAll(
                                "(kind: [a-z-]+|id: \\w+), name: ", "$1, name: Wechselrichterbatteriehauptschalter ")
                        .replaceAll(
                                "(?m)^  where: .*$",
                                "  where: Steuerbordbackskistenzwischendeck hinten, unter der Treppe"));
        drawn.pictures().values().forEach(PicturesTest::assertLegible);
    }

    /** The numbers drawn are read off the axis as a reader would, and are the figures. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void curvesLieWhereTheFiguresSay(String demo) {
        DrawnJob drawn = drawn(demo);
        Figures figures = drawn.assessment().figures();
        DrawnPicture running = drawn.picture("running");
        ToDoubleFunction<double[]> volts = scale(running, "(-?[\\d.]+)\u00a0V");
        for (ApplianceFigures load : figures.appliances()) {
            List<double[]> points = points(running, load.key());
            if (points.isEmpty()) {
                continue;
            }
            List<Double> expected = new ArrayList<>();
            load.runningVoltage().ifPresent(full -> expected.add(full.value().volts()));
            load.running()
                    .from()
                    .forEach(row -> row.voltage()
                            .ifPresent(at -> expected.add(at.value().volts())));
            assertThat(points).hasSameSizeAs(expected);
            for (int i = 0; i < points.size(); i++) {
                assertThat(volts.applyAsDouble(points.get(i))).isCloseTo(expected.get(i), within(0.02));
            }
        }
        assertThat(volts.applyAsDouble(points(running, "alarm").get(0)))
                .isCloseTo(figures.inverter().alarm().value().volts(), within(0.02));
        assertThat(volts.applyAsDouble(points(running, "cut-out").get(0)))
                .isCloseTo(figures.inverter().cutOut().value().volts(), within(0.02));
        DrawnPicture rest = drawn.picture("rest");
        ToDoubleFunction<double[]> restVolts = scale(rest, "(-?[\\d.]+)\u00a0V");
        List<double[]> points = points(rest, "rest");
        assertThat(points).hasSameSizeAs(figures.bank().restTable());
        for (int i = 0; i < points.size(); i++) {
            assertThat(restVolts.applyAsDouble(points.get(i)))
                    .isCloseTo(figures.bank().restTable().get(i).rest().value().volts(), within(0.03));
        }
        DrawnPicture day = drawn.picture("day");
        ToDoubleFunction<double[]> percent = scale(day, "(-?[\\d.]+)\u00a0%");
        for (Course course : figures.day().courses()) {
            List<double[]> charge = points(day, course.season().name().toLowerCase(Locale.ROOT));
            for (int i = 0; i < charge.size(); i++) {
                assertThat(percent.applyAsDouble(charge.get(i)))
                        .isCloseTo(course.charge().get(i).value().fraction() * 100, within(0.3));
            }
        }
    }

    /** From a height in the picture to a value, by the numbers at the left of the axis. */
    private static ToDoubleFunction<double[]> scale(DrawnPicture picture, String form) {
        List<double[]> ticks = new ArrayList<>();
        for (Text text : picture.texts()) {
            Matcher number = Pattern.compile(form).matcher(text.text());
            if (number.matches() && text.right() < 38) {
                ticks.add(new double[] {(text.top() + text.bottom()) / 2, Double.parseDouble(number.group(1))});
            }
        }
        assertThat(ticks).hasSizeGreaterThan(2);
        double[] first = ticks.get(0);
        double[] last = ticks.get(ticks.size() - 1);
        return point -> first[1] + (point[1] - first[0]) / (last[0] - first[0]) * (last[1] - first[1]);
    }

    private static List<double[]> points(DrawnPicture picture, String series) {
        return picture.parts("series").stream()
                .filter(part -> part.getAttribute("data-series").equals(series))
                .findFirst()
                .map(part -> DrawnPicture.corners(
                        (Element) part.getElementsByTagName("path").item(0)))
                .orElse(List.of());
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void textsAreTheFigures(String demo) {
        DrawnJob drawn = drawn(demo);
        Figures figures = drawn.assessment().figures();
        assertThat(drawn.picture("running").flowing())
                .contains(
                        word(figures.inverter().alarm()),
                        word(figures.inverter().cutOut()),
                        word(figures.bank().reserve()));
        String run = drawn.picture("run").flowing();
        String heard = drawn.picture("run").description();
        for (ApplianceFigures appliance : figures.appliances()) {
            assertThat(run).contains(word(appliance.time()), word(appliance.wornTime()));
            assertThat(heard)
                    .contains(appliance.appliance().name(), word(appliance.time()), word(appliance.wornTime()));
        }
        assertThat(drawn.picture("day").flowing()).contains(word(figures.day().use()));
        for (Course course : figures.day().courses()) {
            assertThat(drawn.picture("day").description()).contains(word(course.lowest()));
        }
        assertThat(drawn.picture("system").flowing())
                .contains(
                        word(figures.bank().usableEnergy()),
                        word(figures.inverter().continuous()));
        assertThat(drawn.picture("running").description())
                .contains(
                        word(figures.inverter().alarm()),
                        word(figures.inverter().cutOut()));
        assertThat(drawn.picture("rest").description())
                .contains(word(figures.bank().reserve()));
        assertThat(drawn.picture("batterySide").description())
                .contains(drawn.assessment().job().fuses().get(0).id());
        assertThat(drawn.picture("mainsSide").description())
                .contains(drawn.assessment().job().acCircuits().get(0).name());
    }

    private static String word(Figure<?> figure) {
        return DrawnJob.WORDS.word(figure.stated());
    }

    /** The square root's scale: the length of a bar goes with the root of its time. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void barsAreAsLongAsTheRootOfTheTime(String demo) {
        DrawnJob drawn = drawn(demo);
        Map<String, Double> lengths = new HashMap<>();
        drawn.picture("run")
                .parts("bar")
                .forEach(bar -> lengths.put(
                        bar.getAttribute("data-bar"),
                        Double.parseDouble(
                                ((Element) bar.getElementsByTagName("rect").item(0)).getAttribute("width"))));
        List<ApplianceFigures> able = drawn.assessment().figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .toList();
        assertThat(lengths).hasSameSizeAs(able);
        double unit = lengths.getOrDefault(able.get(0).key(), 0.0)
                / Math.sqrt(able.get(0).time().value().hours());
        for (ApplianceFigures appliance : able) {
            assertThat(lengths.get(appliance.key()))
                    .isCloseTo(unit * Math.sqrt(appliance.time().value().hours()), within(0.5));
        }
    }

    /** WCAG 2.2, 1.4.1: colour is not the only thing that tells series apart. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void seriesDifferByDashesAndMarks(String demo) {
        for (DrawnPicture picture : drawn(demo).pictures().values()) {
            List<String> looks = new ArrayList<>();
            for (Element series : picture.parts("series")) {
                Element path = (Element) series.getElementsByTagName("path").item(0);
                looks.add(path.getAttribute("stroke-dasharray") + "/" + mark(series));
            }
            assertThat(looks).as(picture.name()).doesNotHaveDuplicates();
        }
    }

    private static String mark(Element series) {
        Element mark = (Element) series.getElementsByTagName("g").item(0);
        return mark == null ? "" : mark.getAttribute("data-mark");
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyPictureHasATextInItsPlace(String demo) {
        Set<String> ids = new TreeSet<>();
        for (DrawnPicture picture : drawn(demo).pictures().values()) {
            Element root = picture.root();
            assertThat(root.getAttribute("role")).isEqualTo("img");
            for (String id : root.getAttribute("aria-labelledby").split(" ", -1)) {
                assertThat(ids.add(id)).as(id).isTrue();
                assertThat(picture.svg()).contains("id=\"" + id + "\"");
            }
            assertThat(picture.description()).as(picture.name()).hasSizeGreaterThan(20);
            assertThat(root.getElementsByTagName("title").item(0).getTextContent())
                    .isNotBlank();
        }
    }

    /** Kept as a page to be looked at. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void isDrawnAsBefore(String demo) {
        StringBuilder page =
                new StringBuilder("<!DOCTYPE html>\n<meta charset=\"utf-8\"/>\n<title>" + demo + "</title>\n");
        drawn(demo)
                .pictures()
                .values()
                .forEach(picture -> page.append(picture.svg()).append("\n<hr/>\n"));
        KeptFile.assertSame(Path.of("src/test/resources/pictures", demo + ".html"), page.toString(), "pictures");
    }

    /** What the generator feeds besides the inverter's outlets is not said to live on shore power alone. */
    @Test
    void saysWhatTheGeneratorFeeds(@TempDir Path folder) {
        DrawnJob both = drawn("marmalade-meridian");
        assertThat(both.picture("mainsSide").flowing()).contains("on shore power or generator");
        assertThat(both.picture("system").flowing())
                .contains("On shore power or generator")
                .contains("on shore power only");
        DrawnJob shore = DrawnJob.changed(
                "marmalade-meridian",
                folder,
                text -> text.replace(
                        "shore-off: nothing, generator-on: generator", "shore-off: nothing, generator-on: nothing"));
        assertThat(shore.picture("mainsSide").flowing())
                .contains("on shore power only")
                .doesNotContain("on shore power or generator");
        assertThat(shore.picture("system").flowing()).contains("Only on shore power");
    }

    /** An accent on a capital of the uppermost line is part of the picture. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void leavesRoomForAccents(String demo) {
        drawn(demo)
                .pictures()
                .values()
                .forEach(picture -> assertThat(Double.parseDouble(
                                picture.root().getAttribute("viewBox").split(" ", -1)[1]))
                        .as(picture.name())
                        .isLessThanOrEqualTo(-3));
    }
}
