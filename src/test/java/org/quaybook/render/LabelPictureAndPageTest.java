package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A label drawn in dots and the same label on a page, dot by dot. */
class LabelPictureAndPageTest {

    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\">"
            + "<circle cx=\"5\" cy=\"5\" r=\"5\"/></svg>";

    /** Ruler: PDFBox's rendering of the same label as a page of a roll. */
    @Test
    void thePictureIsWhatThePageShows() throws IOException {
        Stock roll = new Stock("r", new Roll(62, 0, null, 0), Printing.THERMAL_TRANSFER, Dots.DPI_300);
        DocumentInfo info = new DocumentInfo("Labels", "Test", "Labels", "en", LocalDate.of(2026, 3, 1));
        Label plain = new Label(
                "a",
                62,
                30,
                List.of(
                        new Panel(new Box(0, 0, 62, 30), Colour.WHITE, Colour.BLACK, 0.5, 2),
                        new Picture(new Box(48, 3, 10, 10), SVG),
                        TextBlock.of(new Box(34, 15, 25, 12), "Battery B1", TextStyle.of(Face.BOLD, 5, 2))));
        byte[] pdf = LabelSheet.toPdf(List.of(plain), roll, PrintSettings.USUAL, new SheetLines("", "", ""), info)
                .pdf();
        BufferedImage drawn = ImageIO.read(new ByteArrayInputStream(LabelPicture.png(plain, Dots.DPI_300)));
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            BufferedImage page = printed.image(1, 300);
            int dark = 0;
            int other = 0;
            for (int x = 0; x < 732; x++) {
                for (int y = 0; y < 354; y++) {
                    dark += Ruler.isDark(page, x, y) ? 1 : 0;
                    other += near(page, x, y, Ruler.isDark(drawn, x, y)) ? 0 : 1;
                }
            }
            assertThat(dark).isGreaterThan(10_000);
            assertThat(other)
                    .as("dots further than one from the page's, of " + dark)
                    .isZero();
        }
    }

    /** Whether a page is dark, or light, at most one pixel, 0.085 mm, from a place. */
    private static boolean near(BufferedImage page, int x, int y, boolean dark) {
        for (int right = -1; right <= 1; right++) {
            for (int down = -1; down <= 1; down++) {
                if (Ruler.isDark(page, x + right, y + down) == dark) {
                    return true;
                }
            }
        }
        return false;
    }
}
