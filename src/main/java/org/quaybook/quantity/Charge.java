package org.quaybook.quantity;

/**
 * Electric charge in ampere-hours (1 Ah = 3600 C).
 *
 * @param ampereHours the value
 */
public record Charge(double ampereHours) implements Quantity, Comparable<Charge> {

    public static final Kind<Charge> KIND = Kind.of("charge", Charge::new, Unit.of("Ah", 1), Unit.of("mAh", 1e-3));

    public Charge {
        Quantity.finite(ampereHours, KIND);
    }

    public Charge plus(Charge other) {
        return new Charge(ampereHours + other.ampereHours);
    }

    public Charge minus(Charge other) {
        return new Charge(ampereHours - other.ampereHours);
    }

    public Charge times(double factor) {
        return new Charge(ampereHours * factor);
    }

    public Charge dividedBy(double divisor) {
        return new Charge(ampereHours / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Charge other) {
        return ampereHours / other.ampereHours;
    }

    @Override
    public double canonical() {
        return ampereHours;
    }

    @Override
    public Kind<Charge> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Charge other) {
        return Double.compare(ampereHours, other.ampereHours);
    }
}
