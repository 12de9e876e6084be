package org.quaybook.render;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.List;

/** Letters as shapes, set as wide as the PDF sets them. */
final class Outlines {

    /** Large, so that the font's own units are kept. */
    private static final float UNIT = 1000;

    /** Fractions of a dot count, and nothing is drawn smoother or coarser for a screen. */
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private Outlines() {}

    /**
     * A line of text, its first letter at 0, 0 on the baseline, y downwards.
     *
     * @param size of the font; the shape has its unit
     */
    static Shape of(String text, Typeface typeface, double size) {
        Path2D shape = new Path2D.Double();
        double pen = 0;
        for (Typeface.Run run : typeface.runs(text).orElse(List.of())) {
            Font font = run.typeface().drawn().deriveFont(UNIT);
            AffineTransform place = AffineTransform.getTranslateInstance(pen, 0);
            place.scale(size / UNIT, size / UNIT);
            shape.append(
                    place.createTransformedShape(
                            font.createGlyphVector(EXACT, run.text()).getOutline()),
                    false);
            pen += run.width(size);
        }
        return shape;
    }
}
