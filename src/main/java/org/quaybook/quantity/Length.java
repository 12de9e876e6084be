package org.quaybook.quantity;

/**
 * Length in metres.
 *
 * @param metres the value, never negative
 */
public record Length(double metres) implements Quantity, Comparable<Length> {

    public static final Kind<Length> KIND = Kind.of(
            "length",
            Length::new,
            Unit.of("m", 1),
            Unit.of("mm", 1e-3),
            Unit.of("cm", 1e-2),
            Unit.of("ft", 0.3048),
            Unit.of("in", 0.0254, "inch"));

    public Length {
        Quantity.finiteNotNegative(metres, KIND);
    }

    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    public Length minus(Length other) {
        return new Length(metres - other.metres);
    }

    public Length times(double factor) {
        return new Length(metres * factor);
    }

    public Length dividedBy(double divisor) {
        return new Length(metres / divisor);
    }

    @Override
    public double canonical() {
        return metres;
    }

    @Override
    public Kind<Length> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
