package org.quaybook.render;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * A page to lay a document out on. Templates are written for {@link #A5}; on other paper everything, letters and
 * drawings alike, is printed larger or smaller by one factor, so that lines keep about the same number of words.
 *
 * @param name for file names: {@code a5}, {@code half-letter}
 * @param width of the paper, millimetres
 * @param height of the paper, millimetres
 * @param scale of what is printed; 1 for A5
 * @param inner margin at the binding, millimetres
 * @param outer margin, millimetres
 * @param top margin with the running head, millimetres
 * @param bottom margin with the page number, millimetres
 */
public record PageFormat(
        String name, double width, double height, double scale, double inner, double outer, double top, double bottom) {

    /** How much wider and higher a page with narrow margins is, millimetres on A5. */
    private static final double WIDER = 8;

    /** ISO 216 rounds its sizes to whole millimetres. */
    private static final double SAME_SHAPE = 0.01;

    /** ISO 216. Margins and type of all formats are this project's own. */
    public static final PageFormat A5 = new PageFormat("a5", 148, 210, 1, 18, 12, 16, 15);

    /** 5.5 x 8.5 inch, half of ANSI/ASME Y14.1 size A. */
    public static final PageFormat HALF_LETTER = new PageFormat("half-letter", 139.7, 215.9, 0.95, 16.1, 11.5, 16, 15);

    /** ISO 216; the page of A5 enlarged, its type by two fifths, for old eyes and poor light. */
    public static final PageFormat A4 = A5.enlarged("a4", 210, 297);

    /** ANSI/ASME Y14.1 size A. */
    public static final PageFormat LETTER = new PageFormat("letter", 215.9, 279.4, 1.25, 37, 31.4, 20, 18);

    public PageFormat {
        if (!(scale > 0) || inner + outer >= width || top + bottom >= height) {
            throw new IllegalArgumentException("no room on a page of " + width + " x " + height + " mm");
        }
    }

    private PageFormat enlarged(String name, double width, double height) {
        double across = width / this.width;
        double up = height / this.height;
        return new PageFormat(name, width, height, scale * up, inner * across, outer * across, top * up, bottom * up);
    }

    /** Whether this is a larger page of the same shape, to within a hundredth: all of the other one's fits on it, enlarged. */
    public boolean enlarges(PageFormat other) {
        double across = width / other.width;
        double up = height / other.height;
        return across > 1 && Math.abs(across / up - 1) < SAME_SHAPE;
    }

    /**
     * For style sheets: {@code width}, {@code height}, {@code inner}, {@code outer}, {@code top}, {@code bottom}, and
     * {@code body}, the width between the margins; {@code wideSide}, {@code wideTop} and {@code wideBody}, the same for a
     * page with narrow margins and no running head; {@code coverHeight}, what fits on a page without margins. All as CSS
     * lengths before scaling.
     */
    public Map<String, String> lengths() {
        Map<String, String> lengths = new LinkedHashMap<>();
        lengths.put("width", length(width));
        lengths.put("height", length(height));
        lengths.put("inner", length(inner));
        lengths.put("outer", length(outer));
        lengths.put("top", length(top));
        lengths.put("bottom", length(bottom));
        lengths.put("body", length(width - inner - outer));
        double side = (inner + outer) / 2 - WIDER / 2 * scale;
        lengths.put("wideSide", length(side));
        lengths.put("wideTop", length(top - WIDER * scale));
        lengths.put("wideBody", length(width - 2 * side));
        lengths.put("coverHeight", length(height - scale));
        return lengths;
    }

    private String length(double millimetres) {
        return String.format(Locale.ROOT, "%.3fmm", millimetres / scale);
    }
}
