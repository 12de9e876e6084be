package org.quaybook.pack.labels;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What goes around a cable, all in millimetres. The tag lies with its text along the cable: its width is what it takes of
 * the cable's length, its height goes around it. Shares and gaps are common practice, no source.
 *
 * @param diameter outside diameter d of the cable
 */
record CableTag(double diameter) {

    /** Printed zone of a wrap, of the circumference: less than all of it, so that it does not cover itself. */
    private static final double ZONE = 0.9;

    /** Clear tail of a wrap, of the circumference: once around over the print, and a quarter to hold. */
    private static final double TAIL = 1.25;

    /** What of the tail goes under the print where the stock is not clear, of the circumference. */
    private static final double UNDER = 0.25;

    /** Play beside the cable, so that the halves of a flag meet. */
    private static final double CLEARANCE = 1.5;

    /** Least times that the text stands around the cable, so that one of them is seen from any side. */
    static final int LEAST_REPEATS = 2;

    CableTag {
        if (!(diameter > 0)) {
            throw new IllegalArgumentException("diameter " + diameter);
        }
    }

    double circumference() {
        return Math.PI * diameter;
    }

    /** Height of the printed zone of a wrap, from its first edge. */
    double wrapZone() {
        return ZONE * circumference();
    }

    /** Height of a wrap: printed zone and clear tail. */
    double wrapTotal() {
        return (ZONE + TAIL) * circumference();
    }

    /** Where a tail that is not clear is cut, to be stuck on first under the print. */
    double wrapOpaque() {
        return (ZONE + UNDER) * circumference();
    }

    /** How often a text of a height stands in the printed zone. */
    int repeats(double text) {
        return (int) Math.floor(wrapZone() / text + 1e-9);
    }

    /** Whether a text of a height can be read from any side of a wrap. */
    boolean wraps(double text) {
        return repeats(text) >= LEAST_REPEATS;
    }

    /**
     * Height of a flag: two halves, what goes around the cable, and the play.
     *
     * @param half height of one half
     */
    double flagTotal(double half) {
        return 2 * half + circumference() + 2 * CLEARANCE;
    }

    /** Where a flag is folded, from its upper edge. */
    List<Double> folds(double half) {
        return DoubleStream.of(half, flagTotal(half) - half).boxed().toList();
    }
}
