package org.quaybook.reference;

import org.quaybook.quantity.Area;

/** The American unit of conductor area: that of a circle of one thousandth of an inch in diameter. */
public final class CircularMils {

    private static final double SQUARE_MILLIMETRES = Math.PI / 4 * 0.0254 * 0.0254;

    private CircularMils() {}

    /** The area of so many circular mils. */
    public static Area toArea(double circularMils) {
        return new Area(circularMils * SQUARE_MILLIMETRES);
    }

    /** How many circular mils an area has. */
    public static double of(Area area) {
        return area.squareMillimetres() / SQUARE_MILLIMETRES;
    }
}
