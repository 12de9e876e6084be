package org.quaybook.quantity;

/**
 * Area in square millimetres, the unit of conductor sizes; a square inch is 645.16 mm², from an inch of 25.4 mm.
 *
 * @param squareMillimetres the value, never negative
 */
public record Area(double squareMillimetres) implements Quantity, Comparable<Area> {

    public static final Kind<Area> KIND = Kind.of(
            "area",
            Area::new,
            Unit.of("mm²", 1, "mm2", "sqmm"),
            Unit.of("cm²", 100, "cm2"),
            Unit.of("sq in", 645.16, "in²", "in2"));

    public Area {
        Quantity.finiteNotNegative(squareMillimetres, KIND);
    }

    public Area times(double factor) {
        return new Area(squareMillimetres * factor);
    }

    public Area dividedBy(double divisor) {
        return new Area(squareMillimetres / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Area other) {
        return squareMillimetres / other.squareMillimetres;
    }

    @Override
    public double canonical() {
        return squareMillimetres;
    }

    @Override
    public Kind<Area> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMillimetres, other.squareMillimetres);
    }
}
