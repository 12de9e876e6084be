package org.quaybook.render;

/** The faces for text on labels. What a face lacks is taken from a symbol font of the same weight. */
public enum Face {
    REGULAR(Typeface.SANS),
    BOLD(Typeface.SANS_BOLD),
    BOLD_ITALIC(Typeface.SANS_BOLD_ITALIC),
    CONDENSED_BOLD(Typeface.CONDENSED_BOLD);

    private final Typeface typeface;

    Face(Typeface typeface) {
        this.typeface = typeface;
    }

    Typeface typeface() {
        return typeface;
    }

    /** Font size at which capitals are so high; both in the same unit. */
    public double sizeFor(double capHeight) {
        return capHeight / capHeight(1);
    }

    /** Height of the letter H at a font size; both in the same unit. */
    public double capHeight(double size) {
        return typeface.font().getCharBBox('H')[3] / Typeface.UNITS * size;
    }

    /** Width of a text on one line, in the unit of the cap height. */
    public double widthOf(String text, double capHeight) {
        return typeface.width(text, sizeFor(capHeight));
    }

    /** From baseline to baseline within a paragraph, in the unit of the cap height. */
    public double lineHeight(double capHeight) {
        return sizeFor(capHeight) * LINE_HEIGHT;
    }

    /** Common practice, no source: leading of 1.2 times the font size. */
    private static final double LINE_HEIGHT = 1.2;
}
