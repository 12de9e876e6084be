package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands under a label on its sheet, and labels that are not cut out. */
class LabelCaptionTest {

    private static final DocumentInfo INFO = new DocumentInfo("Sheet", "", "", "en", LocalDate.of(2026, 3, 1));
    private static final SheetLines LINES = new SheetLines("", "", "");
    private static final double DPI = 600;

    private static Label label(String id) {
        return new Label(id, 190, 60, List.of());
    }

    private static Label.Caption caption() {
        return new Label.Caption(10, List.of(Panel.filled(new Box(5, 2, 6, 6), Colour.BLACK)));
    }

    @Test
    void aCaptionTakesRoomOnTheSheetAndIsDrawnUnderItsLabel() throws IOException {
        Label captioned = label("a").withCaption(caption());
        LabelSheetResult sheet = LabelSheet.toPdf(List.of(captioned, label("b")), Sheet.A4, LINES, INFO);
        Placed first = sheet.placed().get(0);
        Placed second = sheet.placed().get(1);
        assertThat(first.height()).isEqualTo(60);
        assertThat(second.y()).isCloseTo(first.y() + 60 + 10 + Sheet.A4.gap(), within(1e-9));
        try (PrintedPdf printed = new PrintedPdf(sheet.pdf())) {
            BufferedImage page = printed.image(1, (float) DPI);
            assertThat(isDark(page, first.x() + 5.2, first.y() + 62.2)).isTrue();
            assertThat(isDark(page, first.x() + 10.8, first.y() + 67.8)).isTrue();
            assertThat(isDark(page, first.x() + 4.8, first.y() + 65)).isFalse();
            assertThat(isDark(page, first.x() + 8, first.y() + 68.2)).isFalse();
        }
    }

    @Test
    void captionsCountForTheEndOfTheSheet() {
        Label captioned = new Label("a", 190, 60, List.of(), new Label.Caption(20, List.of()), true);
        List<Placed> placed = LabelSheet.toPdf(
                        List.of(
                                captioned,
                                label("b").withCaption(new Label.Caption(20, List.of())),
                                label("c"),
                                label("d")),
                        Sheet.A4,
                        LINES,
                        INFO)
                .placed();
        assertThat(placed).extracting(Placed::page).containsExactly(1, 1, 1, 2);
    }

    @Test
    void onlyLabelsToBeCutHaveACutLine() throws IOException {
        LabelSheetResult sheet = LabelSheet.toPdf(List.of(label("a"), label("b").uncut()), Sheet.A4, LINES, INFO);
        try (PrintedPdf printed = new PrintedPdf(sheet.pdf())) {
            BufferedImage page = printed.image(1, (float) DPI);
            assertThat(crosses(page, sheet.placed().get(0))).isTrue();
            assertThat(crosses(page, sheet.placed().get(1))).isFalse();
        }
    }

    @Test
    void nothingMayLeaveACaption() {
        Label.Caption wide = new Label.Caption(10, List.of(Panel.filled(new Box(180, 2, 20, 6), Colour.BLACK)));
        assertThatIllegalArgumentException().isThrownBy(() -> label("a").withCaption(wide));
    }

    /** Whether a line runs down the left edge. */
    private static boolean crosses(BufferedImage page, Placed placed) {
        for (double x = placed.x() - 0.5; x < placed.x() + 0.5; x += 25.4 / DPI / 2) {
            if (isGrey(page, x, placed.y() + 30)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isDark(BufferedImage page, double x, double y) {
        return sample(page, x, y) < 128;
    }

    private static boolean isGrey(BufferedImage page, double x, double y) {
        return sample(page, x, y) < 220;
    }

    private static int sample(BufferedImage page, double x, double y) {
        return page.getRaster().getSample((int) (x / 25.4 * DPI), (int) (y / 25.4 * DPI), 0);
    }
}
