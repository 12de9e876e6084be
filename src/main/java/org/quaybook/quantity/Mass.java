package org.quaybook.quantity;

/**
 * Mass in kilograms; a pound is 0.453 592 37 kg (NIST SP 811 Appendix B, from memory).
 *
 * @param kilograms the value, never negative
 */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {

    public static final Kind<Mass> KIND = Kind.of("mass", Mass::new, Unit.of("kg", 1), Unit.of("lb", 0.45359237));

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
