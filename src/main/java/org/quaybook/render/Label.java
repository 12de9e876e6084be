package org.quaybook.render;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One label.
 *
 * @param id tells it apart from the others of a sheet
 * @param width millimetres
 * @param height millimetres
 * @param marks what is drawn on it, all within its edges
 * @param caption what stands under it on the sheet; null for nothing
 * @param cut whether it is to be cut out; one that is not stays part of the sheet
 */
public record Label(
        String id,
        double width,
        double height,
        List<Mark> marks,
        @Nullable Caption caption,
        boolean cut) {

    public Label {
        marks = List.copyOf(marks);
        check(id, marks, width, height);
        if (caption != null) {
            check(id, caption.marks(), width, caption.height());
        }
    }

    /** A label to be cut out, with nothing under it. */
    public Label(String id, double width, double height, List<Mark> marks) {
        this(id, width, height, marks, null, true);
    }

    /**
     * What is printed right under a label, beyond its edge, to be cut off with the rest of the sheet.
     *
     * @param height millimetres; it is as wide as the label
     * @param marks what is drawn, measured from its own top left corner
     */
    public record Caption(double height, List<Mark> marks) {
        public Caption {
            marks = List.copyOf(marks);
        }
    }

    /** The same label with something under it. */
    public Label withCaption(Caption below) {
        return new Label(id, width, height, marks, below, cut);
    }

    /** The same as a part of the sheet. */
    public Label uncut() {
        return new Label(id, width, height, marks, caption, false);
    }

    /**
     * Height with what stands under it.
     *
     * @param bleed between the two, millimetres
     */
    double heightOnSheet(double bleed) {
        return height + (caption == null ? 0 : bleed + caption.height());
    }

    private static void check(String id, List<Mark> marks, double width, double height) {
        for (Mark mark : marks) {
            if (!mark.box().isWithin(width, height)) {
                throw new IllegalArgumentException(
                        "label " + id + ", " + width + " x " + height + " mm: beyond its edge: " + mark.box());
            }
        }
    }
}
