package org.quaybook.render;

import org.jspecify.annotations.Nullable;

/**
 * A roll of labels or of tape, millimetres.
 *
 * @param width across the feed
 * @param edge what the print head does not reach on each side, and what stays white before and after a label
 * @param length of each label along the feed; null for tape that is cut to any length
 * @param gap between labels along the feed
 */
public record Roll(double width, double edge, @Nullable Double length, double gap) implements Medium {

    /** Longest label on tape of free length (common practice, no source). */
    public static final double LONGEST = 1000;

    public Roll {
        double shorter = Math.min(width, length == null ? LONGEST : length);
        if (!(edge >= 0 && gap >= 0 && 2 * edge < shorter)) {
            throw new IllegalArgumentException("no room on a roll of " + width + " mm");
        }
    }

    /** Width across the feed, height along it. */
    @Override
    public Box room() {
        return new Box(0, 0, width, length == null ? LONGEST : length).inside(edge);
    }
}
