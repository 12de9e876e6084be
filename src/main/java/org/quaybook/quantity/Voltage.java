package org.quaybook.quantity;

/**
 * Electric potential difference in volts.
 *
 * @param volts the value
 */
public record Voltage(double volts) implements Quantity, Comparable<Voltage> {

    public static final Kind<Voltage> KIND = Kind.of("voltage", Voltage::new, Unit.of("V", 1), Unit.of("mV", 1e-3));

    public Voltage {
        Quantity.finite(volts, KIND);
    }

    public Voltage plus(Voltage other) {
        return new Voltage(volts + other.volts);
    }

    public Voltage minus(Voltage other) {
        return new Voltage(volts - other.volts);
    }

    public Voltage times(double factor) {
        return new Voltage(volts * factor);
    }

    public Voltage dividedBy(double divisor) {
        return new Voltage(volts / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Voltage other) {
        return volts / other.volts;
    }

    /** Ohm's law: the current that this drives through a resistance. */
    public Current over(Resistance resistance) {
        return new Current(volts / resistance.ohms());
    }

    @Override
    public double canonical() {
        return volts;
    }

    @Override
    public Kind<Voltage> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Voltage other) {
        return Double.compare(volts, other.volts);
    }
}
