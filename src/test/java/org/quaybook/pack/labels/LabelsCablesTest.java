package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Formula;
import org.quaybook.figures.Input;
import org.quaybook.job.Cable;
import org.quaybook.quantity.Length;
import org.quaybook.reference.Citation.Standing;
import org.quaybook.render.Label;
import org.quaybook.render.TextBlock;
import org.quaybook.render.Turn;

/** Tags of cables and earths. */
class LabelsCablesTest {

    /** Two conductors of 70 mm² in parallel, 15 mm thick. */
    private static final String PARALLEL = "lantern-moth";

    /** 25 mm², 10 mm thick. */
    private static final String THIN = "second-biscuit";

    @TempDir
    Path folder;

    private static Label drawn(DemoJob job, String id) {
        return Objects.requireNonNull(job.design(id).drawn(), id);
    }

    private static List<TextBlock> texts(Label label) {
        return label.marks().stream()
                .filter(TextBlock.class::isInstance)
                .map(TextBlock.class::cast)
                .toList();
    }

    /** The sign of a pole stays with its word. */
    private static String kept(String end) {
        return end.replace(" +", "\u00a0+").replace(" \u2212", "\u00a0\u2212");
    }

    /** ISO 13297 (from memory): each conductor is identified; both ends of every cable have a tag that tells all of it. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyCableTellsAtBothEndsWhatItIs(String name) {
        DemoJob job = DemoJob.demo(name);
        for (Cable cable : job.assessment().job().cables()) {
            List<LabelDesign> tags = job.designs().stream()
                    .filter(design -> design.id().startsWith("cable-" + cable.id() + "-"))
                    .toList();
            int parallel = name.equals(PARALLEL) ? 2 : 1;
            assertThat(tags).as(cable.id()).hasSize(2 * parallel);
            assertThat(tags.stream().filter(tag -> tag.place().startsWith(cable.from())))
                    .hasSize(parallel);
            assertThat(tags.stream().filter(tag -> tag.place().startsWith(cable.to())))
                    .hasSize(parallel);
            for (LabelDesign tag : tags) {
                assertThat(LabelsNeedTest.text(tag))
                        .contains(cable.id(), kept(cable.from()) + " → " + kept(cable.to()), "rev 1")
                        .contains(cable.from().contains("+") ? "POSITIVE" : "NEGATIVE");
            }
        }
        assertThat(LabelsNeedTest.text(job.designs().stream()
                        .filter(design -> design.id().startsWith("cable-B1-from"))
                        .findFirst()
                        .orElseThrow()))
                .contains("fuse F1");
    }

    /** The halves of a flag meet back to back: the second is the first, turned by half a turn about the middle. */
    @Test
    void aFlagIsReadFromBothSides() {
        Label flag = drawn(DemoJob.demo(THIN), "cable-B1-from");
        List<TextBlock> upright =
                texts(flag).stream().filter(text -> text.turn() == Turn.UPRIGHT).toList();
        List<TextBlock> behind =
                texts(flag).stream().filter(text -> text.turn() == Turn.HALF).toList();
        assertThat(behind).hasSameSizeAs(upright).isNotEmpty();
        for (int i = 0; i < upright.size(); i++) {
            assertThat(behind.get(i).paragraphs()).isEqualTo(upright.get(i).paragraphs());
            var front = upright.get(i).box();
            var back = behind.get(i).box();
            assertThat(back.x() + back.width()).isCloseTo(flag.width() - front.x(), within(1e-9));
            assertThat(back.y() + back.height()).isCloseTo(flag.height() - front.y(), within(1e-9));
        }
        double half = (flag.height() - Math.PI * 10 - 3) / 2;
        upright.forEach(text -> assertThat(text.box().y() + text.box().height()).isLessThanOrEqualTo(half + 1e-9));
    }

    /** On a cable so thick that its text fits twice into nine tenths of the circumference. */
    @Test
    void aThickCableIsWrappedAndTheTextRepeated() {
        DemoJob job = DemoJob.changed(THIN, folder, "diameter: 10 mm", "diameter: 25 mm");
        Label wrap = drawn(job, "cable-B1-from");
        assertThat(wrap.height()).isCloseTo(2.15 * Math.PI * 25, within(1e-9));
        assertThat(texts(wrap)).allMatch(text -> text.turn() == Turn.UPRIGHT);
        assertThat(texts(wrap).stream()
                        .filter(text -> text.paragraphs().get(0).contains("POSITIVE"))
                        .count())
                .isGreaterThanOrEqualTo(2);
        texts(wrap)
                .forEach(text ->
                        assertThat(text.box().y() + text.box().height()).isLessThanOrEqualTo(0.9 * Math.PI * 25));
    }

    @Test
    void aDiameterThatNobodyMeasuredIsSaidToBeUsual() {
        assertThat(DemoJob.demo(THIN).design("cable-B1-from").place()).isEqualTo("battery +, Ø\u00a010\u00a0mm");
        DemoJob unmeasured = DemoJob.changed(THIN, folder, ", diameter: 10 mm", "");
        assertThat(unmeasured.design("cable-B1-from").place()).isEqualTo("battery +, Ø usually 10.2\u00a0mm: measure");
    }

    /** A tag is as long as its figure says, and the figure tells the job or the table that it comes from. */
    @Test
    void theDiameterOfATagIsAFigure() {
        DemoJob unmeasured = DemoJob.changed(THIN, folder, ", diameter: 10 mm", "");
        Figure<Length> usual = diameter(unmeasured);
        assertThat(usual.key()).isEqualTo("cable.B1.diameter");
        assertThat(usual.working().formula()).isEqualTo(Formula.FROM_TABLE);
        assertThat(usual.working().inputs())
                .filteredOn(input -> input.origin() instanceof Input.FromTable)
                .singleElement()
                .satisfies(input -> {
                    Input.FromTable table = (Input.FromTable) input.origin();
                    assertThat(table.table()).isEqualTo("cable-diameters");
                    assertThat(table.row()).isEqualTo("25");
                    assertThat(table.citation().standing()).isEqualTo(Standing.FROM_MEMORY);
                });
        Figure<Length> stated = diameter(DemoJob.demo(THIN));
        assertThat(stated.working().formula()).isEqualTo(Formula.AS_STATED);
        assertThat(stated.value().metres()).isEqualTo(0.010);
        double thicker = drawn(unmeasured, "cable-B1-from").height()
                - drawn(DemoJob.demo(THIN), "cable-B1-from").height();
        assertThat(thicker).isCloseTo(Math.PI * 0.2, within(1e-9));
    }

    private static Figure<Length> diameter(DemoJob job) {
        return job.assessment().figures().supply().runs().get(0).diameter().orElseThrow();
    }

    /** BS 7671 514.13.1 (from memory): letters of at least 4.75 mm. */
    @Test
    void earthsMustNotBeRemoved() {
        DemoJob job = DemoJob.demo(PARALLEL);
        for (String id : List.of("earth-E1-from", "earth-E1-to", "earth-E2-from", "earth-E2-to")) {
            assertThat(texts(drawn(job, id)).stream()
                            .filter(text -> text.paragraphs().equals(List.of("Safety connection. Do not remove.")))
                            .mapToDouble(text -> text.style().leastCapHeight()))
                    .as(id)
                    .hasSize(1)
                    .allMatch(cap -> cap >= 4.75);
        }
        DemoJob core = DemoJob.changed(
                PARALLEL, folder, "length: 1.1 m (measured) }\n", "length: 1.1 m (measured), in-cable: yes }\n");
        assertThat(core.ids()).doesNotContain("earth-E2-from").contains("earth-E1-from");
    }
}
