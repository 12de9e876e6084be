package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.render.Placed;

/** The printed sheets, measured and read back from pictures of them. */
class LabelsPrintTest {

    private static final int DARK = 200;

    @TempDir
    Path folder;

    private static BufferedImage page(PDDocument document, int number, float dpi) throws IOException {
        return new PDFRenderer(document).renderImageWithDPI(number - 1, dpi, ImageType.GRAY);
    }

    /** Ruler: the pixels of PDFBox's rendering at 600 dpi. The frame stands 2 mm inside the cut line on all sides. */
    @ParameterizedTest
    @ValueSource(strings = {"lantern-moth"})
    void labelsStandWhereThePlanSays(String name) throws IOException {
        DemoJob job = DemoJob.demo(name);
        LabelsPrinted printed = job.print();
        List<String> framed = job.designs().stream()
                .filter(design -> design.drawn() == null && design.spot() != LabelSpot.LEAD)
                .map(LabelDesign::id)
                .toList();
        try (PDDocument document = Loader.loadPDF(printed.sheet().pdf())) {
            for (int number = 1; number <= document.getNumberOfPages(); number++) {
                BufferedImage page = page(document, number, 600);
                for (LabelNote note : printed.notes()) {
                    Placed placed = placed(printed, note.id());
                    if (placed.page() == number && framed.contains(note.id())) {
                        check(page, placed);
                    }
                }
            }
        }
    }

    private static Placed placed(LabelsPrinted printed, String id) {
        return printed.sheet().placed().stream()
                .filter(placed -> placed.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static void check(BufferedImage page, Placed placed) {
        double bottom = placed.y() + placed.height() - 4;
        assertThat(firstDark(page, placed.x() + 1, bottom, 1, 0) - placed.x())
                .as(placed + " left frame")
                .isCloseTo(2, within(0.2));
        assertThat(placed.x() + placed.width() - firstDark(page, placed.x() + placed.width() - 1, bottom, -1, 0))
                .as(placed + " right frame")
                .isCloseTo(2, within(0.2));
        assertThat(firstDark(page, placed.x() + 3, placed.y() + 1, 0, 1) - placed.y())
                .as(placed + " top frame")
                .isCloseTo(2, within(0.2));
        double foot = placed.y() + placed.height();
        assertThat(foot - firstDark(page, placed.x() + 3, foot - 1, 0, -1))
                .as(placed + " bottom frame")
                .isCloseTo(2, within(0.2));
        // the cut line itself, a hairline outside the label's white edge
        assertThat(firstDark(page, placed.x() + 1, bottom, -1, 0))
                .as(placed + " cut line")
                .isCloseTo(placed.x(), within(0.2));
    }

    /** Millimetres on the page, along x or y, of the first dark pixel in a direction. */
    private static double firstDark(BufferedImage page, double x, double y, int stepX, int stepY) {
        double pixels = 600 / 25.4;
        int column = (int) Math.floor(x * pixels);
        int row = (int) Math.floor(y * pixels);
        while (page.getRaster().getSample(column, row, 0) >= DARK) {
            column += stepX;
            row += stepY;
        }
        int at = stepX != 0 ? column : row;
        return (stepX + stepY > 0 ? at : at + 1) / pixels;
    }

    /** Read by two programs that know nothing of each other, from pictures as coarse as label printers print: 203 and 300 dots an inch. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyCodeIsReadBack(String name) throws IOException, InterruptedException {
        DemoJob job = DemoJob.demo(name);
        LabelsPrinted printed = job.print();
        String vital = LabelVital.payload(LabelVital.lines(new LabelFacts(job.assessment(), job.words())));
        Map<String, String> expected = Map.of("record", job.link().address(), "vital", vital);
        try (PDDocument document = Loader.loadPDF(printed.sheet().pdf())) {
            for (float dpi : new float[] {203, 300}) {
                for (Map.Entry<String, String> code : expected.entrySet()) {
                    BufferedImage cut = cut(document, placed(printed, code.getKey()), dpi);
                    assertThat(CodeReaders.zxing(cut))
                            .as(code.getKey() + " at " + dpi)
                            .hasValue(code.getValue());
                    assertThat(CodeReaders.zbar(cut, folder))
                            .as(code.getKey() + " at " + dpi)
                            .hasValue(code.getValue());
                }
            }
        }
    }

    private static BufferedImage cut(PDDocument document, Placed placed, float dpi) throws IOException {
        double pixels = dpi / 25.4;
        BufferedImage page = page(document, placed.page(), dpi);
        return page.getSubimage(
                (int) (placed.x() * pixels), (int) (placed.y() * pixels), (int) (placed.width() * pixels), (int)
                        (placed.height() * pixels));
    }

    /** A QR symbol is at least as wide as a tenth of the distance (common practice), its modules whole dots at 300 dpi. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void codesAreLargeEnoughToScan(String name) {
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            sized.label().marks().stream()
                    .filter(org.quaybook.render.Code.class::isInstance)
                    .map(org.quaybook.render.Code.class::cast)
                    .forEach(code -> assertThat(code.module() * code.code().size())
                            .isGreaterThanOrEqualTo(30 - 1e-9)
                            .isLessThan(36));
        }
    }
}
