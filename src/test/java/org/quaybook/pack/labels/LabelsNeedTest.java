package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.reference.Citation.Standing;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.TextBlock;

/** Which labels of water, engines, branches and terminals a job needs. */
class LabelsNeedTest {

    private static final String LITHIUM_BOAT = "lantern-moth";
    private static final String AGM_BOAT = "second-biscuit";
    private static final String MOTORHOME = "long-way-round";
    private static final String CABIN = "hut-seventeen";
    private static final String GENERATOR_BOAT = "marmalade-meridian";

    private static final String BRANCH =
            "  - { id: F2, protects: [], role: branch, feeds: Cabin lights, conductor: 4 mm2, load: 12 A, family: blade, rating: 20 A, where: fuse rail }\n";

    @TempDir
    Path folder;

    static String text(LabelDesign design) {
        Stream<String> parts = design.parts().stream()
                .flatMap(part -> part instanceof LabelPart.Text text
                        ? text.paragraphs().stream()
                        : ((LabelPart.Grid) part).rows().stream().flatMap(List::stream));
        Stream<String> drawn = design.drawn() == null
                ? Stream.empty()
                : design.drawn().marks().stream()
                        .filter(TextBlock.class::isInstance)
                        .flatMap(mark -> ((TextBlock) mark).paragraphs().stream());
        return design.title() + "\n"
                + String.join("\n", Stream.concat(parts, drawn).toList());
    }

    private DemoJob withBranch() {
        return DemoJob.changed(LITHIUM_BOAT, folder, "\nisolators:", BRANCH + "\nisolators:");
    }

    /** Common practice, no source: the warning belongs where people get into the water beside a boat on shore power. */
    @Test
    void boatsOnShorePowerWarnSwimmers() {
        assertThat(DemoJob.demo(LITHIUM_BOAT).design("swim").spot()).isEqualTo(LabelSpot.BOARDING);
        assertThat(text(DemoJob.demo(AGM_BOAT).design("swim"))).contains("100\u00a0m", "Do not jump in");
        assertThat(DemoJob.demo(MOTORHOME).ids()).doesNotContain("swim");
        assertThat(DemoJob.demo(CABIN).ids()).doesNotContain("swim");
    }

    /**
     * IEC 60364-7-721 (from memory): beside the main isolator of a caravan stands how to connect (OFF, then plug in at the
     * vehicle, then at the pitch, then ON), to test the RCD, to disconnect (OFF, pitch, vehicle), and that it is inspected
     * at least every three years.
     */
    @Test
    void motorhomesHaveInstructionsAtTheMainSwitch() {
        LabelDesign label = DemoJob.demo(MOTORHOME).design("main-switch");
        assertThat(label.spot()).isEqualTo(LabelSpot.ISOLATOR);
        assertThat(label.place()).isEqualTo("wardrobe");
        assertThat(label.reason().citation().standing()).isEqualTo(Standing.FROM_MEMORY);
        assertThat(text(label))
                .containsSubsequence(
                        "230\u00a0V · 50\u00a0Hz · 16\u00a0A",
                        "S2 Shore breaker: OFF",
                        "inlet first",
                        "S2 Shore breaker: ON",
                        "Polarity lamp",
                        "Press T on R1",
                        "S2 Shore breaker: OFF",
                        "pitch first",
                        "the inverter starts by itself",
                        "every 3 years");
        for (String name : List.of(LITHIUM_BOAT, AGM_BOAT, CABIN, GENERATOR_BOAT)) {
            assertThat(DemoJob.demo(name).ids()).as(name).doesNotContain("main-switch");
        }
    }

    /** Nothing is said of a lamp, a switch or an inverter that the job does not have. */
    @Test
    void theInstructionsFollowTheJob() {
        DemoJob plain = DemoJob.changed(
                MOTORHOME,
                folder,
                "polarity-lamp: yes",
                "polarity-lamp: no",
                "when-shore-fails: take-over",
                "when-shore-fails: stay-off",
                "isolates: [shore]",
                "isolates: [solar]");
        LabelDesign label = plain.design("main-switch");
        assertThat(label.spot()).isEqualTo(LabelSpot.BOARD);
        assertThat(text(label)).contains("Main switch: OFF").doesNotContain("Polarity lamp", "starts by itself", "S2");
    }

    @Test
    void aCabinHasNoBerth() {
        assertThat(text(DemoJob.demo(CABIN).design("rcd-R1")))
                .contains("every month")
                .doesNotContain("berth");
        assertThat(text(DemoJob.demo(LITHIUM_BOAT).design("rcd-R1"))).contains("new berth");
    }

    @Test
    void generatorsWarnOfTheirGas() {
        for (String name : List.of(CABIN, GENERATOR_BOAT)) {
            LabelDesign label = DemoJob.demo(name).design("generator");
            assertThat(label.word()).isEqualTo(SignalWord.WARNING);
            assertThat(text(label)).contains("Carbon monoxide");
        }
        assertThat(DemoJob.demo(LITHIUM_BOAT).ids()).doesNotContain("generator");
    }

    @Test
    void lithiumWithAnAlternatorMustNotBeSwitchedOffUnderWay() {
        LabelDesign label = DemoJob.demo(LITHIUM_BOAT).design("engine");
        assertThat(label.place()).isEqualTo("above the battery box");
        assertThat(text(label)).contains("S1");
        assertThat(DemoJob.demo(AGM_BOAT).ids()).as("lead").doesNotContain("engine");
        assertThat(DemoJob.demo(CABIN).ids()).as("no alternator").doesNotContain("engine");
    }

    /** EN 1648-2, 4.3.3 (seen): polarity is marked at the battery. The sign is drawn of bars: two for plus, one for minus. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void bothTerminalsTellTheirPole(String name) {
        DemoJob job = DemoJob.demo(name);
        String volts = new LabelFacts(job.assessment(), job.words())
                .volts(job.assessment().figures().bank().system().value());
        assertThat(text(job.design("terminal-plus"))).contains("POSITIVE", volts);
        assertThat(text(job.design("terminal-minus"))).contains("NEGATIVE", volts);
        assertThat(bars(job.design("terminal-plus"))).isEqualTo(2);
        assertThat(bars(job.design("terminal-minus"))).isEqualTo(1);
    }

    private static long bars(LabelDesign design) {
        List<Mark> marks = design.drawn() == null ? List.of() : design.drawn().marks();
        return marks.stream()
                .filter(mark -> mark instanceof Panel panel && org.quaybook.render.Colour.WHITE.equals(panel.fill()))
                .count();
    }

    @Test
    void branchesGetATagEachAndTheListOfAll() {
        DemoJob job = withBranch();
        assertThat(text(job.design("fuse-F2"))).contains("F2", "20\u00a0A", "Cabin lights", "the same only");
        assertThat(job.design("fuse-F2").drawn()).isNotNull();
        assertThat(job.design("fuse-F1").drawn())
                .as("the main fuse keeps its label")
                .isNull();
        assertThat(job.design("fuse-F1").title()).isEqualTo("F1 Main fuse");
        assertThat(text(job.design("dc-circuits")))
                .contains(
                        "F1",
                        "B1 (battery + to inverter +)",
                        "2 × 70 mm²",
                        "F2",
                        "Cabin lights",
                        "4\u00a0mm²",
                        "12\u00a0A");
        assertThat(DemoJob.demo(LITHIUM_BOAT).ids()).doesNotContain("dc-circuits");
    }
}
