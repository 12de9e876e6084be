package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.VerticalAlign;

/**
 * A page to find out by how much a printer is off: the outline of every label of a stock with a cross in its middle,
 * scales across the edges of the first label and of the last, and rules of 100 mm both ways. Where the edge of the real
 * label crosses a scale, the scale shows the offset that makes up for it: right and down count as more than 0.
 */
public final class CalibrationPage {

    /** Common practice, no source: hairline of a proof. */
    private static final double LINE = 0.1;

    private static final double CROSS = 3;
    private static final double TICK = 1;
    private static final int REACH = 4;
    private static final double NUMBER = 2;
    private static final TextStyle NUMBERS =
            TextStyle.of(Face.REGULAR, 1.2, 0.9).aligned(Align.CENTRE, VerticalAlign.MIDDLE);

    /** Length of the page of tape that has no length of its own. */
    private static final double TAPE = 120;

    private static final double RULE = 100;
    private static final double DECIMETRE_PART = 10;

    /** On less, words cannot be set. */
    private static final double LEAST_FOR_WORDS = 50;

    private static final double WORDS_HIGH = 40;

    /** Between words and the outline around them. */
    private static final double GROUND = 2;

    /** What a rule takes on either side, with its number. */
    private static final double RULE_ROOM = 6;

    private final Box paper;
    private final List<Box> cells;
    private final List<Mark> texts = new ArrayList<>();

    private CalibrationPage(Medium medium) {
        this.paper = paper(medium);
        this.cells = cells(medium);
    }

    /**
     * Draws the page for a stock.
     *
     * @param words how the page is used, a paragraph each; not printed on stock too narrow for them
     * @param settings its offset moves the page as it moves labels, so that a second page shows what is left
     */
    public static byte[] toPdf(Stock stock, PrintSettings settings, List<String> words, DocumentInfo info) {
        Faults faults = new Faults(info.title());
        settings.startingAt(1).withBleed(0).check(stock.medium(), faults);
        faults.throwIfAny();
        return new CalibrationPage(stock.medium()).write(settings, words, info);
    }

    private static Box paper(Medium medium) {
        if (medium instanceof Sheet sheet) {
            return new Box(0, 0, sheet.width(), sheet.height());
        }
        if (medium instanceof DieCut sheet) {
            return new Box(0, 0, sheet.paperWidth(), sheet.paperHeight());
        }
        Roll roll = (Roll) medium;
        return new Box(0, 0, roll.width(), roll.length() == null ? TAPE : roll.length());
    }

    /** The labels; on a plain sheet or tape, the room that labels may take. */
    private static List<Box> cells(Medium medium) {
        if (medium instanceof DieCut sheet) {
            return sheet.cells();
        }
        if (medium instanceof Roll roll) {
            return List.of(paper(roll).inside(roll.edge()));
        }
        return List.of(medium.room());
    }

    private byte[] write(PrintSettings settings, List<String> words, DocumentInfo info) {
        Faults faults = new Faults(info.title());
        scaleNumbers();
        if (paper.width() >= LEAST_FOR_WORDS) {
            words(words);
        }
        PreparedLabel text = PreparedLabel.bare(new Label("calibration", paper.width(), paper.height(), texts), faults);
        faults.throwIfAny();
        String input = List.of(paper, cells, settings, words, info).toString();
        Tag structure = new Tag("Document", List.of(text.structure()));
        return SheetPdf.of(List.of(paper), info, structure, input, (page, whole) -> {
            Canvas canvas = whole.at(settings.offsetX(), settings.offsetY());
            draw(canvas);
            text.draw(canvas);
        });
    }

    /** Inside one outline, so that none runs through them; on a white ground that hides what still would. */
    private void words(List<String> words) {
        TextStyle style = TextStyle.of(Face.REGULAR, 2, 1);
        Box wide = new Box(paper.width() * 0.3, paper.height() * 0.25, paper.width() * 0.4, WORDS_HIGH);
        TextBlock block = cells.stream().anyMatch(cell -> holds(cell, wide))
                ? new TextBlock(wide, words, style)
                : cells.stream()
                        .skip(1)
                        .limit(Math.max(0, cells.size() - 2))
                        .filter(this::isClearOfRules)
                        .map(cell -> new TextBlock(cell.inside(GROUND), words, style))
                        .filter(text -> TextFitter.fit(text) instanceof Fitting.Fits)
                        .findFirst()
                        .orElse(new TextBlock(wide, words, style));
        if (TextFitter.fit(block) instanceof Fitting.Fits fits) {
            Box box = block.box();
            double last = fits.lines().get(fits.lines().size() - 1).baseline();
            double end = Math.min(box.y() + box.height(), last + fits.capHeight());
            texts.add(Panel.filled(new Box(box.x(), box.y(), box.width(), end - box.y()), Colour.WHITE));
        }
        texts.add(block);
    }

    private static boolean holds(Box cell, Box inner) {
        return inner.x() >= cell.x()
                && inner.y() >= cell.y()
                && inner.x() + inner.width() <= cell.x() + cell.width()
                && inner.y() + inner.height() <= cell.y() + cell.height();
    }

    /** Whether neither rule nor its number runs through a label. */
    private boolean isClearOfRules(Box cell) {
        double across = ruleLine(true);
        double down = ruleLine(false);
        boolean below = cell.y() > across + RULE_ROOM || cell.y() + cell.height() < across - RULE_ROOM;
        boolean beside = cell.x() > down + 2 * RULE_ROOM || cell.x() + cell.width() < down - RULE_ROOM;
        return below && beside;
    }

    private void draw(Canvas canvas) {
        for (Box cell : cells) {
            canvas.stroke(cell, 0, Colour.BLACK, LINE);
            double x = cell.x() + cell.width() / 2;
            double y = cell.y() + cell.height() / 2;
            double arm = Math.min(CROSS, Math.min(cell.width(), cell.height()) / 4);
            canvas.line(x - arm, y, x + arm, y, Colour.BLACK, LINE);
            canvas.line(x, y - arm, x, y + arm, Colour.BLACK, LINE);
        }
        for (Scale scale : scales()) {
            scale.draw(canvas, paper);
        }
        rule(canvas, true);
        rule(canvas, false);
    }

    /** A scale across an edge: its zero lies on the edge. */
    private record Scale(double x, double y, boolean across) {

        void draw(Canvas canvas, Box paper) {
            for (int step = -REACH; step <= REACH; step++) {
                double tick = step == 0 ? 2 * TICK : TICK;
                double at = (across ? x : y) + step;
                if (at >= 0 && at <= (across ? paper.width() : paper.height())) {
                    if (across) {
                        canvas.line(at, y - tick, at, y + tick, Colour.BLACK, LINE);
                    } else {
                        canvas.line(x - tick, at, x + tick, at, Colour.BLACK, LINE);
                    }
                }
            }
        }

        Box number(int step) {
            return across
                    ? new Box(x + step - NUMBER / 2, y + TICK + 0.2, NUMBER, NUMBER)
                    : new Box(x + TICK + 0.2, y + step - NUMBER / 2, NUMBER, NUMBER);
        }
    }

    /** Across the left and upper edge of the first label, and the right and lower edge of the last. */
    private List<Scale> scales() {
        Box first = cells.get(0);
        Box last = cells.get(cells.size() - 1);
        double quarterAcross = first.width() / 4;
        double quarterDown = first.height() / 4;
        return List.of(
                new Scale(first.x(), first.y() + quarterDown, true),
                new Scale(first.x() + quarterAcross, first.y(), false),
                new Scale(last.x() + last.width(), last.y() + last.height() - quarterDown, true),
                new Scale(last.x() + last.width() - quarterAcross, last.y() + last.height(), false));
    }

    private void scaleNumbers() {
        for (Scale scale : scales()) {
            for (int step = -2; step <= REACH; step += 2) {
                Box box = scale.number(step);
                if (step != 0 && box.isWithin(paper.width(), paper.height())) {
                    texts.add(TextBlock.of(box, (step < 0 ? "\u2212" : "") + Math.abs(step), NUMBERS));
                }
            }
        }
        number(true);
        number(false);
    }

    /** Whole centimetres that a rule has room for, at most ten. */
    private double ruleLength(boolean across) {
        double room = (across ? paper.width() : paper.height()) - DECIMETRE_PART;
        return Math.min(RULE, Math.floor(room / DECIMETRE_PART) * DECIMETRE_PART);
    }

    private double ruleStart(boolean across) {
        return ((across ? paper.width() : paper.height()) - ruleLength(across)) / 2;
    }

    /** Where the rules stand: the one across below the middle, the one down left of it. */
    private double ruleLine(boolean across) {
        return across ? paper.height() * 0.6 : paper.width() * 0.2;
    }

    private void rule(Canvas canvas, boolean across) {
        if (ruleLength(across) <= 0) {
            return;
        }
        double start = ruleStart(across);
        double end = start + ruleLength(across);
        double line = ruleLine(across);
        along(canvas, across, start, end, line);
        for (double at = start; at <= end + LINE; at += DECIMETRE_PART) {
            boolean last = at == start || at > end - LINE;
            double tick = last ? 2 * TICK : TICK;
            along(canvas, !across, line - tick, line + tick, at);
        }
    }

    private static void along(Canvas canvas, boolean across, double from, double to, double line) {
        if (across) {
            canvas.line(from, line, to, line, Colour.BLACK, 2 * LINE);
        } else {
            canvas.line(line, from, line, to, Colour.BLACK, 2 * LINE);
        }
    }

    private void number(boolean across) {
        double length = ruleLength(across);
        double middle = ruleStart(across) + length / 2 - DECIMETRE_PART / 2;
        double line = ruleLine(across) + TICK + 0.2;
        Box box = across ? new Box(middle - 5, line, 10, 2.5) : new Box(line, middle, 10, 2.5);
        if (length > 0 && box.isWithin(paper.width(), paper.height())) {
            texts.add(TextBlock.of(box, Millimetres.plain(length) + " mm", NUMBERS));
        }
    }
}
