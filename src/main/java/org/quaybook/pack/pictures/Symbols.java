package org.quaybook.pack.pictures;

import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.pack.pictures.Piece.Span;

/**
 * Symbols for diagrams after IEC 60617, drawn by ourselves. The standard's sheets were not at hand: shapes and proportions
 * are from memory. Every symbol lies around a point; conductors reach it {@link #REACH} before and behind that point.
 */
final class Symbols {

    /** From the middle of a symbol to its terminals. */
    static final double REACH = 10;

    /** Half the side of a converter's square, radius of a machine's circle. */
    static final double HALF = 10;

    private final Drawing drawing;

    Symbols(Drawing drawing) {
        this.drawing = drawing;
    }

    /** Which way the conductor runs through a symbol. */
    enum Way {
        /** Downwards. */
        DOWN,
        /** To the right. */
        RIGHT
    }

    /** Points beside and along a conductor, turned the way it runs. */
    private record Turned(double x, double y, Way way) {

        double[] corners(double... alongAndBeside) {
            double[] corners = new double[alongAndBeside.length];
            for (int i = 0; i < corners.length; i += 2) {
                double along = alongAndBeside[i];
                double beside = alongAndBeside[i + 1];
                corners[i] = way == Way.DOWN ? x + beside : x + along;
                corners[i + 1] = way == Way.DOWN ? y + along : y - beside;
            }
            return corners;
        }
    }

    /** One battery: long line plus, short line minus; the plus at the top. */
    void battery(double x, double y, String of) {
        drawing.symbol("battery", of);
        drawing.wire(x, y - REACH, x, y - 2);
        drawing.line(Pen.WIRE, x - 8, y - 2, x + 8, y - 2);
        drawing.line(Pen.HEAVY, Look.INK, x - 4, y + 2, x + 4, y + 2);
        drawing.wire(x, y + 2, x, y + REACH);
        drawing.close();
    }

    /** A fuse: a rectangle with the conductor through it. */
    void fuse(double x, double y, Way way, String of) {
        Turned at = new Turned(x, y, way);
        drawing.symbol("fuse", of);
        drawing.shape(Pen.FINE, Look.GROUND, at.corners(-7, -2.8, 7, -2.8, 7, 2.8, -7, 2.8));
        drawing.wire(at.corners(-REACH, 0, REACH, 0));
        drawing.close();
    }

    /** A switch-disconnector: an open blade, a bar and a ring at the fixed contact. */
    void isolator(double x, double y, Way way, String of) {
        Turned at = new Turned(x, y, way);
        drawing.symbol("isolator", of);
        drawing.wire(at.corners(-REACH, 0, -6.6, 0));
        drawing.line(Pen.FINE, at.corners(-6.6, -3.4, -6.6, 3.4));
        double[] ring = at.corners(-4.9, 0);
        drawing.circle(Pen.FINE, Look.GROUND, ring[0], ring[1], 1.7);
        blade(at);
        drawing.close();
    }

    private void blade(Turned at) {
        drawing.wire(at.corners(REACH, 0, 5, 0, -5, -6));
    }

    /** A circuit-breaker: an open blade and a cross at the fixed contact. */
    void breaker(double x, double y, Way way, String of) {
        Turned at = new Turned(x, y, way);
        drawing.symbol("breaker", of);
        breakerContact(at);
        drawing.close();
    }

    private void breakerContact(Turned at) {
        drawing.wire(at.corners(-REACH, 0, -4.5, 0));
        drawing.line(Pen.FINE, at.corners(-7, -2.5, -2, 2.5));
        drawing.line(Pen.FINE, at.corners(-7, 2.5, -2, -2.5));
        blade(at);
    }

    /** A residual current device: a breaker whose blade hangs on a ring around the conductor. */
    void rcd(double x, double y, Way way, String of) {
        Turned at = new Turned(x, y, way);
        drawing.symbol("rcd", of);
        breakerContact(at);
        double[] ring = at.corners(REACH + 3, 0);
        drawing.wire(at.corners(REACH, 0, REACH + 6, 0));
        if (way == Way.DOWN) {
            ellipse(ring[0], ring[1], 5.5, 2.4);
        } else {
            ellipse(ring[0], ring[1], 2.4, 5.5);
        }
        drawing.line(Pen.LINK, Look.INK, at.corners(REACH + 3, -5.5, REACH + 3, -8.5, 0, -8.5, 0, -3.4));
        drawing.close();
    }

    private void ellipse(double x, double y, double rx, double ry) {
        drawing.curve(
                Pen.FINE,
                Span.around(y, ry),
                "M" + Drawing.point(x - rx, y) + "A" + Drawing.point(rx, ry) + " 0 1 1 " + Drawing.point(x + rx, y)
                        + "A" + Drawing.point(rx, ry) + " 0 1 1 " + Drawing.point(x - rx, y) + "Z");
    }

    /** A changeover contact: one blade, two fixed contacts above it; between them it is off when made for hands. */
    void changeover(double x, double y, double second, boolean byHand, String of) {
        drawing.symbol("changeover", of);
        drawing.wire(x, y - REACH, x, y - 5);
        drawing.wire(second, y - REACH, second, y - 5, x + 9, y - 5);
        drawing.wire(x, y + REACH, x, y + 4, x + (byHand ? 4.5 : 0), y - 5);
        drawing.circle(Pen.FINE, Look.GROUND, x, y - 5, 1.5);
        drawing.circle(Pen.FINE, Look.GROUND, x + 9, y - 5, 1.5);
        if (byHand) {
            drawing.line(Pen.LINK, Look.INK, x - 9, y, x + 2, y);
            drawing.line(Pen.FINE, x - 9, y - 3, x - 9, y + 3);
        } else {
            drawing.line(Pen.LINK, Look.INK, x - 7, y, x, y);
            drawing.box(Pen.FINE, Look.GROUND, x - 14, y - 3, 7, 6);
        }
        drawing.close();
    }

    /** A contact that one of two sources is chosen by. */
    void choice(double x, double y, double second, String of) {
        drawing.symbol("choice", of);
        drawing.wire(x, y - REACH, x, y - 5);
        drawing.wire(second, y - REACH, second, y - 5);
        drawing.wire(x, y + REACH, x, y + 4, (x + second) / 2, y - 5);
        drawing.circle(Pen.FINE, Look.GROUND, x, y - 5, 1.5);
        drawing.circle(Pen.FINE, Look.GROUND, second, y - 5, 1.5);
        drawing.close();
    }

    /** Kinds of current that a converter takes and gives. */
    enum Current {
        DC,
        AC
    }

    /** A converter: a square with a diagonal, what it takes above it and what it gives below. */
    void converter(double x, double y, double half, Current takes, Current gives, String symbol, String of) {
        drawing.symbol(symbol, of);
        drawing.box(Pen.FINE, drawing.look().tint(), x - half, y - half, 2 * half, 2 * half);
        drawing.line(Pen.FINE, x - half, y + half, x + half, y - half);
        current(takes, x - half * 0.45, y - half * 0.45, half * 0.34);
        current(gives, x + half * 0.45, y + half * 0.45, half * 0.34);
        drawing.close();
    }

    private void current(Current kind, double x, double y, double half) {
        if (kind == Current.DC) {
            drawing.line(Pen.FINE, x - half, y - half * 0.4, x + half, y - half * 0.4);
            drawing.line(Pen.FINE, x - half, y + half * 0.4, x + half, y + half * 0.4);
        } else {
            wave(x, y, half);
        }
    }

    /** A wave: alternating current. */
    void wave(double x, double y, double half) {
        drawing.curve(
                Pen.FINE,
                Span.around(y, half),
                "M" + Drawing.point(x - half, y) + "C" + Drawing.point(x - half / 2, y - half * 1.5) + " "
                        + Drawing.point(x - half / 4, y - half) + " " + Drawing.point(x, y) + "S"
                        + Drawing.point(x + half / 2, y + half * 1.5) + " " + Drawing.point(x + half, y));
    }

    /** A rotating generator: G in a circle, above the kind of current. */
    void machine(double x, double y, Current gives, String symbol, String of) {
        drawing.symbol(symbol, of);
        drawing.circle(Pen.FINE, drawing.look().tint(), x, y, HALF);
        drawing.text(Lettering.SMALL_BOLD, Anchor.MIDDLE, x, y + 0.2, "G");
        current(gives, x, y + 5.7, 3.6);
        drawing.close();
    }

    /** A photovoltaic generator: G in a square that two arrows of light fall on. */
    void panels(double x, double y, String of) {
        drawing.symbol("solar", of);
        drawing.box(Pen.FINE, drawing.look().tint(), x - HALF, y - HALF, 2 * HALF, 2 * HALF);
        drawing.text(Lettering.SMALL_BOLD, Anchor.MIDDLE, x, y + 0.2, "G");
        current(Current.DC, x, y + 5.7, 3.6);
        light(x + HALF - 3, y - HALF + 1);
        light(x + HALF + 2, y - HALF + 6);
        drawing.close();
    }

    private void light(double x, double y) {
        drawing.line(Pen.FINE, x + 7, y - 7, x, y);
        drawing.line(Pen.FINE, x + 3.4, y - 0.6, x, y, x + 0.6, y - 3.4);
    }

    /** The inlet of the shore lead: the pin of the inlet in the arc of the lead's connector. */
    void inlet(double x, double y, String of) {
        drawing.symbol("shore-inlet", of);
        drawing.curve(
                Pen.WIRE,
                new Span(y - 4, y + 2),
                "M" + Drawing.point(x - 6, y + 2) + "A" + Drawing.point(6, 6) + " 0 0 1 "
                        + Drawing.point(x + 6, y + 2));
        drawing.wire(x, y - REACH, x, y - 4);
        drawing.fill(Look.INK, x - 1.6, y - 1, 3.2, 6);
        drawing.wire(x, y + 5, x, y + REACH);
        drawing.close();
    }

    /** A transformer with two windings that are parted from each other: two circles that reach into one another. */
    void transformer(double x, double y, String of) {
        double radius = 5.8;
        double apart = REACH - radius;
        drawing.symbol("transformer", of);
        drawing.circle(Pen.WIRE, Look.GROUND, x, y - apart, radius);
        drawing.circle(Pen.WIRE, "none", x, y + apart, radius);
        drawing.close();
    }

    /** A socket outlet with a contact for the protective conductor; fed from the left. */
    void outlet(double x, double y, String of) {
        drawing.symbol("socket", of);
        drawing.curve(
                Pen.WIRE,
                Span.around(y, 6),
                "M" + Drawing.point(x + 4, y - 6) + "A" + Drawing.point(6, 6) + " 0 0 0 "
                        + Drawing.point(x + 4, y + 6));
        drawing.line(Pen.FINE, x - 2, y - 5, x - 2, y + 5);
        drawing.close();
    }

    /** Earth. The conductor comes from above. */
    void earth(double x, double y, String of) {
        drawing.symbol("earth", of);
        earthBars(x, y);
        drawing.close();
    }

    private void earthBars(double x, double y) {
        drawing.line(Pen.WIRE, x - 6, y, x + 6, y);
        drawing.line(Pen.WIRE, x - 4, y + 2.6, x + 4, y + 2.6);
        drawing.line(Pen.WIRE, x - 2, y + 5.2, x + 2, y + 5.2);
    }

    /** Hull, chassis or frame. The conductor comes from above. */
    void frame(double x, double y, String of) {
        drawing.symbol("frame", of);
        drawing.line(Pen.WIRE, x - 6, y, x + 6, y);
        for (double at = -6; at <= 6; at += 4) {
            drawing.line(Pen.FINE, x + at, y, x + at - 3, y + 5);
        }
        drawing.close();
    }

    /** The tip of an arrow that points down, right, up or left. */
    void tip(double x, double y, double dx, double dy) {
        double size = 4.4;
        drawing.shape(
                Pen.HAIR,
                Look.INK,
                x,
                y,
                x - dx * size - dy * size * 0.45,
                y - dy * size - dx * size * 0.45,
                x - dx * size + dy * size * 0.45,
                y - dy * size + dx * size * 0.45);
    }
}
