package org.quaybook.pack.labels;

import java.util.List;

/**
 * What a stock leaves for a label, millimetres.
 *
 * @param stock name of the stock, for messages
 * @param widths that a label may have, the narrowest first; at least one
 * @param height that no label may exceed
 */
record LabelRoom(String stock, List<Double> widths, double height) {

    /**
     * Widths that share a sheet of A4 or Letter without waste: a third, a half, two thirds and the whole, less the gaps.
     */
    static final List<Double> WIDTHS = List.of(60.0, 92.5, 125.0, 190.0);

    /** No label is taller than this, of its width, unless only the greatest width is left. Common practice, no source. */
    private static final double TALLEST = 1.1;

    LabelRoom {
        widths = List.copyOf(widths);
        if (widths.isEmpty()) {
            throw new IllegalArgumentException("no room on " + stock);
        }
    }

    double widest() {
        return widths.get(widths.size() - 1);
    }

    boolean bears(double height) {
        return height <= this.height + LabelSetter.SLACK;
    }

    /** Whether a label has a shape that does not look wrong. */
    boolean suits(double width, double height) {
        return widths.size() == 1 || height <= TALLEST * width;
    }
}
