package org.quaybook.pack.pictures;

/** The kinds of line in a picture; each differs from the others by weight or dashes. */
enum Pen {
    /** Axes' guide lines and leaders. */
    HAIR(0.5, ""),
    /** Outlines of symbols and boxes. */
    FINE(0.8, ""),
    /** Conductors. */
    WIRE(1.1, ""),
    /** Bars that conductors meet on, arrows of battery current. */
    HEAVY(2.4, ""),
    /** The first curve of a chart. */
    CURVE(1.7, ""),
    /** The second. */
    CURVE_DASHED(1.4, "7 3"),
    /** The third. */
    CURVE_DOTTED(1.4, "1.6 2.4"),
    /** A limit that warns. */
    LIMIT_DASHED(1.1, "4 2"),
    /** What encloses several parts as one (IEC 60617, from memory: chain line). */
    CHAIN(0.7, "8 2 2 2"),
    /** Protective conductors (IEC 60617, from memory: dashes and dots). */
    EARTH(1.1, "5 2 1 2"),
    /** What belongs together without a conductor that the job describes. */
    LINK(0.7, "2 2");

    private final double width;
    private final String dashes;

    Pen(double width, String dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    double width() {
        return width;
    }

    String dashes() {
        return dashes;
    }
}
