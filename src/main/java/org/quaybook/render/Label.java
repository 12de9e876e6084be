package org.quaybook.render;

import java.util.List;

/**
 * One label.
 *
 * @param id tells it apart from the others of a sheet
 * @param width millimetres
 * @param height millimetres
 * @param marks what is drawn on it, all within its edges
 */
public record Label(String id, double width, double height, List<Mark> marks) {

    public Label {
        marks = List.copyOf(marks);
        for (Mark mark : marks) {
            if (!mark.box().isWithin(width, height)) {
                throw new IllegalArgumentException(
                        "label " + id + ", " + width + " x " + height + " mm: beyond its edge: " + mark.box());
            }
        }
    }
}
