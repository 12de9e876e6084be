package org.quaybook.render;

import org.jspecify.annotations.Nullable;

/**
 * A rectangle, filled or outlined or both.
 *
 * @param box its outer edge: the outline is drawn inside
 * @param fill null for none
 * @param stroke colour of the outline; null for none
 * @param strokeWidth millimetres
 * @param cornerRadius millimetres, of the outer edge; 0 for square corners
 */
public record Panel(
        Box box, @Nullable Colour fill, @Nullable Colour stroke, double strokeWidth, double cornerRadius)
        implements Mark {

    public Panel {
        double half = Math.min(box.width(), box.height()) / 2;
        if (!(strokeWidth >= 0 && strokeWidth <= half && cornerRadius >= 0 && cornerRadius <= half)) {
            throw new IllegalArgumentException(
                    "outline " + strokeWidth + " mm, corner " + cornerRadius + " mm of " + box);
        }
    }

    public static Panel filled(Box box, Colour fill) {
        return new Panel(box, fill, null, 0, 0);
    }

    public static Panel outlined(Box box, Colour stroke, double strokeWidth) {
        return new Panel(box, null, stroke, strokeWidth, 0);
    }
}
