package org.quaybook.pack.pictures;

import org.quaybook.pack.pictures.Drawing.Anchor;
import org.quaybook.pack.pictures.Symbols.Way;

/** Symbols one below the other on a conductor that runs downwards, each with what is known of it beside it. */
final class Ladder {

    private static final double APART = 7;

    private final Drawing drawing;
    private final Symbols symbols;
    private final double x;
    private final double notes;
    private final Anchor anchor;
    private double y;

    /**
     * @param x where the conductor runs
     * @param y where it begins
     * @param notes where the texts are held
     * @param anchor START for texts to the right of that, END for texts to the left
     */
    Ladder(Drawing drawing, Symbols symbols, double x, double y, double notes, Anchor anchor) {
        this.drawing = drawing;
        this.symbols = symbols;
        this.x = x;
        this.y = y;
        this.notes = notes;
        this.anchor = anchor;
    }

    double x() {
        return x;
    }

    double y() {
        return y;
    }

    /** What a symbol is drawn by. */
    @FunctionalInterface
    interface Drawn {
        void at(double x, double y);
    }

    /** A symbol that the conductor begins at. */
    void begin(Drawn symbol, Note note) {
        double half = Math.max(Symbols.REACH + 1, note.height() / 2);
        double middle = y + half;
        symbol.at(x, middle);
        note.writeAround(drawing, anchor, notes, middle);
        double next = middle + half + APART / 2;
        drawing.wire(x, middle + Symbols.REACH, x, next);
        y = next;
    }

    /** A symbol with its note. */
    void symbol(Drawn symbol, Note note) {
        double reach = Symbols.REACH;
        double half = Math.max(reach, note.height() / 2);
        double middle = y + half + APART / 2;
        drawing.wire(x, y, x, middle - reach);
        symbol.at(x, middle);
        note.writeAround(drawing, anchor, notes, middle);
        double next = middle + half + APART / 2;
        drawing.wire(x, middle + reach, x, next);
        y = next;
    }

    void fuse(String of, Note note) {
        symbol((atX, atY) -> symbols.fuse(atX, atY, Way.DOWN, of), note);
    }

    void isolator(String of, Note note) {
        symbol((atX, atY) -> symbols.isolator(atX, atY, Way.DOWN, of), note);
    }

    void breaker(String of, Note note) {
        symbol((atX, atY) -> symbols.breaker(atX, atY, Way.DOWN, of), note);
    }

    void rcd(String of, Note note) {
        symbol((atX, atY) -> symbols.rcd(atX, atY, Way.DOWN, of), note);
        run(APART);
    }

    /** A stretch of the conductor with its tag beside it. */
    void tag(String of, Note note) {
        double next = y + note.height() + APART;
        drawing.open("cable", of);
        drawing.wire(x, y, x, next);
        drawing.close();
        note.write(drawing, anchor, notes, y + APART / 2);
        y = next;
    }

    /** A bare stretch. */
    void run(double length) {
        drawing.wire(x, y, x, y + length);
        y += length;
    }

    /** As far down as that. */
    void runTo(double other) {
        if (other > y) {
            drawing.wire(x, y, x, other);
            y = other;
        }
    }

    /** Goes on further down; what lies between is drawn by others. */
    void skipTo(double other) {
        y = other;
    }
}
