package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.figures.TogetherFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Isolator;
import org.quaybook.job.StockReader;
import org.quaybook.record.Edition;
import org.quaybook.render.Dots;
import org.quaybook.render.Label;
import org.quaybook.render.PrintSettings;
import org.quaybook.render.RenderException;
import org.quaybook.render.Sheet;
import org.quaybook.render.Stock;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextStyle.Listing;
import org.quaybook.text.Words;

/**
 * Lists that become several labels. That each circuit stands on the board's list is asked by 46 CFR 111.30-15 (seen); how a
 * list is parted is this project's own rule.
 */
class LabelPartingTest {

    private static final Pattern NUMBER = Pattern.compile(".* · (\\d+) \\p{L}+ (\\d+)");

    @TempDir
    Path folder;

    private static List<TextBlock> texts(Label label) {
        return label.marks().stream()
                .filter(TextBlock.class::isInstance)
                .map(TextBlock.class::cast)
                .toList();
    }

    private static List<String> words(Label label) {
        return texts(label).stream().flatMap(text -> text.paragraphs().stream()).toList();
    }

    private static List<LabelSetter.Sized> parts(List<LabelSetter.Sized> all, String id) {
        return all.stream()
                .filter(one -> one.design().id().matches(id + "(-\\d+)?"))
                .toList();
    }

    private static List<String> circuitIds(DemoJob job) {
        return job.assessment().job().acCircuits().stream().map(AcCircuit::id).toList();
    }

    /** What of some ids stands on labels, in the order in which it stands there. */
    private static List<String> printed(List<LabelSetter.Sized> parts, List<String> ids) {
        Set<String> wanted = new HashSet<>(ids);
        return parts.stream()
                .flatMap(part -> words(part.label()).stream())
                .filter(wanted::contains)
                .toList();
    }

    private static Labels labels(DemoJob job, String... languages) {
        List<Edition> editions = Stream.of(languages)
                .map(language -> new Edition(job.assessment(), Words.of(language)))
                .toList();
        return new Labels(editions, job.branding(), job.link());
    }

    private static Stock stock(String id) {
        return PrintStock.of(Objects.requireNonNull(StockReader.standard(id).stock()));
    }

    private static void areNumbered(List<LabelSetter.Sized> parts, String id) {
        for (int i = 0; i < parts.size(); i++) {
            LabelSetter.Sized part = parts.get(i);
            assertThat(part.design().id()).isEqualTo(id + "-" + (i + 1));
            assertThat(part.label().id()).isEqualTo(part.design().id());
            Matcher number = NUMBER.matcher(part.design().title());
            assertThat(number.matches()).isTrue();
            assertThat(List.of(number.group(1), number.group(2)))
                    .containsExactly(Integer.toString(i + 1), Integer.toString(parts.size()));
            String last = words(part.label()).get(words(part.label()).size() - 1);
            assertThat(last).as("stamp").endsWith(" " + part.design().id());
        }
    }

    @ParameterizedTest
    @CsvSource({"28, 1", "100, 3", "300, 10"})
    void everyCircuitStandsOnOneLabelInOrder(int count, int labels) {
        DemoJob job = Grown.circuits(count, folder);
        List<LabelSetter.Sized> parts = parts(job.sized(), "circuits");
        assertThat(parts).hasSize(labels);
        assertThat(printed(parts, circuitIds(job))).containsExactlyElementsOf(circuitIds(job));
        if (labels > 1) {
            areNumbered(parts, "circuits");
        }
    }

    /** Each label is read by itself, and together they look like one table. */
    @Test
    void headsAreRepeatedOverTheSameColumns() {
        DemoJob job = Grown.circuits(100, folder);
        List<LabelSetter.Sized> parts = parts(job.sized(), "circuits");
        List<String> head = List.of("Circuit", "Feeds", "Breaker", "Cable", "RCD", "From");
        Set<List<Double>> columns = parts.stream()
                .map(part -> texts(part.label()).stream()
                        .filter(text -> head.contains(text.paragraphs().get(0)))
                        .map(text -> text.box().x())
                        .toList())
                .collect(Collectors.toSet());
        assertThat(columns).singleElement().satisfies(one -> assertThat(one).hasSize(head.size()));
        assertThat(parts).extracting(part -> part.label().width()).containsOnly(190.0);
        assertThat(parts)
                .allSatisfy(part -> assertThat(part.heightOnSheet())
                        .isLessThanOrEqualTo(Sheet.A4.room().height()));
    }

    @Test
    void circuitsOfOneRcdStayTogether() {
        DemoJob job = Grown.circuits(300, folder);
        Map<String, Set<String>> labelsOf = new TreeMap<>();
        for (LabelSetter.Sized part : parts(job.sized(), "circuits")) {
            for (AcCircuit circuit : job.assessment().job().acCircuits()) {
                if (words(part.label()).contains(circuit.id())) {
                    labelsOf.computeIfAbsent(Objects.requireNonNull(circuit.rcd()), rcd -> new HashSet<>())
                            .add(part.design().id());
                }
            }
        }
        assertThat(labelsOf).hasSize(39);
        assertThat(labelsOf.values()).allSatisfy(labels -> assertThat(labels).hasSize(1));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 100, 300})
    void otherListsArePartedEvenly(int count) {
        for (String id : List.of("dates", "dc-circuits", "switches")) {
            DemoJob job = id.equals("dates")
                    ? Grown.expiries(count, folder)
                    : id.equals("switches") ? Grown.switches(count, folder) : Grown.branches(count, folder);
            String sign = id.equals("dates") ? "Thing " : id.equals("switches") ? "SX" : "FX";
            List<String> rows = Stream.iterate(1, i -> i + 1)
                    .limit(count)
                    .map(i -> sign + i)
                    .toList();
            List<LabelSetter.Sized> parts = parts(job.sized(), id);
            assertThat(printed(parts, rows)).containsExactlyElementsOf(rows);
            if (parts.size() > 1) {
                areNumbered(parts, id);
                List<Double> heights =
                        parts.stream().map(part -> part.label().height()).toList();
                double highest = heights.stream().max(Double::compare).orElseThrow();
                assertThat(heights).allSatisfy(height -> assertThat(height).isGreaterThan(0.7 * highest));
            }
        }
    }

    /** What is to be written on stands once: on the last, under the dates. */
    @Test
    void whatStandsUnderAListStandsOnItsLastLabelAlone() {
        List<LabelSetter.Sized> parts = parts(Grown.expiries(100, folder).sized(), "dates");
        assertThat(parts).hasSizeGreaterThan(2);
        for (LabelSetter.Sized part : parts) {
            boolean last = part.equals(parts.get(parts.size() - 1));
            assertThat(words(part.label()).contains("Next inspection by")).isEqualTo(last);
        }
    }

    /** Both languages where there is room; else each for itself, and each parted only as it needs. */
    @Test
    void twoLanguagesArePartedEachForItself() {
        DemoJob small = Grown.circuits(12, folder);
        assertThat(parts(labels(small, "de", "fr").sized(Sheet.A4), "circuits")).hasSize(1);
        DemoJob job = Grown.circuits(100, folder);
        List<LabelSetter.Sized> sized = labels(job, "de", "fr").sized(Sheet.A4);
        List<LabelSetter.Sized> german = parts(sized, "circuits-de");
        List<LabelSetter.Sized> french = parts(sized, "circuits-fr");
        areNumbered(german, "circuits-de");
        areNumbered(french, "circuits-fr");
        for (List<LabelSetter.Sized> parts : List.of(german, french)) {
            assertThat(printed(parts, circuitIds(job))).containsExactlyElementsOf(circuitIds(job));
        }
        assertThat(german.get(0).design().title()).endsWith(" · 1 von " + german.size());
        assertThat(french.get(0).design().title()).endsWith(" · 1 sur " + french.size());
        assertThat(words(german.get(1).label())).contains("Versorgt").doesNotContain("Alimente");
        List<String> walk = sized.stream()
                .map(one -> one.design().id())
                .filter(id -> id.startsWith("circuits"))
                .toList();
        List<String> wanted = new ArrayList<>();
        german.forEach(part -> wanted.add(part.design().id()));
        french.forEach(part -> wanted.add(part.design().id()));
        assertThat(walk).containsExactlyElementsOf(wanted);
    }

    /** The message names the least label that would do, as for every other label. */
    @Test
    void stockThatWouldTakeDozensIsRefused() {
        DemoJob job = Grown.expiries(300, folder);
        for (String small : List.of("a4-3x8", "a4-2x4")) {
            assertThatThrownBy(
                            () -> labels(job, "en-GB").placed(job.design("dates"), List.of(stock(small)), Dots.DPI_300))
                    .isInstanceOfSatisfying(RenderException.class, refused -> {
                        assertThat(refused.diagnostics()).hasSize(1);
                        List<Object> told =
                                refused.diagnostics().get(0).message().arguments();
                        assertThat(told.get(0)).isEqualTo("dates");
                        assertThat((double) told.get(2)).isGreaterThan(1800);
                        assertThat(told.get(3)).isEqualTo(small);
                    });
        }
    }

    @Test
    void smallStockTakesAShortListInPartsOnlyWhereNoneTakesItWhole() {
        DemoJob job = Grown.expiries(30, folder);
        LabelDesign dates = job.design("dates");
        Labels labels = labels(job, "en-GB");
        Labels.Placed small = labels.placed(dates, List.of(stock("a4-2x4")), Dots.DPI_300);
        assertThat(small.labels()).hasSizeGreaterThan(2).allSatisfy(part -> {
            assertThat(part.label().width()).isEqualTo(92);
            assertThat(part.label().height()).isLessThanOrEqualTo(63);
        });
        Labels.Placed large = labels.placed(dates, List.of(stock("a4-2x4"), Stock.A4), Dots.DPI_300);
        assertThat(large.stock()).isEqualTo(Stock.A4);
        assertThat(large.labels()).hasSize(1);
        DemoJob longer = Grown.expiries(60, folder);
        Labels.Placed fewest = labels(longer, "en-GB")
                .placed(longer.design("dates"), List.of(stock("a4-2x4"), Stock.A4), Dots.DPI_300);
        assertThat(fewest.stock()).isEqualTo(Stock.A4);
        assertThat(fewest.labels()).hasSize(2);
    }

    /** On paper and on a tape of one colour; each part has its own file for those who engrave. */
    @Test
    void partsArePressedSingly() {
        DemoJob job = Grown.circuits(100, folder);
        LabelOrder order = new LabelOrder(
                List.of(stock("roll-102")),
                PrintSettings.USUAL,
                true,
                Set.of("circuits"),
                Set.of(LabelOrder.Form.TEXT, LabelOrder.Form.PNG_ONE_BIT),
                Dots.DPI_300);
        LabelPress.Pressed pressed = LabelPress.press(labels(job, "en-GB"), order, Sheet.A4);
        assertThat(pressed.count()).isGreaterThan(3);
        List<String> said = new ArrayList<>();
        for (int i = 1; i <= pressed.count(); i++) {
            assertThat(pressed.files()).containsKey("one-bit/circuits-" + i + ".png");
            byte[] text = Objects.requireNonNull(pressed.files().get("text/circuits-" + i + ".txt"));
            List<String> lines =
                    new String(text, StandardCharsets.UTF_8).lines().toList();
            lines.stream().filter(circuitIds(job)::contains).forEach(said::add);
            long ids = lines.stream().filter(circuitIds(job)::contains).count();
            assertThat(lines.stream().filter("B10\u00a0A"::equals).count()).isEqualTo(ids);
        }
        assertThat(said).containsExactlyElementsOf(circuitIds(job));
    }

    /** A list is replaced as a whole: every label of it tells how many there are. */
    @Test
    void aLaterIssueKnowsTheListByOneName() {
        LabelNote hundred = Grown.circuits(100, folder).design("circuits").note();
        LabelNote more = Grown.circuits(101, folder).design("circuits").note();
        assertThat(more.id()).isEqualTo(hundred.id()).isEqualTo("circuits");
        assertThat(more.content()).isNotEqualTo(hundred.content());
        assertThat(Grown.circuits(100, folder).design("circuits").note()).isEqualTo(hundred);
    }

    private static void warningsAreWhole(DemoJob job) {
        for (LabelDesign design : labels(job, "en-GB", "fr").designs()) {
            for (LabelDesign one :
                    Stream.concat(Stream.of(design), design.apart().stream()).toList()) {
                boolean mustBeWhole = one.word() != null
                        || !one.signs().isEmpty()
                        || one.parts().stream()
                                .anyMatch(part ->
                                        part instanceof LabelPart.Text text && text.listing() == Listing.NUMBERS);
                assertThat(mustBeWhole && !one.bundles().isEmpty()).as(one.id()).isFalse();
            }
        }
        List<String> parted = new ArrayList<>();
        for (LabelSetter.Sized one : labels(job, "en-GB").sized(Sheet.A4)) {
            boolean section = one.design().parts().stream().anyMatch(LabelPart.Section.class::isInstance);
            assertThat(section)
                    .as(one.design().id())
                    .isEqualTo(!job.ids().contains(one.design().id()));
            if (section) {
                assertThat(one.design().word()).isNull();
                assertThat(one.design().signs()).isEmpty();
                parted.add(one.design().reason().name());
            }
        }
        assertThat(Set.of("CIRCUITS", "DATES", "DC_CIRCUITS", "SOURCES", "RUNTIME"))
                .containsAll(parted);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void warningsOfDemosAreNeverParted(String name) {
        warningsAreWhole(DemoJob.demo(name));
    }

    @Test
    void warningsOfLargeJobsAreNeverParted() {
        warningsAreWhole(Grown.circuits(100, folder));
        warningsAreWhole(Grown.switches(40, folder));
        warningsAreWhole(Grown.branches(100, folder));
        warningsAreWhole(Grown.appliances(18, folder));
    }

    @Test
    void aDesignThatWarnsCannotBeAList() {
        LabelPart list = LabelPart.facts(List.of(List.of("S1", "deckhouse"), List.of("S2", "deckhouse")));
        LabelDesign plain = LabelDesign.of("x", LabelReason.SOURCES, LabelSpot.BOARD, "", LabelReading.HAND, "x");
        assertThat(plain.with(list).listing().bundles()).containsExactly(1, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> plain.warning(SignalWord.WARNING).with(list).listing());
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        plain.with(list, LabelPart.numbered(List.of("a", "b"))).listing());
        assertThatIllegalArgumentException().isThrownBy(() -> plain.with(list).listing(List.of(1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> plain.with(list, list).listing());
    }

    /** A step names every switch or tells how many the list has: a switch left on kills. */
    @ParameterizedTest
    @ValueSource(ints = {7, 8, 40, 300})
    void stepsTellAllSwitchesHoweverMany(int more) {
        DemoJob job = Grown.switches(more, folder);
        List<LabelSetter.Sized> sized = job.sized();
        List<Isolator> all = job.assessment().job().isolators();
        String steps = String.join("\n", words(parts(sized, "sources").get(0).label()));
        String rescuers =
                String.join("\n", words(parts(sized, "responder").get(0).label()));
        if (more == 7) {
            assertThat(job.ids()).doesNotContain("switches");
            assertThat(all).allSatisfy(one -> {
                assertThat(steps).contains(one.id() + " " + one.name() + " (" + one.where() + ")");
                assertThat(rescuers).contains(one.id() + ", " + one.where());
            });
            return;
        }
        assertThat(steps).contains("all " + all.size() + " switches").contains("“Where the switches are”");
        assertThat(rescuers).contains(all.size() + " switches; list: deckhouse board");
        List<String> listed = parts(sized, "switches").stream()
                .flatMap(part -> words(part.label()).stream())
                .toList();
        assertThat(all).allSatisfy(one -> assertThat(listed).contains(one.id(), one.name() + " (" + one.where() + ")"));
        if (more <= 40) {
            assertThat(all).allSatisfy(one -> assertThat(steps).containsPattern("\\b" + one.id() + "\\b"));
        }
    }

    /** Of too many for pairs the label names those of which no two run together, by hand: 1.3 kW or 1.1 kW of 2 kW. */
    @Test
    void ofVeryManyAppliancesTheSureOnesAreNamed() {
        List<LabelPart> parts = Grown.appliances(40, folder).design("runtime").parts();
        assertThat(parts)
                .contains(LabelPart.strong(
                        "Of these only one at a time: Heater 1, Heater 2, Heater 3, Heater 4, Heater 5, "
                                + "Heater 6, Heater 7 and 34 more."))
                .contains(LabelPart.strong("Other things together: see the guide first."));
    }

    /** A switch that cuts off a whole board tells how many circuits these are, where naming them would fill a poster. */
    @Test
    void aSwitchOfAWholeBoardCountsItsCircuits() {
        int own = DemoJob.demo(Grown.TUG).assessment().job().acCircuits().size();
        assertThat(cutOff(Grown.cutOff(500, false, folder)))
                .isEqualTo("OFF cuts off: B1 and 500 of " + (500 + own) + " AC circuits, named in the guide.");
        assertThat(cutOff(Grown.cutOff(500, true, folder)))
                .isEqualTo("OFF cuts off: B1 and all " + (500 + own) + " AC circuits.");
        assertThat(cutOff(Grown.cutOff(60, false, folder))).contains("AX1, AX2, ", " and AX60.");
    }

    private static String cutOff(DemoJob job) {
        return words(job.sized().stream()
                        .filter(it -> it.label().id().equals("isolator-S1"))
                        .findFirst()
                        .orElseThrow()
                        .label())
                .get(1);
    }

    /** Of many appliances every pair that cannot run together is on the list. */
    @Test
    void pairsThatNeverRunTogetherBecomeAList() {
        DemoJob job = Grown.appliances(18, folder);
        List<LabelSetter.Sized> sized = job.sized();
        List<LabelSetter.Sized> parts = parts(sized, "together");
        LabelPart.Grid grid = (LabelPart.Grid) job.design("together").parts().get(0);
        int pairs = 0;
        for (List<String> row : grid.rows()) {
            pairs += row.get(1).split(", | and ").length;
        }
        long never = job.assessment().figures().pairs().stream()
                .filter(pair -> pair.order() == TogetherFigures.Order.NEVER)
                .count();
        assertThat((long) pairs).isEqualTo(never).isGreaterThan(100);
        List<String> printed =
                parts.stream().flatMap(part -> words(part.label()).stream()).toList();
        grid.rows().forEach(row -> assertThat(printed).containsAll(row));
        String runtime = String.join("\n", words(parts(sized, "runtime").get(0).label()));
        assertThat(runtime).contains("“Never together on battery”").contains("and 11 more");
    }
}
