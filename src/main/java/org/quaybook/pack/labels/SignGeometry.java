package org.quaybook.pack.labels;

/**
 * Proportions of safety signs, as shares of the diameter d of a round sign and of the width b of the triangle before
 * its corners are rounded. All seen in BGV A8 (the older German rule) and DIN 4844-1; the figures of the newer
 * ISO 3864-1 were not to be had, so nothing here claims to conform to it.
 */
final class SignGeometry {

    /** Ring of a prohibition sign, of d. */
    static final double RING = 0.10;

    /** Bar of a prohibition sign, of d, falling from left to right at 45°. */
    static final double BAR = 0.08;

    /** Black band of a warning sign, of b. */
    static final double BAND = 0.06;

    /** Light edge of every sign, of d or b: outside d for round signs, inside b for the triangle. */
    static final double EDGE = 0.025;

    /** Height of a warning sign with its rounded corners, of b (DIN 4844-1). */
    static final double TRIANGLE_HEIGHT = 0.817;

    private static final double SHARP_HEIGHT = Math.sqrt(3) / 2;

    private SignGeometry() {}

    /** Corner radius of a warning sign, of b: what rounding must take off the top. */
    static double cornerRadius() {
        return SHARP_HEIGHT - TRIANGLE_HEIGHT;
    }

    /** Area of a warning sign, of b²: the sharp triangle less what rounding takes off three corners. */
    static double triangleArea() {
        double r = cornerRadius();
        return SHARP_HEIGHT / 2 - r * r * (3 * Math.sqrt(3) - Math.PI);
    }

    /** Width of a warning sign between its rounded corners, of b. */
    static double triangleWidth() {
        return 1 - 2 * (Math.sqrt(3) - 1) * cornerRadius();
    }
}
