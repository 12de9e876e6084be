package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.job.StockReader;
import org.quaybook.pack.labels.PrintStock;

/** Labels on every stock that comes with the program, measured in PDFBox's rendering of the pages. */
class StockPrintTest {

    private static final DocumentInfo INFO =
            new DocumentInfo("Labels", "Test", "Labels", "en", LocalDate.of(2026, 3, 1));
    private static final SheetLines LINES = new SheetLines("Job 12, issue 3", "Cut along the lines.", "100 mm");

    /** A pixel at 600 dpi is 0.04 mm. */
    private static final float DPI = 600;

    private static final double NEAR = 0.1;

    static List<String> ids() {
        return StockReader.standard();
    }

    private static Stock stock(String id) {
        return PrintStock.of(Objects.requireNonNull(StockReader.standard(id).stock()));
    }

    private static Label black(String id, double width, double height) {
        return new Label(id, width, height, List.of(Panel.filled(new Box(0, 0, width, height), Colour.BLACK)));
    }

    /** Labels that nearly fill the room, two pages of them; with a caption that a die-cut sheet has no place for. */
    private static List<Label> labels(Stock stock) {
        Box room = stock.room();
        double width = Math.min(room.width(), 90);
        double height = Math.min(room.height(), 40);
        int count = stock.medium() instanceof DieCut sheet ? sheet.count() + 1 : 3;
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            labels.add(black("label " + i, width - i % 3 * 0.7, height - i % 2 * 0.9)
                    .withCaption(new Label.Caption(
                            5, List.of(TextBlock.of(new Box(0, 0, 5, 5), "x", TextStyle.of(Face.REGULAR, 2, 1))))));
        }
        return labels;
    }

    private static void measure(Ruler ruler, Placed place, double right, double down) {
        double x = place.x() + place.width() / 2 + right;
        double y = place.y() + place.height() / 2 + down;
        assertThat(ruler.left(x, y)).as(place.id()).isCloseTo(place.x() + right, within(NEAR));
        assertThat(ruler.right(x, y)).as(place.id()).isCloseTo(place.x() + place.width() + right, within(NEAR));
        assertThat(ruler.top(x, y)).as(place.id()).isCloseTo(place.y() + down, within(NEAR));
        assertThat(ruler.bottom(x, y)).as(place.id()).isCloseTo(place.y() + place.height() + down, within(NEAR));
    }

    /** Positions are worked out here from the figures of the stock, not taken from the program. */
    @ParameterizedTest
    @MethodSource("ids")
    void everyLabelStandsInTheMiddleOfItsPlace(String id) throws IOException {
        Stock stock = stock(id);
        List<Label> labels = labels(stock);
        int start = stock.medium() instanceof DieCut ? 2 : 1;
        // Moved along the feed, a label as long as its page would leave it.
        double down = stock.medium() instanceof Roll ? 0 : -0.4;
        PrintSettings settings = PrintSettings.USUAL.startingAt(start).movedBy(0.6, down);
        LabelSheetResult result = LabelSheet.toPdf(labels, stock, settings, LINES, INFO);
        try (PrintedPdf printed = new PrintedPdf(result.pdf())) {
            List<Ruler> pages = new ArrayList<>();
            for (int page = 1; page <= printed.pages(); page++) {
                pages.add(new Ruler(printed.image(page, DPI), DPI));
            }
            for (int i = 0; i < labels.size(); i++) {
                Placed place = result.placed().get(i);
                Ruler ruler = pages.get(place.page() - 1);
                measure(ruler, place, 0.6, down);
                if (stock.medium() instanceof DieCut sheet) {
                    int cell = (i + 1) % sheet.count();
                    int row = cell / sheet.columns();
                    double left = sheet.left() + cell % sheet.columns() * (sheet.labelWidth() + sheet.gapAcross());
                    double top = sheet.top() + row * (sheet.labelHeight() + sheet.gapDown());
                    assertThat(place.page()).isEqualTo(1 + (i + 1) / sheet.count());
                    assertThat(place.x() + place.width() / 2).isCloseTo(left + sheet.labelWidth() / 2, within(1e-9));
                    assertThat(place.y() + place.height() / 2).isCloseTo(top + sheet.labelHeight() / 2, within(1e-9));
                } else if (stock.medium() instanceof Roll roll) {
                    assertThat(place.page()).isEqualTo(i + 1);
                    double pageWidth =
                            printed.document().getPage(i).getMediaBox().getWidth() / 72 * 25.4;
                    double pageHeight =
                            printed.document().getPage(i).getMediaBox().getHeight() / 72 * 25.4;
                    assertThat(pageWidth).isCloseTo(roll.width(), within(0.01));
                    assertThat(pageHeight).isCloseTo(labels.get(i).height(), within(0.01));
                    assertThat(place.x() + place.width() / 2).isCloseTo(roll.width() / 2, within(1e-9));
                }
            }
            if (!(stock.medium() instanceof Sheet)) {
                assertThat(printed.text().strip()).isEmpty();
            }
        }
    }

    @Test
    void aTurnedLabelReadsFromTheBottomUpwards() throws IOException {
        List<Mark> marks = List.of(
                Panel.filled(new Box(0, 0, 80, 20), Colour.WHITE), Panel.filled(new Box(2, 3, 10, 5), Colour.BLACK));
        LabelSheetResult result = LabelSheet.toPdf(
                List.of(new Label("a", 80, 20, marks)),
                stock("roll-24"),
                PrintSettings.USUAL.turnedLabels(),
                LINES,
                INFO);
        assertThat(result.placed()).containsExactly(new Placed("a", 1, 2, 0, 20, 80));
        try (PrintedPdf printed = new PrintedPdf(result.pdf())) {
            Ruler ruler = new Ruler(printed.image(1, DPI), DPI);
            // The bar lies 2 to 12 mm from the left end, now the lower one, and 3 to 8 mm from the top, now on the
            // left.
            measure(ruler, new Placed("bar", 1, 2 + 3, 80 - 12, 5, 10), 0, 0);
        }
    }

    @Test
    void bleedGoesBeyondTheCutAndTheMarksStandOutsideIt() throws IOException {
        double bleed = 1.5;
        LabelSheetResult result = LabelSheet.toPdf(
                List.of(black("a", 60, 30), black("b", 60, 30)),
                stock("a4"),
                PrintSettings.USUAL.withBleed(bleed),
                LINES,
                INFO);
        Placed first = result.placed().get(0);
        assertThat(result.placed().get(1).x()).isCloseTo(first.x() + 60 + 5 + 2 * bleed, within(1e-9));
        try (PrintedPdf printed = new PrintedPdf(result.pdf())) {
            Ruler ruler = new Ruler(printed.image(1, DPI), DPI);
            for (Placed place : result.placed()) {
                measure(
                        ruler,
                        new Placed(
                                place.id(),
                                1,
                                place.x() - bleed,
                                place.y() - bleed,
                                place.width() + 2 * bleed,
                                place.height() + 2 * bleed),
                        0,
                        0);
            }
            double mark = first.x() + first.width() + bleed;
            Ruler fine = new Ruler(printed.image(1, 1200), 1200);
            double from = fine.firstDark(mark + 0.1, first.y());
            assertThat(from - mark).as("cut mark").isCloseTo(0.3, within(NEAR));
        }
    }

    @Test
    void sameInputSameBytes() {
        for (String id : List.of("a4-3x8", "roll-62")) {
            Stock stock = stock(id);
            assertThat(LabelSheet.toPdf(labels(stock), stock, PrintSettings.USUAL, LINES, INFO)
                            .pdf())
                    .isEqualTo(LabelSheet.toPdf(labels(stock), stock, PrintSettings.USUAL, LINES, INFO)
                            .pdf());
            assertThat(page(stock, PrintSettings.USUAL)).isEqualTo(page(stock, PrintSettings.USUAL));
        }
    }

    @Test
    void tellsEveryFaultAtOnce() {
        PrintSettings settings = new PrintSettings(9, 0, 10.5, 1, false);
        RenderException thrown = catchThrowableOfType(
                RenderException.class,
                () -> LabelSheet.toPdf(List.of(black("a", 93, 40)), stock("a4-2x4"), settings, LINES, INFO));
        assertThat(thrown.diagnostics())
                .extracting(Diagnostic::rule)
                .containsExactly(
                        "render.start-beyond-sheet",
                        "render.print-offset-too-large",
                        "render.bleed-out-of-range",
                        "render.label-larger-than-sheet");
        assertThat(thrown.diagnostics().get(0).message().arguments()).containsExactly(9, 8);
        assertThat(thrown.diagnostics().get(3).message().arguments()).containsExactly("a", 93.0, 40.0, 92.0, 63.0);
        thrown = catchThrowableOfType(
                RenderException.class,
                () -> LabelSheet.toPdf(
                        List.of(black("a", 93, 40)), stock("a4"), PrintSettings.USUAL.turnedLabels(), LINES, INFO));
        assertThat(thrown.diagnostics()).extracting(Diagnostic::rule).containsExactly("render.turned-on-plain-sheet");
    }

    /** Outlines, scales and rules of the calibration page, measured. */
    @ParameterizedTest
    @MethodSource("ids")
    void theCalibrationPageMeasuresWhatItSays(String id) throws IOException {
        Stock stock = stock(id);
        byte[] pdf = page(stock, PrintSettings.USUAL.movedBy(0.5, 0.25));
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            assertThat(printed.pages()).isEqualTo(1);
            Ruler ruler = new Ruler(printed.image(1, DPI), DPI);
            double width = printed.document().getPage(0).getMediaBox().getWidth() / 72 * 25.4;
            double height = printed.document().getPage(0).getMediaBox().getHeight() / 72 * 25.4;
            List<Box> cells = stock.medium() instanceof DieCut sheet
                    ? sheet.cells()
                    : List.of(
                            stock.medium() instanceof Roll roll
                                    ? new Box(0, 0, width, height).inside(roll.edge())
                                    : stock.room());
            for (Box cell : cells) {
                double y = cell.y() + cell.height() * 0.4;
                double outline = ruler.firstDark(cell.x() + 0.5 - 0.4, y);
                assertThat(outline + 0.05).as("left of " + cell).isCloseTo(cell.x() + 0.5, within(NEAR));
                double end = ruler.firstDark(cell.x() + cell.width() + 0.5 - 0.4, y);
                assertThat(end + 0.05).as("right of " + cell).isCloseTo(cell.x() + cell.width() + 0.5, within(NEAR));
            }
            double length = Math.min(100, Math.floor((width - 10) / 10) * 10);
            if (length > 0) {
                double line = height * 0.6 + 0.25;
                double middle = width / 2 + 0.5 + 2.2;
                assertThat(ruler.right(middle, line) - ruler.left(middle, line))
                        .isCloseTo(length + 0.2, within(2 * NEAR));
            }
            double down = Math.min(100, Math.floor((height - 10) / 10) * 10);
            double line = width * 0.2 + 0.5;
            double middle = height / 2 + 0.25 + 2.2;
            assertThat(ruler.bottom(line, middle) - ruler.top(line, middle)).isCloseTo(down + 0.2, within(2 * NEAR));
            assertThat(printed.fonts())
                    .isNotEmpty()
                    .allSatisfy((name, embedded) -> assertThat(embedded).isTrue());
        }
    }

    private static byte[] page(Stock stock, PrintSettings settings) {
        return CalibrationPage.toPdf(stock, settings, List.of("Lay it on the stock.", "Read the scales."), INFO);
    }
}
