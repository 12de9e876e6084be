package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.junit.jupiter.api.Test;
import org.quaybook.diag.Diagnostic;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.VerticalAlign;

class LabelSheetTest {

    private static final DocumentInfo INFO =
            new DocumentInfo("Label sheet", "Test", "Labels", "en", LocalDate.of(2026, 3, 1));
    private static final SheetLines LINES =
            new SheetLines("Job 12, issue 3", "Cut along the lines.", "This line must measure 100 mm.");
    private static final Colour RED = Colour.of("#9b2423");

    private static Label panel(String id, double width, double height) {
        return new Label(id, width, height, List.of(Panel.filled(new Box(0, 0, width, height), Colour.BLACK)));
    }

    @Test
    void packsInTheGivenOrderAndOverlapsNothing() {
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            labels.add(panel("label " + i, 20 + i * 7 % 70, 15 + i * 11 % 40));
        }
        List<Placed> placed = LabelSheet.toPdf(labels, Sheet.A4, LINES, INFO).placed();
        assertThat(placed)
                .extracting(Placed::id)
                .containsExactlyElementsOf(labels.stream().map(Label::id).toList());
        Box room = Sheet.A4.room();
        for (int i = 0; i < placed.size(); i++) {
            Placed one = placed.get(i);
            assertThat(one.x()).isGreaterThanOrEqualTo(room.x());
            assertThat(one.y()).isGreaterThanOrEqualTo(room.y());
            assertThat(one.x() + one.width()).isLessThanOrEqualTo(room.x() + room.width() + 1e-6);
            assertThat(one.y() + one.height()).isLessThanOrEqualTo(room.y() + room.height() + 1e-6);
            for (Placed other : placed.subList(0, i)) {
                assertThat(apart(one, other)).as(one + " " + other).isTrue();
            }
        }
    }

    /** A sheet costs more than a label that is a little out of its row. */
    @Test
    void whatFitsUnderALowerOneNeedsNoNewSheet() {
        Box room = Sheet.A4.room();
        double half = room.width() / 2 - Sheet.A4.gap();
        List<Label> labels = List.of(
                panel("tall", half, room.height() - 20),
                panel("low", half, 30),
                panel("below", half - 1, 30),
                panel("further below", half, 30),
                panel("too wide", half + 1, 30));

        List<Placed> placed = LabelSheet.toPdf(labels, Sheet.A4, LINES, INFO).placed();

        assertThat(placed).extracting(Placed::page).containsExactly(1, 1, 1, 1, 2);
        assertThat(placed.subList(1, 4))
                .extracting(Placed::x)
                .containsOnly(placed.get(1).x());
        assertThat(placed.get(2).y()).isCloseTo(placed.get(1).y() + 30 + Sheet.A4.gap(), within(1e-9));
        assertThat(placed.get(3).y()).isCloseTo(placed.get(2).y() + 30 + Sheet.A4.gap(), within(1e-9));
    }

    private static boolean apart(Placed a, Placed b) {
        double gap = Sheet.A4.gap() - 1e-6;
        return a.page() != b.page()
                || a.x() >= b.x() + b.width() + gap
                || b.x() >= a.x() + a.width() + gap
                || a.y() >= b.y() + b.height() + gap
                || b.y() >= a.y() + a.height() + gap;
    }

    @Test
    void describesItselfAndAsksNotToBeScaled() throws IOException {
        byte[] pdf = LabelSheet.toPdf(fullSheet(), Sheet.A4, LINES, INFO).pdf();
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            assertThat(printed.pages()).isEqualTo(2);
            assertThat(printed.document().getPage(0).getMediaBox().getWidth() / 72 * 25.4)
                    .isCloseTo(210, within(0.01));
            assertThat(printed.document().getPage(0).getMediaBox().getHeight() / 72 * 25.4)
                    .isCloseTo(297, within(0.01));
            assertThat(printed.text()).contains(LINES.header(), LINES.footer(), LINES.rule(), "1 / 2", "2 / 2", "OFF");
            assertThat(printed.fonts()).isNotEmpty().allSatisfy((name, embedded) -> {
                assertThat(embedded).as(name).isTrue();
                assertThat(name).contains("+");
            });
            assertThat(printed.document().getDocumentInformation().getTitle()).isEqualTo("Label sheet");
            COSDictionary catalog = printed.document().getDocumentCatalog().getCOSObject();
            COSDictionary preferences = catalog.getCOSDictionary(COSName.getPDFName("ViewerPreferences"));
            assertThat(preferences.getNameAsString("PrintScaling")).isEqualTo("None");
            assertThat(preferences.getBoolean("PickTrayByPDFSize", false)).isTrue();
            assertThat(printed.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    @Test
    void sameInputSameBytes() {
        assertThat(LabelSheet.toPdf(fullSheet(), Sheet.A4, LINES, INFO).pdf())
                .isEqualTo(LabelSheet.toPdf(fullSheet(), Sheet.A4, LINES, INFO).pdf());
    }

    /** Ruler: the pixels of PDFBox's rendering at 600 dpi, 25.4 mm an inch. */
    @Test
    void labelsAndRuleMeasureWhatTheySay() throws IOException {
        List<Label> labels = List.of(panel("a", 50, 30), panel("b", 99.1, 67.7), panel("c", 12.5, 90));
        LabelSheetResult result = LabelSheet.toPdf(labels, Sheet.A4, LINES, INFO);
        try (PrintedPdf printed = new PrintedPdf(result.pdf())) {
            Ruler ruler = new Ruler(printed.image(1, 600), 600);
            for (Placed place : result.placed()) {
                double middleX = place.x() + place.width() / 2;
                double middleY = place.y() + place.height() / 2;
                assertThat(ruler.left(middleX, middleY)).isCloseTo(place.x(), within(0.2));
                assertThat(ruler.right(middleX, middleY)).isCloseTo(place.x() + place.width(), within(0.2));
                assertThat(ruler.top(middleX, middleY)).isCloseTo(place.y(), within(0.2));
                assertThat(ruler.bottom(middleX, middleY)).isCloseTo(place.y() + place.height(), within(0.2));
            }
            double rule = Sheet.A4.height() - Sheet.A4.margin() - Sheet.FOOTER + 7;
            double middle = Sheet.A4.margin() + 45;
            assertThat(ruler.right(middle, rule) - ruler.left(middle, rule)).isCloseTo(100, within(0.3));
        }
    }

    /** Ruler: as above, at 1200 dpi; letters without overshoot. */
    @Test
    void capitalsAreAsHighAsTheFitSays() throws IOException {
        for (Face face : Face.values()) {
            TextStyle style = TextStyle.of(face, 5, 1).aligned(Align.LEFT, VerticalAlign.MIDDLE);
            TextBlock block = TextBlock.of(new Box(2, 2, 16, 14), "HIELT", style);
            Fitting.Fits fitted = (Fitting.Fits) TextFitter.fit(block);
            LabelSheetResult result =
                    LabelSheet.toPdf(List.of(new Label("a", 30, 20, List.of(block))), Sheet.A4, LINES, INFO);
            try (PrintedPdf printed = new PrintedPdf(result.pdf())) {
                Ruler ruler = new Ruler(printed.image(1, 1200), 1200);
                Placed place = result.placed().get(0);
                double baseline = place.y() + fitted.lines().get(0).baseline();
                double high = baseline - fitted.capHeight() + 0.4;
                double low = baseline - 0.4;
                double top = ruler.top(ruler.firstDark(place.x() + 1.5, high) + 0.2, high);
                double bottom = ruler.bottom(ruler.firstDark(place.x() + 1.5, low) + 0.2, low);
                assertThat(bottom).as(face + " baseline").isCloseTo(baseline, within(0.1));
                assertThat(bottom - top)
                        .as(face + " cap height")
                        .isCloseTo(fitted.capHeight(), within(0.05 * fitted.capHeight()));
            }
        }
    }

    /** Ruler: the picture of the upright text, turned pixel by pixel. At 254 dpi a millimetre is ten pixels. */
    @Test
    void turnedTextIsTheUprightTextTurned() throws IOException {
        TextStyle style = TextStyle.of(Face.BOLD, 4, 1).aligned(Align.LEFT, VerticalAlign.TOP);
        List<Label> labels = new ArrayList<>();
        for (Turn turn : Turn.values()) {
            boolean lying = turn == Turn.QUARTER;
            Box box = lying ? new Box(2, 3, 14, 30) : new Box(3, 2, 30, 14);
            TextBlock text = TextBlock.of(box, "B1 from F1", style).turned(turn);
            labels.add(new Label(turn.name(), lying ? 18 : 36, lying ? 36 : 18, List.of(text)).uncut());
        }
        LabelSheetResult result = LabelSheet.toPdf(labels, Sheet.A4, LINES, INFO);
        try (PrintedPdf printed = new PrintedPdf(result.pdf())) {
            BufferedImage page = printed.image(1, 254);
            List<BufferedImage> cut = result.placed().stream()
                    .map(at -> page.getSubimage(
                            (int) Math.round(at.x() * 10), (int) Math.round(at.y() * 10), (int) (at.width() * 10), (int)
                                    (at.height() * 10)))
                    .toList();
            long dark = 0;
            long quarter = 0;
            long half = 0;
            for (int x = 0; x < 360; x++) {
                for (int y = 0; y < 180; y++) {
                    boolean upright = Ruler.isDark(cut.get(0), x, y);
                    dark += upright ? 1 : 0;
                    quarter += upright == Ruler.isDark(cut.get(1), y, 359 - x) ? 0 : 1;
                    half += upright == Ruler.isDark(cut.get(2), 359 - x, 179 - y) ? 0 : 1;
                }
            }
            assertThat(dark).isGreaterThan(3000);
            assertThat(quarter).isLessThan(dark / 20);
            assertThat(half).isLessThan(dark / 20);
        }
        TextBlock wide =
                TextBlock.of(new Box(0, 0, 14, 10), "Unbreakable", style).turned(Turn.QUARTER);
        Fitting.DoesNotFit needs = (Fitting.DoesNotFit) TextFitter.fit(
                new TextBlock(wide.box(), wide.paragraphs(), TextStyle.of(Face.BOLD, 4, 4), Turn.QUARTER));
        assertThat(needs.leastHeight()).isCloseTo(Face.BOLD.widthOf("Unbreakable", 4), within(0.01));
    }

    @Test
    void tellsEveryFaultAtOnce() {
        TextStyle style = TextStyle.of(Face.BOLD, 6, 4);
        List<Label> labels = List.of(
                new Label(
                        "small",
                        20,
                        10,
                        List.of(TextBlock.of(new Box(1, 1, 18, 8), "Far too long for so little", style))),
                panel("huge", 200, 50),
                new Label("odd", 20, 10, List.of(TextBlock.of(new Box(1, 1, 18, 8), "\u4e00", style))),
                new Label("drawn", 20, 10, List.of(new Picture(new Box(1, 1, 8, 8), "<svg/>"))));
        RenderException thrown =
                catchThrowableOfType(RenderException.class, () -> LabelSheet.toPdf(labels, Sheet.A4, LINES, INFO));
        assertThat(thrown.diagnostics())
                .extracting(Diagnostic::rule)
                .containsExactly(
                        "render.label-text-does-not-fit",
                        "render.label-larger-than-sheet",
                        "render.glyph-missing",
                        "render.svg-fault");
        List<Object> arguments = thrown.diagnostics().get(0).message().arguments();
        assertThat(arguments).startsWith("small", "Far too long for so little", 18.0, 8.0);
        Box enough = new Box(0, 0, (Double) arguments.get(4), (Double) arguments.get(5));
        assertThat(TextFitter.fit(TextBlock.of(enough, "Far too long for so little", style)))
                .isInstanceOf(Fitting.Fits.class);
    }

    @Test
    void aHeaderIsNeverCutOff() {
        SheetLines lines = new SheetLines("much too long ".repeat(30), "", "100 mm");
        RenderException thrown = catchThrowableOfType(
                RenderException.class, () -> LabelSheet.toPdf(List.of(panel("a", 20, 20)), Sheet.A4, lines, INFO));
        assertThat(thrown.diagnostics()).extracting(Diagnostic::rule).containsExactly("render.label-text-does-not-fit");
    }

    @Test
    void nothingMayLeaveALabel() {
        List<Mark> beyond = List.of(Panel.filled(new Box(5, 5, 20, 20), RED));
        assertThatIllegalArgumentException().isThrownBy(() -> new Label("a", 20, 30, beyond));
        List<Mark> code = List.of(new Code(0, 0, 1, QrCode.of("HELLO")));
        assertThatIllegalArgumentException().isThrownBy(() -> new Label("a", 28, 28, code));
    }

    @Test
    void drawingsStayVectorsAndTheirTextText() throws IOException {
        String svg = """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 20">
                  <rect width="40" height="20" fill="none" stroke="black"/>
                  <text x="2" y="8" font-size="6">Pump → bilge</text>
                  <text x="2" y="16" font-size="6" font-weight="bold">Hot <tspan fill="red">water</tspan> ⚠</text>
                  <text x="2" y="19" font-size="2"><tspan>lo</tspan><tspan fill="red">ud</tspan>⚠⚠<tspan>x</tspan></text>
                </svg>""";
        List<Label> labels = List.of(new Label("a", 60, 40, List.of(new Picture(new Box(5, 5, 50, 30), svg))));
        try (PrintedPdf printed =
                new PrintedPdf(LabelSheet.toPdf(labels, Sheet.A4, LINES, INFO).pdf())) {
            assertThat(printed.text()).contains("Pump → bilge", "Hot water ⚠", "loud⚠⚠x");
            assertThat(printed.rasters()).isZero();
            Map<String, Boolean> fonts = printed.fonts();
            assertThat(fonts.values()).containsOnly(true);
            assertThat(fonts.keySet())
                    .anyMatch(name -> name.endsWith("SourceSansPro-Bold"))
                    .anyMatch(name -> name.contains("DejaVuSans"));
        }
    }

    /** More labels than one sheet takes. */
    private static List<Label> fullSheet() {
        List<Label> labels = new ArrayList<>();
        for (int i = 0; i < 13; i++) {
            labels.add(new Label(
                    "off " + i,
                    90,
                    35,
                    List.of(
                            new Panel(new Box(0, 0, 90, 35), Colour.WHITE, RED, 1, 2),
                            TextBlock.of(
                                    new Box(3, 3, 50, 29),
                                    "OFF switch of the heater",
                                    TextStyle.of(Face.CONDENSED_BOLD, 8, 3).in(RED)),
                            new Code(56, 3, 0.75, QrCode.of("HTTPS://LOGS.EXAMPLE.ORG/R/" + i)))));
        }
        return labels;
    }
}
