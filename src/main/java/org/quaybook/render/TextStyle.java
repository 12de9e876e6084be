package org.quaybook.render;

/**
 * How a text on a label looks.
 *
 * @param greatestCapHeight the text is set so large if it fits; millimetres
 * @param leastCapHeight and never smaller than this; millimetres
 */
public record TextStyle(
        Face face,
        double greatestCapHeight,
        double leastCapHeight,
        Colour colour,
        Align align,
        VerticalAlign vertical,
        Listing listing) {

    /** Where the lines stand between left and right. */
    public enum Align {
        LEFT,
        CENTRE,
        RIGHT
    }

    /** Where the text stands between top and bottom. */
    public enum VerticalAlign {
        TOP,
        MIDDLE,
        BOTTOM
    }

    /** What stands before each paragraph. */
    public enum Listing {
        NONE,
        BULLETS,
        NUMBERS
    }

    public TextStyle {
        if (!(leastCapHeight > 0 && leastCapHeight <= greatestCapHeight) || !Double.isFinite(greatestCapHeight)) {
            throw new IllegalArgumentException("cap height from " + leastCapHeight + " to " + greatestCapHeight);
        }
        if (listing != Listing.NONE && align != Align.LEFT) {
            throw new IllegalArgumentException("a list stands at the left");
        }
    }

    /** Black, from the top left, no list. */
    public static TextStyle of(Face face, double greatestCapHeight, double leastCapHeight) {
        return new TextStyle(
                face, greatestCapHeight, leastCapHeight, Colour.BLACK, Align.LEFT, VerticalAlign.TOP, Listing.NONE);
    }

    /** The same in another colour. */
    public TextStyle in(Colour other) {
        return new TextStyle(face, greatestCapHeight, leastCapHeight, other, align, vertical, listing);
    }

    /** The same, standing elsewhere in its box. */
    public TextStyle aligned(Align across, VerticalAlign down) {
        return new TextStyle(face, greatestCapHeight, leastCapHeight, colour, across, down, listing);
    }

    /** The same with something before each paragraph. */
    public TextStyle listed(Listing other) {
        return new TextStyle(face, greatestCapHeight, leastCapHeight, colour, align, vertical, other);
    }
}
