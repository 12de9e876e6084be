package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.quaybook.pack.pictures.Drawing.Anchor;

/** A chart with a vertical scale at its left, curves, and their names at its right where each curve ends. */
final class Chart {

    /** Room for the numbers of the vertical scale. */
    private static final double LEFT = 38;

    /** Where the curves end; their names stand right of it. */
    private static final double RIGHT = 222;

    private static final double NAMES = RIGHT + 12;
    private static final double NAMES_WIDTH = Drawing.WIDTH - NAMES;
    private static final double NAMES_APART = 5;
    private static final double MARK = 2.5;

    /** How the curves of a chart are told apart, on grey paper too. */
    enum Series {
        FIRST(Pen.CURVE),
        SECOND(Pen.CURVE_DASHED),
        THIRD(Pen.CURVE_DOTTED);

        private final Pen pen;

        Series(Pen pen) {
            this.pen = pen;
        }
    }

    private record Name(double y, Note note) {}

    private final Drawing drawing;
    private final Scale across;
    private final Scale up;
    private final List<Name> names = new ArrayList<>();

    /**
     * @param top upper edge of the field of the curves
     * @param bottom lower edge
     * @param acrossFrom value at the left
     * @param acrossTo value at the right
     * @param upFrom value at the lower edge
     * @param upTo value at the upper edge
     */
    Chart(Drawing drawing, double top, double bottom, double acrossFrom, double acrossTo, double upFrom, double upTo) {
        this.drawing = drawing;
        this.across = new Scale(acrossFrom, acrossTo, LEFT, RIGHT);
        this.up = new Scale(upFrom, upTo, bottom, top);
    }

    Scale across() {
        return across;
    }

    Scale up() {
        return up;
    }

    /** A line to read values along, with its value. */
    void tickUp(double value, String text) {
        double y = up.at(value);
        drawing.line(Pen.HAIR, LEFT, y, RIGHT, y);
        drawing.text(Lettering.SMALL, Anchor.END, LEFT - 4, y + Lettering.SMALL.capitals() / 2, text);
    }

    void tickAcross(double value, String text) {
        double x = across.at(value);
        drawing.line(Pen.FINE, x, up.start(), x, up.start() + 3);
        drawing.text(Lettering.SMALL, Anchor.MIDDLE, x, up.start() + 5 + Lettering.SMALL.capitals(), text);
    }

    /** What the values across are, below their numbers. */
    void captionAcross(String text) {
        drawing.text(Lettering.SMALL, Anchor.MIDDLE, (LEFT + RIGHT) / 2, up.start() + CAPTION_BELOW, text);
    }

    /** From the lower edge of the field to the baseline of its caption. */
    static final double CAPTION_BELOW = 23;

    void frame() {
        drawing.line(Pen.FINE, LEFT, up.end(), LEFT, up.start(), RIGHT, up.start());
    }

    /** Shades a stretch from a value across to the right edge, with a name above it. */
    void shadeFrom(double value, String name) {
        double x = across.at(value);
        drawing.fill(Look.SHADE, x, up.end(), RIGHT - x, up.start() - up.end());
        drawing.line(Pen.FINE, x, up.end() - 4, x, up.start());
        drawing.text(Lettering.SMALL, Anchor.MIDDLE, x, up.end() - 7, name);
    }

    /** A curve with a mark at each point; its name stands where it ends. */
    void curve(Series series, String what, List<double[]> points, Note name) {
        drawing.open("series", what);
        double[] corners = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            corners[2 * i] = across.at(points.get(i)[0]);
            corners[2 * i + 1] = up.at(points.get(i)[1]);
        }
        if (points.size() > 1) {
            drawing.line(series.pen, corners);
        }
        for (int i = 0; i < points.size(); i++) {
            mark(series, corners[2 * i], corners[2 * i + 1]);
        }
        drawing.close();
        int last = corners.length - 2;
        names.add(new Name(corners[last + 1], name));
        leaderFrom.add(new double[] {corners[last], corners[last + 1]});
    }

    private final List<double[]> leaderFrom = new ArrayList<>();

    private void mark(Series series, double x, double y) {
        drawing.open("mark", series.name().toLowerCase(Locale.ROOT));
        switch (series) {
            case FIRST -> drawing.circle(Pen.FINE, Look.INK, x, y, MARK - 0.6);
            case SECOND ->
                drawing.box(Pen.FINE, Look.GROUND, x - MARK + 0.4, y - MARK + 0.4, 2 * MARK - 0.8, 2 * MARK - 0.8);
            case THIRD ->
                drawing.shape(Pen.FINE, Look.GROUND, x, y - MARK, x + MARK, y + MARK * 0.8, x - MARK, y + MARK * 0.8);
        }
        drawing.close();
    }

    /** A ring around a point that is worth a look. */
    void ring(double acrossValue, double upValue) {
        drawing.open("ring", "");
        drawing.circle(Pen.FINE, "none", across.at(acrossValue), up.at(upValue), MARK + 2);
        drawing.close();
    }

    /** A limit from edge to edge, with its name at the right. */
    void limit(Pen pen, String what, double value, Note name) {
        double y = up.at(value);
        drawing.open("series", what);
        drawing.line(pen, LEFT, y, RIGHT, y);
        drawing.close();
        names.add(new Name(y, name));
        leaderFrom.add(new double[] {RIGHT, y});
    }

    /** A note for the right of the chart. */
    static Note.Builder name() {
        return Note.within(NAMES_WIDTH);
    }

    /**
     * Writes the names, each as near to its curve's end as the others let it, and joins it to that by a thin line.
     *
     * @return the lower edge of the lowest
     */
    double writeNames(double top) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> names.get(i).y()));
        double[] tops = tops(order, top);
        double lowest = top;
        for (int i = 0; i < order.size(); i++) {
            Name name = names.get(order.get(i));
            double[] from = leaderFrom.get(order.get(i));
            double middle = tops[i] + name.note().lines().get(0).lettering().capitals() / 2;
            drawing.line(Pen.HAIR, Look.INK, from[0] + MARK + 0.7, from[1], RIGHT + 4, from[1], NAMES - 3, middle);
            name.note().write(drawing, Anchor.START, NAMES, tops[i]);
            lowest = tops[i] + name.note().height();
        }
        return lowest;
    }

    /**
     * Upper edges, from the highest down: pushed down where they would touch, then up again so that each begins beside the
     * field of the curves, as far as there is room.
     */
    private double[] tops(List<Integer> order, double top) {
        double[] tops = new double[order.size()];
        double free = top;
        for (int i = 0; i < tops.length; i++) {
            Note note = names.get(order.get(i)).note();
            double capitals = note.lines().get(0).lettering().capitals();
            tops[i] = Math.max(free, names.get(order.get(i)).y() - capitals / 2);
            free = tops[i] + note.height() + NAMES_APART;
        }
        double most = up.start() - Lettering.SMALL.capitals();
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], most);
            if (i > 0) {
                most = tops[i]
                        - NAMES_APART
                        - names.get(order.get(i - 1)).note().height();
            }
        }
        double edge = top;
        for (int i = 0; i < tops.length; i++) {
            tops[i] = Math.max(tops[i], edge);
            edge = tops[i] + names.get(order.get(i)).note().height() + NAMES_APART;
        }
        return tops;
    }
}
