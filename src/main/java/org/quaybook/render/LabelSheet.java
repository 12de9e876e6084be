package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.VerticalAlign;

/** Prints labels onto a stock: what measures a millimetre in the drawing does so on paper. */
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
    private final Stock stock;
    private final PrintSettings settings;
    private final SheetLines lines;
    private final List<Placed> placed;

    private LabelSheet(List<Label> labels, Stock stock, PrintSettings settings, SheetLines lines) {
        this.labels = labels;
        this.stock = stock;
        this.settings = settings;
        this.lines = lines;
        this.placed = place();
    }

    /** Prints labels onto plain sheets, nothing special set. */
    public static LabelSheetResult toPdf(List<Label> labels, Sheet sheet, SheetLines lines, DocumentInfo info) {
        return toPdf(labels, new Stock("", sheet, Printing.LASER, null), PrintSettings.USUAL, lines, info);
    }

    /**
     * Prints labels in the order given, on as many sheets as they need. Viewers are told not to scale the print.
     *
     * <p>On plain sheets they are packed into rows, and each sheet has its header and footer line, marks to cut along and
     * a rule of 100 mm. On die-cut sheets each stands in the middle of a label, and on a roll each is a page of its own;
     * nothing but the label itself is printed there, captions neither.
     *
     * @param labels at least one
     * @throws RenderException if a text does not fit its box, a label the stock, a character any font, a setting the
     *     stock or a drawing is faulty: all of them at once
     */
    public static LabelSheetResult toPdf(
            List<Label> labels, Stock stock, PrintSettings settings, SheetLines lines, DocumentInfo info) {
        if (labels.isEmpty()) {
            throw new IllegalArgumentException("no labels");
        }
        Faults faults = new Faults(info.title());
        settings.check(stock.medium(), faults);
        boolean plain = stock.medium() instanceof Sheet;
        List<PreparedLabel> prepared = new ArrayList<>();
        for (Label label : labels) {
            prepared.add(
                    plain
                            ? PreparedLabel.captioned(label, settings.bleed(), faults)
                            : PreparedLabel.bare(label, faults));
            checkSize(label, stock, settings, faults);
        }
        faults.throwIfAny();
        LabelSheet job = new LabelSheet(labels, stock, settings, lines);
        return new LabelSheetResult(job.write(prepared, info), job.placed);
    }

    private static void checkSize(Label label, Stock stock, PrintSettings settings, Faults faults) {
        Box room = stock.room();
        double height = stock.medium() instanceof Sheet ? label.heightOnSheet(settings.bleed()) : label.height();
        double across = settings.turned() ? height : label.width();
        double down = settings.turned() ? label.width() : height;
        if (!Box.fits(across, down, room.width(), room.height())) {
            faults.add(RenderMessage.LABEL_LARGER_THAN_SHEET, label.id(), across, down, room.width(), room.height());
        }
    }

    private List<Placed> place() {
        if (stock.medium() instanceof Sheet sheet) {
            return Packing.pack(labels, sheet, settings.bleed());
        }
        List<Placed> places = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            double across = settings.turned() ? label.height() : label.width();
            double down = settings.turned() ? label.width() : label.height();
            int number = settings.start() - 1 + i;
            int page = stock.medium() instanceof DieCut sheet ? number / sheet.count() : i;
            Box cell = cell(number, down);
            places.add(new Placed(
                    label.id(),
                    page + 1,
                    cell.x() + (cell.width() - across) / 2,
                    cell.y() + (cell.height() - down) / 2,
                    across,
                    down));
        }
        return places;
    }

    /** The label of the stock that a printed one stands in the middle of. */
    private Box cell(int number, double length) {
        if (stock.medium() instanceof DieCut sheet) {
            return sheet.cells().get(number % sheet.count());
        }
        Roll roll = (Roll) stock.medium();
        return new Box(0, 0, roll.width(), roll.length() == null ? length : roll.length());
    }

    /** Width and height of a page. */
    private Box paper(int page) {
        if (stock.medium() instanceof Sheet sheet) {
            return new Box(0, 0, sheet.width(), sheet.height());
        }
        if (stock.medium() instanceof DieCut sheet) {
            return new Box(0, 0, sheet.paperWidth(), sheet.paperHeight());
        }
        return cell(page - 1, placed.get(page - 1).height());
    }

    private byte[] write(List<PreparedLabel> prepared, DocumentInfo info) {
        List<PreparedLabel> frames = stock.medium() instanceof Sheet sheet ? frames(sheet, info) : List.of();
        List<Tag> parts = new ArrayList<>();
        frames.stream().limit(1).map(PreparedLabel::structure).forEach(parts::add);
        prepared.stream().map(PreparedLabel::structure).forEach(parts::add);
        List<Box> papers =
                IntStream.rangeClosed(1, pages()).mapToObj(this::paper).toList();
        String input = List.of(labels, stock, settings, lines, info).toString();
        return SheetPdf.of(papers, info, new Tag("Document", parts), input, (page, whole) -> {
            Canvas canvas = whole.at(settings.offsetX(), settings.offsetY());
            if (stock.medium() instanceof Sheet sheet) {
                frames.get(page - 1).draw(canvas);
                drawRule(canvas, sheet);
            }
            drawLabels(canvas, page, prepared);
        });
    }

    private int pages() {
        return placed.get(placed.size() - 1).page();
    }

    private void drawLabels(Canvas canvas, int page, List<PreparedLabel> prepared) {
        for (int i = 0; i < placed.size(); i++) {
            Placed place = placed.get(i);
            if (place.page() == page) {
                if (settings.turned()) {
                    canvas.turned(place.x(), place.y(), labels.get(i).width(), prepared.get(i)::draw);
                } else {
                    prepared.get(i).draw(canvas.at(place.x(), place.y()));
                }
                if (labels.get(i).cut() && stock.medium() instanceof Sheet) {
                    drawCutMarks(canvas.at(place.x(), place.y()), place);
                }
            }
        }
    }

    /** With bleed, no line is drawn where it is cut: it would show beside the colour. */
    private void drawCutMarks(Canvas part, Placed place) {
        if (settings.bleed() == 0) {
            part.stroke(new Box(0, 0, place.width(), place.height()), 0, GREY, HAIRLINE);
        }
        for (double x : new double[] {0, place.width()}) {
            for (double y : new double[] {0, place.height()}) {
                double outX = x == 0 ? -1 : 1;
                double outY = y == 0 ? -1 : 1;
                double from = settings.bleed() + CUT_MARK_GAP;
                double to = settings.bleed() + CUT_MARK;
                part.line(x + outX * from, y, x + outX * to, y, GREY, HAIRLINE);
                part.line(x, y + outY * from, x, y + outY * to, GREY, HAIRLINE);
            }
        }
    }

    /**
     * The header and footer of each page, set like labels as large as the page, so that nothing is ever cut off. They are
     * told once.
     */
    private List<PreparedLabel> frames(Sheet sheet, DocumentInfo info) {
        Faults faults = new Faults(info.title());
        List<PreparedLabel> frames = new ArrayList<>();
        for (int page = 1; page <= pages(); page++) {
            Label frame = frame(sheet, page);
            frames.add(page == 1 ? PreparedLabel.bare(frame, faults) : PreparedLabel.untold(frame, faults));
        }
        faults.throwIfAny();
        return frames;
    }

    private Label frame(Sheet sheet, int page) {
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

    private static void drawRule(Canvas canvas, Sheet sheet) {
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
