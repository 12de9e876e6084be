package org.quaybook.render;

import java.util.List;

/** What became of fitting a text into a box. */
public sealed interface Fitting {

    /**
     * The text fits.
     *
     * @param capHeight the cap height reached, millimetres
     * @param lines from top to bottom
     */
    record Fits(double capHeight, List<Line> lines) implements Fitting {
        public Fits {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One line of fitted text.
     *
     * @param x of the point on the baseline where it begins, millimetres from the left edge of the label
     * @param baseline of the same point, millimetres from the top edge of the label
     */
    record Line(double x, double baseline, String text) {}

    /**
     * The text does not fit even at the least cap height.
     *
     * @param leastWidth width of a box that would do, millimetres: the given one unless a single word is wider
     * @param leastHeight height of a box of that width that would do
     */
    record DoesNotFit(double leastWidth, double leastHeight) implements Fitting {}
}
