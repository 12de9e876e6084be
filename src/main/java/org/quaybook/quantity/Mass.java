package org.quaybook.quantity;

/**
 * Mass in kilograms.
 *
 * @param kilograms the value, never negative
 */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {

    public static final Kind<Mass> KIND = Kind.of("mass", Mass::new, Unit.of("kg", 1));

    public Mass {
        Quantity.finiteNotNegative(kilograms, KIND);
    }

    @Override
    public double canonical() {
        return kilograms;
    }

    @Override
    public Kind<Mass> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
