package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.pack.labels.LabelPart.Voice;
import org.quaybook.render.Box;
import org.quaybook.render.Code;
import org.quaybook.render.Colour;
import org.quaybook.render.Dots;
import org.quaybook.render.Face;
import org.quaybook.render.Fitting;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.Picture;
import org.quaybook.render.RenderException;
import org.quaybook.render.RenderMessage;
import org.quaybook.render.TextBlock;
import org.quaybook.render.TextFitter;
import org.quaybook.render.TextStyle;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.Listing;
import org.quaybook.render.TextStyle.VerticalAlign;

/** Puts the parts of a label below each other, each as high as its text at a fixed cap height. */
final class LabelBlocks {

    /** Contrast 7.0 on white. */
    static final Colour GREY = Colour.of("#595959");

    /** Between parts, in cap heights: as between paragraphs. */
    private static final double PART_GAP = 1.25;

    private static final double TITLE = 1.2;
    private static final double LARGE = 1.6;

    /** So low that no text fits: what is fitted into it tells the height that would do. */
    private static final double NO_HEIGHT = 1e-3;

    /** A column shorter than this, in cap heights, is not broken. Common practice, no source. */
    private static final double LEAST_WIDE = 18;

    private static final double SLACK = 1e-6;
    private static final double RULE = 0.2;
    private static final double PEN_HEIGHT = 8;

    private final double cap;
    private final Dots dots;
    private final List<Mark> marks;
    private @Nullable TooWide tooWide;

    /**
     * @param cap cap height of plain text, millimetres
     * @param dots of the printer
     * @param marks where everything goes
     */
    LabelBlocks(double cap, Dots dots, List<Mark> marks) {
        this.cap = cap;
        this.dots = dots;
        this.marks = marks;
    }

    /**
     * A text that no breaking makes narrow enough.
     *
     * @param room width it has, millimetres
     * @param least width it needs
     */
    record TooWide(String text, double room, double least) {}

    /** The first text that is wider than its room. */
    Optional<TooWide> tooWide() {
        return Optional.ofNullable(tooWide);
    }

    /** That a text of a label is too wide, with the width that would do. */
    static RenderException refusal(String label, TooWide text, double height) {
        return refusal(Message.of(
                RenderMessage.LABEL_TEXT_DOES_NOT_FIT, label, text.text(), text.room(), height, text.least(), height));
    }

    /** One error that no place in the job stands for. */
    static RenderException refusal(Message message) {
        return new RenderException(
                List.of(new Diagnostic(Severity.ERROR, message.key().key(), Place.NOWHERE, "", message, List.of())));
    }

    private void need(String text, double room, double least) {
        if (tooWide == null && least > room + SLACK) {
            tooWide = new TooWide(text, room, least);
        }
    }

    static double titleCap(double cap) {
        return LabelLegibility.upToTenth(cap * TITLE);
    }

    static TextStyle style(Voice voice, double cap) {
        double height = voice == Voice.LARGE ? LabelLegibility.upToTenth(cap * LARGE) : cap;
        return TextStyle.of(voice == Voice.PLAIN ? Face.REGULAR : Face.BOLD, height, height);
    }

    /** Height of a text at its least cap height in a column. */
    double measure(List<String> paragraphs, TextStyle style, double width) {
        Fitting fitting = TextFitter.fit(new TextBlock(new Box(0, 0, width, NO_HEIGHT), paragraphs, style));
        if (!(fitting instanceof Fitting.DoesNotFit needs)) {
            throw new IllegalStateException("a text without height: " + paragraphs);
        }
        need(String.join(" ", paragraphs), width, needs.leastWidth());
        return needs.leastHeight();
    }

    /** Height of lines that looks the same whether letters hang below them or not. */
    double even(List<String> paragraphs, TextStyle style, double width) {
        Box box = new Box(0, 0, width, measure(paragraphs, style, width));
        int lines = TextFitter.fit(new TextBlock(box, paragraphs, style)) instanceof Fitting.Fits fits
                ? fits.lines().size()
                : 1;
        return style.leastCapHeight() + (lines - 1) * style.face().lineHeight(style.leastCapHeight());
    }

    /** Puts a text; returns where it ends. */
    double text(List<String> paragraphs, TextStyle style, double x, double y, double width) {
        double height = measure(paragraphs, style, width);
        marks.add(new TextBlock(new Box(x, y, width, height), paragraphs, style));
        return y + height;
    }

    /** The small grey line that tells job and label; returns where it ends. */
    double stamp(String stamp, double x, double y, double width) {
        TextStyle style = style(Voice.PLAIN, LabelReading.HAND.cap())
                .in(GREY)
                .aligned(Align.RIGHT, VerticalAlign.TOP)
                .listed(Listing.NONE);
        return text(List.of(stamp), style, x, y, width);
    }

    double parts(List<LabelPart> parts, double x, double y, double width) {
        double at = y;
        for (int i = 0; i < parts.size(); i++) {
            at = part(parts.get(i), x, i == 0 ? at : at + cap * PART_GAP, width);
        }
        return at;
    }

    private double part(LabelPart part, double x, double y, double width) {
        if (part instanceof LabelPart.Text text) {
            return text(text.paragraphs(), style(text.voice(), cap).listed(text.listing()), x, y, width);
        }
        if (part instanceof LabelPart.Grid grid) {
            return section(whole(grid), x, y, width);
        }
        if (part instanceof LabelPart.Section section) {
            return section(section, x, y, width);
        }
        if (part instanceof LabelPart.Blank blank) {
            return blank(blank, x, y, width);
        }
        if (part instanceof LabelPart.Drawing drawing) {
            double across = Math.min(width, drawing.width());
            marks.add(new Picture(new Box(x, y, across, drawing.height()), drawing.svg()));
            return y + drawing.height();
        }
        return scan((LabelPart.Scan) part, x, y, width);
    }

    /** Room to write on, under the words that say what. */
    private double blank(LabelPart.Blank blank, double x, double y, double width) {
        TextStyle style = style(Voice.STRONG, cap).aligned(Align.LEFT, VerticalAlign.BOTTOM);
        double caption = style.face().widthOf(blank.caption(), cap) + cap;
        need(blank.caption(), width / 2, caption);
        double height = Math.max(PEN_HEIGHT, measure(List.of(blank.caption()), style, width));
        marks.add(TextBlock.of(new Box(x, y, width, height), blank.caption(), style));
        double from = Math.min(caption, width / 2);
        marks.add(Panel.filled(new Box(x + from, y + height - RULE, width - from, RULE), Colour.BLACK));
        return y + height;
    }

    private double scan(LabelPart.Scan scan, double x, double y, double width) {
        double module = LabelLegibility.codeModule(scan.code().size(), LabelReading.SCAN.metres(), dots);
        Code code = new Code(x, y, module, scan.code());
        double side = code.box().width();
        marks.add(code);
        double below = parts(scan.beside(), x + side + cap, y + 4 * module, atLeast(width - side - cap));
        return Math.max(y + side, below);
    }

    /** A table of two columns, the first of which breaks its lines rather than take more than half of the width. */
    double halves(LabelPart.Grid grid, double x, double y, double width) {
        LabelPart.Section whole = whole(grid);
        double first = Math.min(whole.widest().get(0), (width - gutter()) / 2);
        return rows(whole, List.of(first, width - gutter() - first), x, y, width);
    }

    private LabelPart.Section whole(LabelPart.Grid grid) {
        return new LabelPart.Section(grid, 0, grid.rows().size(), widest(grid, cap));
    }

    private double section(LabelPart.Section section, double x, double y, double width) {
        return rows(section, columns(section.whole(), section.widest(), width), x, y, width);
    }

    private double rows(LabelPart.Section section, List<Double> columns, double x, double y, double width) {
        LabelPart.Grid grid = section.whole();
        double at = y;
        if (!grid.head().isEmpty()) {
            at = row(grid.head(), columns, List.of(), x, at) + cap * 0.4;
            marks.add(Panel.filled(new Box(x, at, width, 2 * RULE), Colour.BLACK));
            at += cap * 0.6;
        }
        List<Integer> plain = plain(grid);
        for (int i = section.from(); i < section.to(); i++) {
            if (i > section.from()) {
                marks.add(Panel.filled(new Box(x, at + cap * 0.45, width, RULE), GREY));
                at += betweenRows(cap);
            }
            at = row(grid.rows().get(i), columns, plain, x, at);
        }
        return at;
    }

    /** Room between two rows of a table, with the line in it. */
    static double betweenRows(double cap) {
        return cap * 0.9 + RULE;
    }

    /** Height of each row of a table that is so wide; draws nothing that is kept. */
    static List<Double> rowHeights(LabelPart.Grid grid, List<Double> widest, double cap, double width) {
        LabelBlocks scratch = new LabelBlocks(cap, Dots.DPI_300, new ArrayList<>());
        List<Double> columns = scratch.columns(grid, widest, width);
        List<Integer> plain = plain(grid);
        return grid.rows().stream()
                .map(row -> scratch.row(row, columns, plain, 0, 0))
                .toList();
    }

    /** Columns that do not stand in bold. */
    private static List<Integer> plain(LabelPart.Grid grid) {
        return IntStream.range(grid.firstStrong() ? 1 : 0, grid.rows().get(0).size())
                .boxed()
                .toList();
    }

    /** A column has some width even where nothing is left for it: its words then tell that they do not fit. */
    double atLeast(double width) {
        return Math.max(width, cap);
    }

    private double gutter() {
        return cap * 1.5;
    }

    /** Every column as wide as its widest cell, and one that takes or gives what is left. */
    private List<Double> columns(LabelPart.Grid grid, List<Double> widest, double width) {
        int count = widest.size();
        List<Double> widths = new ArrayList<>(widest);
        double others = IntStream.range(0, count)
                .filter(column -> column != grid.wide())
                .mapToDouble(widths::get)
                .sum();
        double rest = width - others - (count - 1) * gutter();
        need(
                grid.rows().get(0).get(grid.wide()).replace("\n", " "),
                rest,
                Math.min(widths.get(grid.wide()), cap * LEAST_WIDE));
        widths.set(grid.wide(), atLeast(rest));
        return widths;
    }

    /** Width of the widest cell of each column of a table, its head with it, millimetres. */
    static List<Double> widest(LabelPart.Grid grid, double cap) {
        return IntStream.range(0, grid.rows().get(0).size())
                .mapToObj(column -> widest(grid, column, cap))
                .toList();
    }

    private static double widest(LabelPart.Grid grid, int column, double cap) {
        double head = grid.head().isEmpty() ? 0 : widest(grid.head().get(column), Face.BOLD, cap);
        Face face = grid.firstStrong() && column == 0 ? Face.BOLD : Face.REGULAR;
        return grid.rows().stream()
                        .mapToDouble(row -> widest(row.get(column), face, cap))
                        .reduce(head, Math::max)
                + SLACK;
    }

    private static double widest(String cell, Face face, double cap) {
        return cell.lines().mapToDouble(line -> face.widthOf(line, cap)).max().orElse(0);
    }

    /** Cells share their first baseline, whatever rises above the capitals in one of them. */
    private double row(List<String> cells, List<Double> columns, List<Integer> plain, double x, double y) {
        List<TextBlock> row = new ArrayList<>();
        double at = x;
        for (int column = 0; column < cells.size(); column++) {
            if (!cells.get(column).isEmpty()) {
                TextStyle style = style(plain.contains(column) ? Voice.PLAIN : Voice.STRONG, cap);
                List<String> cell = List.of(cells.get(column));
                double height = measure(cell, style, columns.get(column));
                row.add(new TextBlock(new Box(at, y, columns.get(column), height), cell, style));
            }
            at += columns.get(column) + gutter();
        }
        double[] baselines = row.stream().mapToDouble(LabelBlocks::baseline).toArray();
        double shared = Arrays.stream(baselines).max().orElse(y);
        double end = y + cap;
        for (int i = 0; i < baselines.length; i++) {
            TextBlock cell = row.get(i);
            Box box = cell.box();
            double top = y + shared - baselines[i];
            marks.add(new TextBlock(new Box(box.x(), top, box.width(), box.height()), cell.paragraphs(), cell.style()));
            end = Math.max(end, top + box.height());
        }
        return end;
    }

    /** Where the first line of a text stands, or its top if the text is too wide. */
    private static double baseline(TextBlock text) {
        return TextFitter.fit(text) instanceof Fitting.Fits fitted
                ? fitted.lines().get(0).baseline()
                : text.box().y();
    }
}
