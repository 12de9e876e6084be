package org.quaybook.render;

/** How well one colour is read on another: relative luminance and contrast ratio of WCAG 2.2. */
public final class Contrast {

    /** Least ratio for text (WCAG 2.2, 1.4.3). */
    public static final double TEXT = 4.5;

    private Contrast() {}

    /** From 1 for two equal colours to 21 for black on white. */
    public static double ratio(Colour one, Colour other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Black or white, whichever is read better on a colour. */
    public static String inkOn(Colour ground) {
        return ratio(Colour.WHITE, ground) >= ratio(Colour.BLACK, ground) ? "#ffffff" : "#000000";
    }

    private static double luminance(Colour colour) {
        return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }
}
