package org.quaybook.pack.pictures;

import java.util.ArrayList;
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

    private record Corner(double x, double y) {}

    /** A name and the corners of the line that it belongs to, from left to right. */
    private record Name(List<Corner> line, Note note) {

        Corner end() {
            return line.get(line.size() - 1);
        }

        /** How far down the line is at an x, which is not behind its end. */
        double at(double x) {
            for (int i = 1; i < line.size(); i++) {
                Corner from = line.get(i - 1);
                Corner to = line.get(i);
                if (x <= to.x()) {
                    double part = Math.max(0, (x - from.x()) / (to.x() - from.x()));
                    return from.y() + part * (to.y() - from.y());
                }
            }
            return end().y();
        }

        /** Whether the line runs below another where both are still drawn. */
        boolean isBelow(Name other) {
            double x = Math.min(end().x(), other.end().x());
            return at(x) > other.at(x);
        }
    }

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
        add(new Name(
                points.stream()
                        .map(point -> new Corner(across.at(point[0]), up.at(point[1])))
                        .toList(),
                name));
    }

    /** Names stand in the order of their lines, from the highest down. */
    private void add(Name name) {
        int place = names.size();
        while (place > 0 && names.get(place - 1).isBelow(name)) {
            place--;
        }
        names.add(place, name);
    }

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
        add(new Name(List.of(new Corner(LEFT, y), new Corner(RIGHT, y)), name));
    }

    /** A note for the right of the chart. */
    static Note.Builder name() {
        return Note.within(NAMES_WIDTH);
    }

    /**
     * Writes the names, each as near to its line's end as the others let it, and joins it to that by a thin line that soon
     * stands level with the name, so that it keeps clear of the ends of other lines.
     *
     * @return the lower edge of the lowest
     */
    double writeNames(double top) {
        double[] tops = tops(top);
        double lowest = top;
        for (int i = 0; i < tops.length; i++) {
            Name name = names.get(i);
            double middle = tops[i] + name.note().lines().get(0).lettering().capitals() / 2;
            double from = name.end().x() + MARK + 0.7;
            double level = Math.min(from + Math.abs(middle - name.end().y()), RIGHT + 4);
            drawing.line(Pen.HAIR, Look.INK, from, name.end().y(), level, middle, NAMES - 3, middle);
            name.note().write(drawing, Anchor.START, NAMES, tops[i]);
            lowest = tops[i] + name.note().height();
        }
        return lowest;
    }

    /**
     * Upper edges, from the highest down: pushed down where they would touch, then up again so that each begins beside the
     * field of the curves, as far as there is room.
     */
    private double[] tops(double top) {
        double[] tops = new double[names.size()];
        double free = top;
        for (int i = 0; i < tops.length; i++) {
            Note note = names.get(i).note();
            double capitals = note.lines().get(0).lettering().capitals();
            tops[i] = Math.max(free, names.get(i).end().y() - capitals / 2);
            free = tops[i] + note.height() + NAMES_APART;
        }
        double most = up.start() - Lettering.SMALL.capitals();
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], most);
            if (i > 0) {
                most = tops[i] - NAMES_APART - names.get(i - 1).note().height();
            }
        }
        double edge = top;
        for (int i = 0; i < tops.length; i++) {
            tops[i] = Math.max(tops[i], edge);
            edge = tops[i] + names.get(i).note().height() + NAMES_APART;
        }
        return tops;
    }
}
