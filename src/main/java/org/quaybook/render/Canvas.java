package org.quaybook.render;

import java.util.function.Consumer;

/** Something to draw labels on, in millimetres from its top left corner, y downwards. */
interface Canvas {

    /** The same, measured from a point on it. */
    Canvas at(double x, double y);

    /**
     * Draws something turned by a quarter to the left, so that it reads from the bottom upwards.
     *
     * @param x left edge of the turned thing
     * @param y its top edge
     * @param width of the thing before it is turned
     */
    void turned(double x, double y, double width, Consumer<Canvas> drawing);

    void fill(Box box, double cornerRadius, Colour colour);

    void stroke(Box box, double cornerRadius, Colour colour, double width);

    void line(double x1, double y1, double x2, double y2, Colour colour, double width);

    /** A code with its quiet zone, dark on white. */
    void code(QrCode code, double x, double y, double module);

    /**
     * A line of text.
     *
     * @param line what and where
     * @param turn how its letters are turned around the point where it begins
     */
    void text(Fitting.Line line, Turn turn, Typeface typeface, double size, Colour colour);

    void drawing(SvgDrawing drawing, Box box);

    /** Draws something that is told to those who listen to a PDF; whatever is drawn otherwise is decoration to them. */
    default void told(TagSlot slot, Consumer<Canvas> drawing) {
        drawing.accept(this);
    }
}
