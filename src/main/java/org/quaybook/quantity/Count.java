package org.quaybook.quantity;

/**
 * A bare number: uses, strings, times.
 *
 * @param number the value, never negative
 */
public record Count(double number) implements Quantity, Comparable<Count> {

    public static final Kind<Count> KIND = Kind.of("number", Count::new, Unit.of("", 1));

    public Count {
        Quantity.finiteNotNegative(number, KIND);
    }

    @Override
    public double canonical() {
        return number;
    }

    @Override
    public Kind<Count> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Count other) {
        return Double.compare(number, other.number);
    }
}
