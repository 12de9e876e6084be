package org.quaybook.render;

/**
 * The dots of a printer, the same across and along.
 *
 * @param perMillimetre more than 0
 */
public record Dots(double perMillimetre) {

    private static final double INCH = 25.4;

    /** The heads called 203 dpi have exactly eight dots in a millimetre (common practice, no source). */
    public static final Dots DPI_203 = new Dots(8);

    public static final Dots DPI_300 = new Dots(300 / INCH);
    public static final Dots DPI_600 = new Dots(600 / INCH);

    public Dots {
        if (!(perMillimetre > 0 && Double.isFinite(perMillimetre))) {
            throw new IllegalArgumentException("dots per millimetre: " + perMillimetre);
        }
    }

    /** Whole dots in a length, to the nearest. */
    public int in(double millimetres) {
        return (int) Math.round(millimetres * perMillimetre);
    }

    /** Whole dots in a metre, as a picture file states its scale. */
    public int perMetre() {
        return in(1000);
    }

    /** Length of so many dots, millimetres. */
    public double length(double dots) {
        return dots / perMillimetre;
    }
}
