package org.quaybook.render;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.VerticalAlign;

/** Prints labels onto sheets of paper to be cut apart: what measures a millimetre in the drawing does so on paper. */
public final class LabelSheet {

    private static final Colour GREY = new Colour(120, 120, 120);
    /** Common practice, no source: thin enough to cut away, thick enough for any printer. */
    private static final double HAIRLINE = 0.1;

    private static final double RULE_TICK = 2;
    private static final double CUT_MARK = 2;
    private static final double CUT_MARK_GAP = 0.3;
    private static final double NUMBER_WIDTH = 20;
    private static final TextStyle LINE = TextStyle.of(Face.REGULAR, 2, 1.2);

    private final List<Label> labels;
    private final Sheet sheet;
    private final SheetLines lines;
    private final List<Placed> placed;

    private LabelSheet(List<Label> labels, Sheet sheet, SheetLines lines) {
        this.labels = labels;
        this.sheet = sheet;
        this.lines = lines;
        this.placed = Packing.pack(labels, sheet);
    }

    /**
     * Packs labels into rows in the order given, on as many sheets as they need, each with its header and footer line,
     * marks to cut along and a rule of 100 mm. Viewers are told not to scale the print.
     *
     * @param labels at least one
     * @throws RenderException if a text does not fit its box, a label the sheet, a character any font or a drawing is
     *     faulty: all of them at once
     */
    public static LabelSheetResult toPdf(List<Label> labels, Sheet sheet, SheetLines lines, DocumentInfo info) {
        if (labels.isEmpty()) {
            throw new IllegalArgumentException("no labels");
        }
        Faults faults = new Faults(info.title());
        List<PreparedLabel> prepared = new ArrayList<>();
        for (Label label : labels) {
            prepared.add(PreparedLabel.of(label, faults));
            checkSize(label, sheet, faults);
        }
        faults.throwIfAny();
        LabelSheet job = new LabelSheet(labels, sheet, lines);
        return new LabelSheetResult(job.write(prepared, info), job.placed);
    }

    private static void checkSize(Label label, Sheet sheet, Faults faults) {
        Box room = sheet.room();
        if (!Box.fits(label.width(), label.heightOnSheet(), room.width(), room.height())) {
            faults.add(
                    RenderMessage.LABEL_LARGER_THAN_SHEET,
                    label.id(),
                    label.width(),
                    label.heightOnSheet(),
                    room.width(),
                    room.height());
        }
    }

    private byte[] write(List<PreparedLabel> prepared, DocumentInfo info) {
        List<PreparedLabel> frames = frames(info);
        Rectangle paper = new Rectangle(
                (float) Millimetres.toPoints(sheet.width()), (float) Millimetres.toPoints(sheet.height()));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Document document = new Document(paper)) {
            PdfWriter writer = PdfWriter.getInstance(document, out);
            writer.setFullCompression();
            PdfIdentity.describe(writer, info);
            writer.addViewerPreference(PdfName.PRINTSCALING, PdfName.NONE);
            writer.addViewerPreference(PdfName.PICKTRAYBYPDFSIZE, PdfBoolean.PDFTRUE);
            document.open();
            for (int page = 1; page <= pages(); page++) {
                document.newPage();
                Canvas canvas = Canvas.ofPage(writer.getDirectContent(), sheet.height());
                frames.get(page - 1).draw(canvas);
                drawRule(canvas);
                drawLabels(canvas, page, prepared);
            }
            String input = List.of(labels, sheet, lines, info).toString();
            PdfIdentity.identify(writer, List.of(input.getBytes(StandardCharsets.UTF_8)));
        }
        return out.toByteArray();
    }

    private int pages() {
        return placed.get(placed.size() - 1).page();
    }

    private void drawLabels(Canvas canvas, int page, List<PreparedLabel> prepared) {
        for (int i = 0; i < placed.size(); i++) {
            Placed place = placed.get(i);
            if (place.page() == page) {
                Canvas part = canvas.at(place.x(), place.y());
                prepared.get(i).draw(part);
                if (labels.get(i).cut()) {
                    drawCutMarks(part, place);
                }
            }
        }
    }

    private static void drawCutMarks(Canvas part, Placed place) {
        part.stroke(new Box(0, 0, place.width(), place.height()), 0, GREY, HAIRLINE);
        for (double x : new double[] {0, place.width()}) {
            for (double y : new double[] {0, place.height()}) {
                double outX = x == 0 ? -1 : 1;
                double outY = y == 0 ? -1 : 1;
                double from = CUT_MARK_GAP;
                double to = CUT_MARK;
                part.line(x + outX * from, y, x + outX * to, y, GREY, HAIRLINE);
                part.line(x, y + outY * from, x, y + outY * to, GREY, HAIRLINE);
            }
        }
    }

    /** The header and footer of each page, set like labels as large as the page, so that nothing is ever cut off. */
    private List<PreparedLabel> frames(DocumentInfo info) {
        Faults faults = new Faults(info.title());
        List<PreparedLabel> frames = new ArrayList<>();
        for (int page = 1; page <= pages(); page++) {
            frames.add(PreparedLabel.of(frame(page), faults));
        }
        faults.throwIfAny();
        return frames;
    }

    private Label frame(int page) {
        double left = sheet.margin();
        double wide = sheet.width() - 2 * sheet.margin();
        double foot = sheet.height() - sheet.margin() - Sheet.FOOTER;
        double number = wide - NUMBER_WIDTH;
        TextStyle middle = LINE.aligned(Align.LEFT, VerticalAlign.MIDDLE);
        List<Mark> marks = new ArrayList<>();
        addLine(marks, new Box(left, sheet.margin(), number, Sheet.HEADER / 2), lines.header(), middle);
        addLine(
                marks,
                new Box(left + number, sheet.margin(), NUMBER_WIDTH, Sheet.HEADER / 2),
                page + " / " + pages(),
                LINE.aligned(Align.RIGHT, VerticalAlign.MIDDLE));
        addLine(marks, new Box(left, foot + Sheet.FOOTER - 4, wide, 4), lines.footer(), middle);
        addLine(marks, ruleCaption(left, wide, foot), lines.rule(), middle);
        return new Label("page " + page, sheet.width(), sheet.height(), marks);
    }

    private static Box ruleCaption(double left, double wide, double foot) {
        return new Box(left, foot + 2, wide, 3.5);
    }

    private static void addLine(List<Mark> marks, Box box, String text, TextStyle style) {
        if (!text.isBlank()) {
            marks.add(TextBlock.of(box, text, style));
        }
    }

    private void drawRule(Canvas canvas) {
        double y = sheet.height() - sheet.margin() - Sheet.FOOTER + 7;
        double left = sheet.margin();
        canvas.line(left, y, left + Sheet.RULE, y, Colour.BLACK, 2 * HAIRLINE);
        for (int centimetre = 0; centimetre <= Sheet.RULE / 10; centimetre++) {
            double tick = centimetre % 10 == 0 ? RULE_TICK : RULE_TICK / 2;
            double x = left + centimetre * 10;
            canvas.line(x, y - tick / 2, x, y + tick / 2, Colour.BLACK, 2 * HAIRLINE);
        }
    }
}
