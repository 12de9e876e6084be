package org.quaybook.render;

import java.util.HexFormat;
import java.util.Locale;

/**
 * A colour on screen and paper.
 *
 * @param red 0 to 255, sRGB
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Colour(int red, int green, int blue) {

    public static final Colour BLACK = new Colour(0, 0, 0);
    public static final Colour WHITE = new Colour(255, 255, 255);

    private static final int RGB_DIGITS = 6;

    public Colour {
        if (((red | green | blue) & ~0xff) != 0) {
            throw new IllegalArgumentException("no colour: " + red + ", " + green + ", " + blue);
        }
    }

    /**
     * @param hex {@code #rrggbb}
     * @throws IllegalArgumentException if it is anything else
     */
    public static Colour of(String hex) {
        if (hex.length() != RGB_DIGITS + 1 || hex.charAt(0) != '#') {
            throw new IllegalArgumentException("not #rrggbb: " + hex);
        }
        int rgb = HexFormat.fromHexDigits(hex, 1, hex.length());
        return new Colour(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }

    /** {@code #rrggbb}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }

    /** {@code #rrggbb}. */
    String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }
}
