package org.quaybook.quantity;

/**
 * Energy in watt-hours, the unit the trade counts a bank in (1 Wh = 3600 J).
 *
 * @param wattHours the value
 */
public record Energy(double wattHours) implements Quantity, Comparable<Energy> {

    public static final Kind<Energy> KIND = Kind.of("energy", Energy::new, Unit.of("Wh", 1), Unit.of("kWh", 1e3));

    public Energy {
        Quantity.finite(wattHours, KIND);
    }

    public Energy plus(Energy other) {
        return new Energy(wattHours + other.wattHours);
    }

    public Energy minus(Energy other) {
        return new Energy(wattHours - other.wattHours);
    }

    public Energy times(double factor) {
        return new Energy(wattHours * factor);
    }

    public Energy dividedBy(double divisor) {
        return new Energy(wattHours / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Energy other) {
        return wattHours / other.wattHours;
    }

    @Override
    public double canonical() {
        return wattHours;
    }

    @Override
    public Kind<Energy> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Energy other) {
        return Double.compare(wattHours, other.wattHours);
    }
}
