package org.quaybook.quantity;

/**
 * Electric current in amperes; negative means against the named direction.
 *
 * @param amperes the value
 */
public record Current(double amperes) implements Quantity, Comparable<Current> {

    public static final Kind<Current> KIND =
            Kind.of("current", Current::new, Unit.of("A", 1), Unit.of("mA", 1e-3), Unit.of("kA", 1e3));

    public Current {
        Quantity.finite(amperes, KIND);
    }

    public Current plus(Current other) {
        return new Current(amperes + other.amperes);
    }

    public Current minus(Current other) {
        return new Current(amperes - other.amperes);
    }

    public Current times(double factor) {
        return new Current(amperes * factor);
    }

    public Current dividedBy(double divisor) {
        return new Current(amperes / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Current other) {
        return amperes / other.amperes;
    }

    /** Ohm's law: the voltage that this drops over a resistance. */
    public Voltage through(Resistance resistance) {
        return new Voltage(amperes * resistance.ohms());
    }

    @Override
    public double canonical() {
        return amperes;
    }

    @Override
    public Kind<Current> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Current other) {
        return Double.compare(amperes, other.amperes);
    }
}
