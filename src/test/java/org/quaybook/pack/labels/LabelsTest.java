package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.figures.Figure;
import org.quaybook.job.Appliance;
import org.quaybook.record.DirectDraw;
import org.quaybook.record.EnergySource;
import org.quaybook.render.Box;
import org.quaybook.render.Code;
import org.quaybook.render.Face;
import org.quaybook.render.Mark;
import org.quaybook.render.Picture;
import org.quaybook.render.Placed;
import org.quaybook.render.RenderException;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextStyle.Listing;
import org.quaybook.text.Words;

class LabelsTest {

    private static final String LITHIUM = "lantern-moth";
    private static final String AGM = "second-biscuit";
    private static final String FLOODED = "persimmon-tug";

    @TempDir
    Path folder;

    private static String text(DemoJob job) {
        try (PDDocument document = Loader.loadPDF(job.print().sheet().pdf())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replace('\u00a0', ' ');
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String text(LabelDesign design) {
        return design.title() + "\n"
                + String.join(
                        "\n", design.parts().stream().flatMap(LabelsTest::texts).toList());
    }

    private static Stream<String> texts(LabelPart part) {
        if (part instanceof LabelPart.Text text) {
            return text.paragraphs().stream();
        }
        if (part instanceof LabelPart.Grid grid) {
            return Stream.concat(grid.head().stream(), grid.rows().stream().flatMap(List::stream));
        }
        if (part instanceof LabelPart.Scan scan) {
            return scan.beside().stream().flatMap(LabelsTest::texts);
        }
        return part instanceof LabelPart.Blank blank ? Stream.of(blank.caption()) : Stream.empty();
    }

    private static String say(DemoJob job, Figure<?> figure) {
        return job.words().word(figure.stated());
    }

    /** With a branch off the battery feeds the inverter and all the rest (Kirchhoff's laws). */
    @Test
    void theSwitchOfABranchLeavesTheBatteryLive() {
        DemoJob job = DemoJob.changed(
                LITHIUM,
                folder,
                "spare: taped inside the board door }",
                "spare: taped inside the board door }\n"
                        + "  - { id: F2, role: branch, feeds: Bilge pump, conductor: 4 mm2, load: 6 A, rating: 10 A }",
                "isolates: [shore] }",
                "isolates: [shore] }\n" + "  - { id: S3, name: Bilge pump switch, where: helm, isolates: [F2] }");
        assertThat(text(job.design("isolator-S3")))
                .doesNotContain("gets no battery power")
                .containsPattern("Still live then: .*battery");
        assertThat(text(job.design("isolator-S1"))).contains("gets no battery power");
        assertThat(text(job.design("sources"))).contains("S1").doesNotContain("S3");
    }

    /** What hangs on the bank before the switch stays there (Kirchhoff's laws), and so may what nobody has placed. */
    @Test
    void theBatterySwitchNamesTheBranchesItLeaves() {
        DemoJob job = DemoJob.changed(
                LITHIUM,
                folder,
                "spare: taped inside the board door }",
                "spare: taped inside the board door }\n"
                        + branch("F2", "Bilge pump", "average: 0.1 A, through: [bank]")
                        + branch("F3", "Cabin lights", "average: 2 A, through: [B1]")
                        + branch("F4", "Radio", "average: not seen"));
        assertThat(text(job.design("isolator-S1")))
                .contains("On the battery all the same: F2 Bilge pump and F4 Radio.");
        assertThat(text(job.design("sources"))).contains("On the battery all the same: F2 Bilge pump and F4 Radio.");
        assertThat(text(job.design("runtime"))).contains("Shorter while this runs: Radio.");
        assertThat(new DirectDraw(job.assessment().figures().absence().draw(), job.words()).lines())
                .containsExactly(
                        "Every time also counts 2.2\u00a0A: what draws however everything is switched, and on average what"
                                + " runs on the battery directly: Bilge pump and Cabin lights.",
                        "Not counted in any time: Radio. While it runs, all last less long.");
    }

    @Test
    void theListOfFusesTellsAChargersFromThoseThatFeedSomething() {
        DemoJob job = DemoJob.demo("long-way-round");
        assertThat(new DirectDraw(job.assessment().figures().absence().draw(), job.words()).lines())
                .containsExactly("Every time also counts 900\u00a0mA, the average of what runs on the battery directly:"
                        + " Living fuse board.");
        assertThat(text(job.design("dc-circuits"))).contains("Living fuse board", "cable of Engine charger");
        assertThat(text(job.design("fuse-F3"))).contains("cable of Engine charger");
        assertThat(text(job.design("responder"))).contains("On the battery all the same: F2 Living fuse board.");
    }

    private static String branch(String id, String feeds, String keys) {
        return "  - { id: " + id + ", role: branch, feeds: " + feeds + ", conductor: 4 mm2, load: 6 A, rating: 10 A, "
                + keys + " }\n";
    }

    /** One of three strings off leaves two that feed the inverter. */
    @Test
    void theSwitchOfAStringLeavesTheOthersLive() {
        DemoJob job = DemoJob.changed(
                LITHIUM,
                folder,
                "spare: taped inside the board door }",
                "spare: taped inside the board door }\n"
                        + "  - { id: F2, role: string, conductor: 70 mm2, rating: 125 A, distance: 100 mm }",
                "isolates: [shore] }",
                "isolates: [shore] }\n  - { id: S3, name: String switch, where: stern locker, isolates: [F2] }");
        assertThat(text(job.design("isolator-S3")))
                .doesNotContain("gets no battery power")
                .containsPattern("Still live then: .*battery");
        assertThat(text(job.design("sources"))).contains("S3");
    }

    /** Off at the inverter, a circuit behind its changeover stays live from whatever that brings. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "second-biscuit | inverter and shore power",
                "hut-seventeen | inverter and generator",
                "marmalade-meridian | inverter, shore power and generator"
            })
    void theBoardTellsAllThatCanFeedACircuit(String name, String sources) {
        assertThat(DemoJob.demo(name).design("circuits").parts().stream()
                        .filter(LabelPart.Grid.class::isInstance)
                        .map(LabelPart.Grid.class::cast)
                        .map(grid -> grid.rows().get(0)))
                .singleElement()
                .satisfies(row -> assertThat(row).last().isEqualTo(sources));
    }

    /** 20 minutes of arc at the reading distance (NUREG-0700), tags as the project's rule: at least 2.4 mm. */
    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void noTextIsSmallerThanItsReaderCanRead(String name) {
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            double least = LabelReading.HAND.cap();
            List<TextBlock> texts = sized.label().marks().stream()
                    .filter(TextBlock.class::isInstance)
                    .map(TextBlock.class::cast)
                    .toList();
            assertThat(texts)
                    .allSatisfy(text -> assertThat(text.style().leastCapHeight())
                            .as(sized.design().id() + ": " + text.paragraphs())
                            .isGreaterThanOrEqualTo(least));
            // only the line that tells job and label is smaller than the message
            long small = texts.stream()
                    .filter(text -> text.style().leastCapHeight()
                            < sized.design().reading().cap() - 1e-9)
                    .count();
            assertThat(small).as(sized.design().id()).isLessThanOrEqualTo(1);
        }
    }

    /** ANSI Z535.2 (seen): the signal word at least one and a half times as high as the message. */
    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void signalWordIsHighEnough(String name) {
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            SignalWord word = sized.design().word();
            if (word == null) {
                continue;
            }
            List<TextBlock> texts = sized.label().marks().stream()
                    .filter(TextBlock.class::isInstance)
                    .map(TextBlock.class::cast)
                    .toList();
            double signal = texts.stream()
                    .filter(text -> text.paragraphs().equals(List.of(word.name())))
                    .mapToDouble(text -> text.style().leastCapHeight())
                    .findFirst()
                    .orElseThrow();
            double largest = texts.stream()
                    .filter(text -> !text.paragraphs().equals(List.of(word.name())))
                    .mapToDouble(text -> text.style().leastCapHeight())
                    .max()
                    .orElseThrow();
            assertThat(signal).as(sized.design().id()).isGreaterThanOrEqualTo(1.5 * largest - 1e-9);
        }
    }

    /** ANSI Z535.4 (from memory): the word NOTICE in italics, no other word; the other rulebooks ask for none. */
    @ParameterizedTest
    @CsvSource({"marmalade-meridian, BOLD_ITALIC", "lantern-moth, BOLD"})
    void noticeIsInItalicsByTheAmericanRulebook(String name, Face notice) {
        Set<SignalWord> seen = EnumSet.noneOf(SignalWord.class);
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            SignalWord word = sized.design().word();
            sized.label().marks().stream()
                    .filter(TextBlock.class::isInstance)
                    .map(TextBlock.class::cast)
                    .filter(text -> word != null && text.paragraphs().equals(List.of(word.name())))
                    .forEach(text -> {
                        assertThat(text.style().face()).isEqualTo(word == SignalWord.NOTICE ? notice : Face.BOLD);
                        seen.add(word);
                    });
        }
        assertThat(seen).contains(SignalWord.NOTICE, SignalWord.WARNING);
    }

    /** ISO 3864-2 (seen second-hand) and ANSI Z535.4 (seen): NOTICE has no triangle; signs at least 25 mm high. */
    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void signsAreLargeAndOnlyWhereSomebodyCanBeHurt(String name) {
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            List<Mark> pictures = sized.label().marks().stream()
                    .filter(Picture.class::isInstance)
                    .toList();
            if (sized.design().word() == SignalWord.NOTICE) {
                assertThat(pictures).as(sized.design().id()).isEmpty();
            } else if (sized.design().word() != null) {
                assertThat(pictures)
                        .as(sized.design().id())
                        .hasSize(sized.design().signs().size() + 1);
                assertThat(pictures.subList(1, pictures.size()))
                        .allSatisfy(
                                picture -> assertThat(picture.box().height()).isGreaterThanOrEqualTo(25));
            }
        }
    }

    /** ABYC E-11 (seen second-hand): five items with a polarity indicator, four without; the third is the one dropped. */
    @Test
    void orderOfPlugging() {
        List<String> with = steps(DemoJob.demo(LITHIUM).design("inlet"));
        List<String> without = steps(DemoJob.changed(LITHIUM, folder, "polarity-lamp: yes", "polarity-lamp: no")
                .design("inlet"));
        assertThat(with).hasSize(5);
        assertThat(without).hasSize(4).doesNotContain(with.get(2));
        assertThat(with).containsSubsequence(without);
    }

    private static List<String> steps(LabelDesign design) {
        return design.parts().stream()
                .filter(LabelPart.Text.class::isInstance)
                .map(LabelPart.Text.class::cast)
                .filter(text -> text.listing() == Listing.NUMBERS)
                .flatMap(text -> text.paragraphs().stream())
                .toList();
    }

    @Test
    void lithiumIsToldOfColdAndLeadOfGas() {
        String lithium = text(DemoJob.demo(LITHIUM).design("battery-lid"));
        String agm = text(DemoJob.demo(AGM).design("battery-lid"));
        String flooded = text(DemoJob.demo(FLOODED).design("battery-lid"));
        assertThat(lithium).contains("Do not charge below 2\u00a0°C").doesNotContain("gas", "cid");
        assertThat(agm).contains("gas", "Acid").doesNotContain("charge below");
        assertThat(flooded).contains("Explosive gas", "no smoking").doesNotContain("charge below");
        assertThat(DemoJob.demo(LITHIUM).design("battery-lid").signs()).doesNotContain(Sign.W026, Sign.P003);
        assertThat(DemoJob.demo(FLOODED).design("battery-lid").signs()).contains(Sign.W026, Sign.P003, Sign.M004);
    }

    /** The acid warnings inside the lid saved nobody (accident report in the project's sources): the spot is outside. */
    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void theBatteryWarningGoesOutside(String name) {
        LabelDesign lid = DemoJob.demo(name).design("battery-lid");
        assertThat(lid.spot()).isEqualTo(LabelSpot.BATTERY_LID);
        assertThat(lid.word()).isEqualTo(SignalWord.WARNING);
        assertThat(DemoJob.demo(name).words().sentence(lid.spot().key())).contains("OUTSIDE");
    }

    /** A cabin without mains has no shore power to speak of. */
    @Test
    void withoutShorePowerNoLabelSpeaksOfIt() {
        DemoJob cabin = DemoJob.demo("hut-seventeen");
        assertThat(cabin.ids()).contains("sources", "inverter-live", "left-on", "neutral", "circuits");
        for (String id : cabin.ids()) {
            assertThat(text(cabin.design(id)).toLowerCase(Locale.ROOT)).as(id).doesNotContain("shore");
        }
    }

    @Test
    void whatTheJobHasNotHasNoLabel() {
        assertThat(DemoJob.demo(LITHIUM).ids()).contains("left-on", "lead", "isolator-S2", "rcd-R2");
        assertThat(DemoJob.demo(AGM).ids())
                .doesNotContain("left-on", "lead", "isolator-S2", "rcd-R2")
                .contains("inlet", "sources", "neutral");
        List<String> stayOff = DemoJob.changed(
                        LITHIUM, folder, "when-shore-fails: take-over", "when-shore-fails: stay-off")
                .ids();
        assertThat(stayOff).contains("lead").doesNotContain("left-on");
    }

    @Test
    void withoutShoreNothingIsSaidOfShore() {
        DemoJob job = DemoJob.changed(
                AGM,
                folder,
                """
                shore:
                  inlet: 16 A
                  cable: 2.5 mm2
                  rcd: R1
                  breaker: 10 A
                  breaker-distance: 0.9 m
                  polarity-lamp: yes
                  galvanic-isolator: yes
                  smallest-pedestal: 6 A (told)
                  where: cockpit coaming, port
                """,
                "generator: { power: 2 kW, where: foredeck }\n",
                "  - { kind: shore-charger, name: Shore charger, through: [bank], current: 30 A, fed-by: shore }\n",
                "");
        assertThat(job.ids()).doesNotContain("inlet", "lead");
        assertThat(text(job.design("responder")))
                .contains("Generator", "stop it, block its start")
                .doesNotContain("Shore");
        assertThat(steps(job.design("sources"))).contains("Generator: stop it, block its start.");
        assertThat(steps(job.design("sources"))).noneMatch(step -> step.contains("hore"));
        assertThat(text(job.design("socket-1"))).doesNotContain("Shore").contains("Fed by");
    }

    /** No charger loses the battery while it gives: a switch that parts both goes off last. Common practice, no source. */
    @Test
    void aSwitchThatPartsTheBatteryTooGoesOffLast() {
        DemoJob job = DemoJob.changed(LITHIUM, folder, "isolates: [B1]", "isolates: [B1, shore, solar]");
        assertThat(steps(job.design("sources")))
                .satisfiesExactly(
                        step -> assertThat(step).startsWith("Inverter off"),
                        step -> assertThat(step).startsWith("Shore: S2 ").doesNotContain("S1"),
                        step -> assertThat(step).isEqualTo("Engine: stop it."),
                        step -> assertThat(step).startsWith("Solar panels: S1 ").contains("last, with the battery"),
                        step -> assertThat(step).startsWith("Battery: S1 "));
    }

    /** IEC 60204-1 and EN 50110-1 (from memory): stored energy is waited for before dead is proved. */
    @Test
    void whoWorksWaitsForTheCapacitors() {
        assertThat(text(DemoJob.demo(LITHIUM).design("sources")))
                .contains("Wait until the inverter’s capacitors are empty. Then prove dead");
    }

    /** An electrician who is told to add no other link must not take the generator's for one. */
    @Test
    void theTieOfTheGeneratorIsTold() {
        assertThat(text(DemoJob.demo("hut-seventeen").design("neutral")))
                .contains("Generator: neutral is tied to earth at the generator.");
        assertThat(text(DemoJob.demo(LITHIUM).design("neutral"))).doesNotContain("Generator");
    }

    /**
     * ISO 13297:2020 6.8 (seen in pages that quote it): shore neutral is earthed ashore and not on board, except behind a
     * transformer.
     */
    @Test
    void behindATransformerTheNeutralIsTiedThere() {
        DemoJob job = DemoJob.changed(
                LITHIUM, folder, "shore:\n", "shore:\n  transformer: { neutral-tied: yes, shore-earth-goes-on: no }\n");
        assertThat(text(job.design("neutral")))
                .contains("Shore power: neutral is tied to earth at the isolating transformer only.")
                .doesNotContain("ashore only");
        assertThat(text(DemoJob.demo(LITHIUM).design("neutral"))).contains("ashore only");
    }

    /** A label never stands for the lock that keeps two sources apart. */
    @Test
    void withoutInterlockNoLabelOfSources() {
        DemoJob job = DemoJob.changed(LITHIUM, folder, "interlocked: yes", "interlocked: no");
        assertThat(job.assessment().forbidsHandover()).isTrue();
        assertThat(job.ids()).doesNotContain("sources", "inverter-live");
        assertThat(text(job)).contains("NOT FOR USE YET");
        assertThat(text(DemoJob.demo(LITHIUM))).doesNotContain("NOT FOR USE YET");
    }

    @Test
    void figuresReachTheLabels() {
        for (String name : List.of(LITHIUM, AGM, FLOODED)) {
            DemoJob job = DemoJob.demo(name);
            var figures = job.assessment().figures();
            assertThat(text(job.design("cut-out")))
                    .contains(
                            say(job, figures.inverter().alarm()),
                            say(job, figures.inverter().cutOut()),
                            say(job, Objects.requireNonNull(figures.inverter().restart())));
            assertThat(text(job.design("battery-lid")))
                    .contains(
                            say(job, figures.bank().shortCircuit()),
                            say(job, figures.bank().restFull()),
                            say(job, figures.bank().restAtReserve()));
            assertThat(text(job.design("responder")))
                    .contains(say(job, figures.bank().energy()));
            assertThat(text(job.design("fuse-F1")))
                    .contains(
                            say(job, figures.fuses().get(0).rating().orElseThrow()),
                            say(job, figures.fuses().get(0).interrupts().orElseThrow()),
                            say(job, figures.fuses().get(0).mustInterrupt()));
            figures.appliances()
                    .forEach(appliance -> assertThat(text(job.design("runtime")))
                            .contains(
                                    appliance.appliance().name(),
                                    say(job, appliance.time()),
                                    say(job, appliance.wornTime())));
        }
        DemoJob job = DemoJob.demo(LITHIUM);
        assertThat(text(job.design("left-on")))
                .contains(
                        "Dehumidifier",
                        say(job, job.assessment().figures().absence().toReserve()),
                        say(job, job.assessment().figures().absence().toReserveWorn()));
        assertThat(text(job.design("rcd-R2")))
                .contains("30\u00a0mA", "21\u00a0ms")
                .doesNotContain("24\u00a0ms");
    }

    @Test
    void aChangedJobChangesItsLabelsAndNoOthers() {
        DemoJob before = DemoJob.demo(LITHIUM);
        DemoJob cutOut = DemoJob.changed(LITHIUM, folder, "cut-out: 21.5 V", "cut-out: 21.0 V");
        assertThat(text(before.design("cut-out"))).contains("21.5\u00a0V").doesNotContain("21.0\u00a0V");
        assertThat(text(cutOut.design("cut-out"))).contains("21.0\u00a0V").doesNotContain("21.5\u00a0V");
        assertThat(text(cutOut.design("inlet"))).isEqualTo(text(before.design("inlet")));
        DemoJob fuse = DemoJob.changed(LITHIUM, folder, "rating: 225 A", "rating: 250 A");
        assertThat(text(before.design("fuse-F1"))).contains("225\u00a0A");
        assertThat(text(fuse.design("fuse-F1"))).contains("250\u00a0A").doesNotContain("225\u00a0A");
        assertThat(text(fuse.design("cut-out"))).isEqualTo(text(before.design("cut-out")));
    }

    /** All sources of the job, the inverter first so that losing shore power cannot wake it, the battery last. */
    @Test
    void sourcesAreMadeDeadInOrder() {
        List<String> steps = steps(DemoJob.demo(LITHIUM).design("sources"));
        assertThat(steps).hasSize(5);
        assertThat(steps.get(0)).startsWith("Inverter off");
        assertThat(steps.get(1)).contains("S2 Shore breaker", "AC board");
        assertThat(steps.get(3)).contains("Solar", "no switch on record");
        assertThat(steps.get(4)).contains("S1 Battery switch", "above the battery box");
        assertThat(text(DemoJob.demo(LITHIUM).design("sources"))).contains("4 sources");
        assertThat(text(DemoJob.demo(FLOODED).design("sources"))).contains("3 sources");
    }

    @Test
    void asleepInverterIsTold() {
        assertThat(text(DemoJob.demo(LITHIUM).design("inverter-live"))).doesNotContain("sleep");
        DemoJob asleep = DemoJob.changed(
                LITHIUM, folder, "  pass-through: 30 A\n", "  pass-through: 30 A\n  search-mode: { on: yes }\n");
        assertThat(text(asleep.design("inverter-live"))).contains("sleep");
    }

    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void plainTextIsShortAsciiAndHoldsTheFigures(String name) {
        DemoJob job = DemoJob.demo(name);
        List<String> lines = LabelVital.lines(new LabelFacts(job.assessment(), job.words()));
        String payload = LabelVital.payload(lines);
        assertThat(payload.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(200);
        assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(payload)).isTrue();
        var figures = job.assessment().figures();
        assertThat(payload)
                .contains(
                        job.assessment().job().job().number(),
                        job.assessment().job().job().record().toString(),
                        LabelVital.ascii(say(job, figures.bank().capacity())),
                        LabelVital.ascii(say(job, figures.inverter().cutOut())),
                        LabelVital.ascii(
                                say(job, figures.fuses().get(0).rating().orElseThrow())),
                        "S1 ");
        assertThat(text(job.design("vital"))).contains(payload);
    }

    /** In a longer language other lines are left out first. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void plainTextNamesWhatPartsTheBatteryInEveryLanguage(String name) {
        DemoJob job = DemoJob.demo(name);
        assertThat(Words.languages()).allSatisfy(language -> {
            List<String> lines = LabelVital.lines(new LabelFacts(job.assessment(), Words.of(language)));
            assertThat(EnergySource.BATTERY.isolators(job.assessment().job()))
                    .isNotEmpty()
                    .allSatisfy(isolator -> assertThat(lines).anyMatch(line -> line.startsWith(isolator.id() + " ")));
        });
    }

    @Test
    void plainTextLosesItsAccents() {
        assertThat(LabelVital.ascii("Crème brûlée, 70\u00a0mm², −5\u00a0°C – Ω"))
                .isEqualTo("Creme brulee, 70 mm2, -5 C -");
    }

    @Test
    void aLongJobStillFitsThePlainText() {
        DemoJob job = DemoJob.changed(
                LITHIUM,
                folder,
                "number: 26-118",
                "number: A-JOB-NUMBER-OF-32-LETTERS-LONG-",
                "name: Lantern Moth",
                "name: A very long name for so small a barge, and longer still now",
                "where: above the battery box",
                "where: " + "behind the third panel from the left ".repeat(3).strip());
        List<String> lines = LabelVital.lines(new LabelFacts(job.assessment(), job.words()));
        assertThat(LabelVital.payload(lines)).hasSizeLessThanOrEqualTo(200).contains("21.5 V", "225 A", "81EZ-D3SW");
        assertThat(job.print().notes()).isNotEmpty();
    }

    /** What could tell whose craft it is and where it lies stays off the labels: everybody aboard reads them. */
    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void nothingPersonalIsPrinted(String name) {
        DemoJob job = DemoJob.demo(name);
        var owner = Objects.requireNonNull(job.assessment().job().owner());
        String text = text(job);
        assertThat(text).doesNotContain(owner.name());
        Stream.of(owner.phone(), owner.email(), job.assessment().job().craft().berth())
                .filter(Objects::nonNull)
                .filter(secret -> !secret.equals(job.assessment().installer().phone()))
                .forEach(secret -> assertThat(text).doesNotContain(secret));
        assertThat(text).doesNotContain("null", "{", "}");
    }

    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void everyLabelIsPlacedAndListed(String name) {
        DemoJob job = DemoJob.demo(name);
        LabelsPrinted printed = job.print();
        assertThat(printed.notes()).extracting(LabelNote::id).doesNotHaveDuplicates();
        assertThat(printed.sheet().placed())
                .extracting(Placed::id)
                .startsWith(printed.notes().stream().map(LabelNote::id).toArray(String[]::new));
        assertThat(printed.notes()).extracting(LabelNote::id).containsExactlyInAnyOrderElementsOf(job.ids());
        String text = text(job);
        assertThat(text).contains("This line must measure 100 mm", "polyester", "What goes where, and why");
        for (LabelNote note : printed.notes()) {
            assertThat(job.words().has(note.reason().key())).isTrue();
            assertThat(note.reason().citation().source()).isNotBlank();
            assertThat(text).contains(note.place().replace('\u00a0', ' '));
        }
    }

    /** Nobody walks back far: no label is printed more than eight places from where the walk would have it. */
    @ParameterizedTest
    @ValueSource(strings = {LITHIUM, AGM, FLOODED})
    void theWalkIsKept(String name) {
        List<LabelSpot> spots =
                DemoJob.demo(name).print().notes().stream().map(LabelNote::spot).toList();
        List<LabelSpot> walk = spots.stream().sorted(Comparator.naturalOrder()).toList();
        assertThat(walk.get(0)).isEqualTo(spots.get(0));
        for (int i = 0; i < spots.size(); i++) {
            int should = walk.indexOf(spots.get(i));
            assertThat(i).as(spots.get(i) + " at " + i).isGreaterThanOrEqualTo(should - 8);
        }
    }

    @Test
    void sameJobSameBytes() {
        assertThat(DemoJob.demo(AGM).print().sheet().pdf())
                .isEqualTo(DemoJob.demo(AGM).print().sheet().pdf());
    }

    @Test
    void aWordTooLongForAnyLabelIsRefusedByName() {
        DemoJob job = DemoJob.changed(LITHIUM, folder, "name: Shore breaker", "name: " + "Breaker".repeat(8));
        RenderException thrown = catchThrowableOfType(RenderException.class, job::print);
        assertThat(thrown.diagnostics())
                .extracting(diagnostic -> diagnostic.message().arguments().get(0))
                .containsExactly("sources", "isolator-S2");
        assertThat(thrown.diagnostics()).extracting(Diagnostic::rule).containsOnly("render.label-text-does-not-fit");
    }

    @Test
    void nothingOnALabelOverlapsOrLeavesItsFrame() {
        for (String name : List.of(LITHIUM, AGM, FLOODED)) {
            for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
                List<Mark> marks = sized.label().marks().stream()
                        .filter(mark -> mark instanceof TextBlock || mark instanceof Picture || mark instanceof Code)
                        .toList();
                for (int i = 0; i < marks.size(); i++) {
                    for (Mark other : marks.subList(0, i)) {
                        assertThat(overlap(marks.get(i).box(), other.box()))
                                .as(sized.design().id() + ": " + marks.get(i) + " and " + other)
                                .isLessThan(0.01);
                    }
                }
            }
        }
    }

    private static double overlap(Box one, Box other) {
        double across = Math.min(one.x() + one.width(), other.x() + other.width()) - Math.max(one.x(), other.x());
        double down = Math.min(one.y() + one.height(), other.y() + other.height()) - Math.max(one.y(), other.y());
        return Math.max(0, across) * Math.max(0, down);
    }

    /** Whoever depends on an appliance reads the time that is left beside what stays on, the same as in the guide. */
    @Test
    void stickerOfWhatMustNotFailCountsWhatStaysOn() {
        DemoJob alone = DemoJob.demo("long-way-round");
        String machine = "  - { name: Breathing machine,";
        DemoJob beside = DemoJob.changed(
                "long-way-round",
                folder,
                machine,
                "  - { name: Fridge, power: 90 W (plate), average: 40 W (measured), kind: motor, left-on: yes }\n"
                        + machine);
        var appliances = beside.assessment().figures().appliances();
        var figures = appliances.get(appliances.size() - 1);
        String shorter = say(
                beside,
                beside.assessment()
                        .figures()
                        .withLeftOn(figures)
                        .orElseThrow()
                        .running()
                        .wornTime());
        assertThat(text(alone.design("appliance-" + (appliances.size() - 1)))).contains(say(alone, figures.wornTime()));
        assertThat(text(beside.design("appliance-" + appliances.size())))
                .contains(shorter, "stays on")
                .doesNotContain(say(beside, figures.wornTime()));
        DemoJob tooMuch = DemoJob.changed(
                "long-way-round",
                folder,
                machine,
                "  - { name: Fridge, power: 1580 W (plate), average: 40 W (measured), kind: motor, left-on: yes }\n"
                        + machine);
        assertThat(text(tooMuch.design("appliance-" + appliances.size()))).contains("Do not count on it");
    }

    /** What one use takes, and that what cannot run says so. */
    @Test
    void stickersOfAppliances() {
        DemoJob job = DemoJob.demo(AGM);
        var heatGun = job.assessment().figures().appliances().get(0);
        assertThat(text(job.design("appliance-1")))
                .contains(
                        "5\u00a0min",
                        say(job, heatGun.sharePerUse().orElseThrow()),
                        say(job, heatGun.alarmBelow().orElseThrow()));
        DemoJob tooLarge = DemoJob.changed(AGM, folder, "power: 700 W (plate)", "power: 1.5 kW (plate)");
        Appliance appliance =
                tooLarge.assessment().figures().appliances().get(0).appliance();
        assertThat(text(tooLarge.design("appliance-1"))).contains("Not on battery");
        assertThat(text(tooLarge.design("runtime"))).contains("Not on battery: " + appliance.name());
        assertThat(sizeOf(tooLarge)).isCloseTo(60, within(0.1));
    }

    @Test
    void whatHangsPastTheInverterIsNamedAtTheBoard() {
        assertThat(text(DemoJob.demo("lantern-moth").design("runtime"))).contains("Not on battery: Water heater.");
    }

    private static double sizeOf(DemoJob job) {
        return job.sized().stream()
                .filter(sized -> sized.design().id().equals("appliance-1"))
                .findFirst()
                .orElseThrow()
                .label()
                .width();
    }
}
