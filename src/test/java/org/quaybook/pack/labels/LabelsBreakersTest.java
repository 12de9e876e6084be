package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.render.Label;
import org.quaybook.render.Placed;
import org.quaybook.render.RenderException;
import org.quaybook.render.TextBlock;
import org.quaybook.render.Turn;

/** The strip along the breakers. */
class LabelsBreakersTest {

    private static final String NAME = "lantern-moth";
    private static final double PIXELS = 600 / 25.4;

    @TempDir
    Path folder;

    private static Label strip(DemoJob job, String id) {
        return Objects.requireNonNull(job.design(id).drawn(), id);
    }

    /** DIN 43880 (from memory): a module is 17.5 mm wide. Two RCDs of two modules, three breakers of one. */
    @Test
    void theStripIsAsLongAsItsBreakers() {
        assertThat(strip(DemoJob.demo(NAME), "breakers").width()).isCloseTo(7 * 17.5, within(1e-9));
        DemoJob twoPole = DemoJob.changed(
                NAME,
                folder,
                "source: shore, rcd: R1 }\n\nearths",
                "two-pole: yes, source: shore, rcd: R1 }\n\nac-board: { way-pitch: 18 mm }\n\nearths");
        assertThat(strip(twoPole, "breakers").width()).isCloseTo(8 * 18, within(1e-9));
    }

    /** Ruler: the pixels of PDFBox's rendering at 600 dpi; every joint within 0.1 mm over the whole length. */
    @Test
    void everyJointLiesOnItsPitch() throws IOException {
        DemoJob job = DemoJob.demo(NAME);
        LabelsPrinted printed = job.print();
        Placed strip = printed.sheet().placed().stream()
                .filter(placed -> placed.id().equals("breakers"))
                .findFirst()
                .orElseThrow();
        try (PDDocument document = Loader.loadPDF(printed.sheet().pdf())) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(strip.page() - 1, 600, ImageType.GRAY);
            List<Double> joints = new ArrayList<>();
            int row = (int) ((strip.y() + strip.height() - 0.5) * PIXELS);
            int from = (int) ((strip.x() + 0.5) * PIXELS);
            int to = (int) ((strip.x() + strip.width() - 0.5) * PIXELS);
            for (int x = from; x < to; x++) {
                if (dark(page, x, row)) {
                    int first = x;
                    while (dark(page, x, row)) {
                        x++;
                    }
                    joints.add((first + x) / 2.0 / PIXELS - strip.x());
                }
            }
            // R1 and R2 take two ways, A3 is R1's, A1 and A2 are R2's
            List<Integer> ways = List.of(2, 3, 5, 6);
            assertThat(joints).hasSameSizeAs(ways);
            for (int i = 0; i < ways.size(); i++) {
                assertThat(joints.get(i)).isCloseTo(ways.get(i) * 17.5, within(0.1));
            }
        }
    }

    private static boolean dark(BufferedImage page, int x, int y) {
        return page.getRaster().getSample(x, y, 0) < 200;
    }

    @Test
    void eachWayTellsItsCircuitInItsOwnField() {
        Label strip = strip(DemoJob.demo(NAME), "breakers");
        List<TextBlock> heater = strip.marks().stream()
                .filter(TextBlock.class::isInstance)
                .map(TextBlock.class::cast)
                .filter(text -> text.box().x() > 2 * 17.5 && text.box().x() < 3 * 17.5)
                .toList();
        assertThat(heater.stream().map(text -> text.paragraphs().get(0)))
                .containsExactly("A3", "Water heater", "B10\u00a0A");
        heater.forEach(text -> {
            assertThat(text.box().x() + text.box().width()).isLessThanOrEqualTo(3 * 17.5 - 1 + 1e-9);
            assertThat(text.style().leastCapHeight()).isGreaterThanOrEqualTo(2.4);
        });
    }

    @Test
    void aNarrowWayTurnsItsTextAndATooNarrowOneIsRefusedWithTheLeastPitch() {
        DemoJob narrow = DemoJob.changed(NAME, folder, "\nearths:", "\nac-board: { way-pitch: 12 mm }\n\nearths:");
        assertThat(strip(narrow, "breakers").marks().stream()
                        .filter(mark -> mark instanceof TextBlock text && text.turn() == Turn.QUARTER))
                .isNotEmpty();
        DemoJob tooNarrow = DemoJob.changed(
                NAME,
                folder,
                "\nearths:",
                "\nac-board: { way-pitch: 8 mm }\n\nearths:",
                "name: Water heater",
                "name: Water heater and towel rail and pump of the cabin heating");
        RenderException thrown = catchThrowableOfType(RenderException.class, tooNarrow::designs);
        List<Object> told = thrown.diagnostics().get(0).message().arguments();
        assertThat(told.get(0)).isEqualTo("breakers, A3");
        double enough = (double) told.get(4);
        DemoJob wideEnough = DemoJob.changed(
                NAME,
                folder,
                "\nearths:",
                "\nac-board: { way-pitch: " + enough + " mm }\n\nearths:",
                "name: Water heater",
                "name: Water heater and towel rail and pump of the cabin heating");
        assertThat(strip(wideEnough, "breakers").height()).isLessThanOrEqualTo(75);
    }

    /** A4 has room for 190 mm: ten modules of 17.5 mm and no more. */
    @Test
    void aLongStripIsPartedBetweenWays() {
        StringBuilder more = new StringBuilder();
        for (int i = 4; i <= 12; i++) {
            more.append("  - { id: A").append(i).append(", name: Spare, breaker: 6 A, source: inverter }\n");
        }
        DemoJob job = DemoJob.changed(NAME, folder, "\nearths:", more + "\nearths:");
        assertThat(job.ids()).contains("breakers-1", "breakers-2").doesNotContain("breakers");
        assertThat(strip(job, "breakers-1").width()).isCloseTo(10 * 17.5, within(1e-9));
        assertThat(strip(job, "breakers-2").width()).isCloseTo(6 * 17.5, within(1e-9));
    }
}
