package org.quaybook.quantity;

/**
 * Electric power in watts.
 *
 * @param watts the value
 */
public record Power(double watts) implements Quantity, Comparable<Power> {

    public static final Kind<Power> KIND = Kind.of("power", Power::new, Unit.of("W", 1), Unit.of("kW", 1e3));

    public Power {
        Quantity.finite(watts, KIND);
    }

    public Power plus(Power other) {
        return new Power(watts + other.watts);
    }

    public Power minus(Power other) {
        return new Power(watts - other.watts);
    }

    public Power times(double factor) {
        return new Power(watts * factor);
    }

    public Power dividedBy(double divisor) {
        return new Power(watts / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Power other) {
        return watts / other.watts;
    }

    /** The current that carries this power at a voltage. */
    public Current at(Voltage voltage) {
        return new Current(watts / voltage.volts());
    }

    @Override
    public double canonical() {
        return watts;
    }

    @Override
    public Kind<Power> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Power other) {
        return Double.compare(watts, other.watts);
    }
}
