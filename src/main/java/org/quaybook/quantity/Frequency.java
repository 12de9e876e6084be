package org.quaybook.quantity;

/**
 * Frequency in hertz.
 *
 * @param hertz the value, never negative
 */
public record Frequency(double hertz) implements Quantity, Comparable<Frequency> {

    public static final Kind<Frequency> KIND = Kind.of("frequency", Frequency::new, Unit.of("Hz", 1));

    public Frequency {
        Quantity.finiteNotNegative(hertz, KIND);
    }

    @Override
    public double canonical() {
        return hertz;
    }

    @Override
    public Kind<Frequency> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Frequency other) {
        return Double.compare(hertz, other.hertz);
    }
}
