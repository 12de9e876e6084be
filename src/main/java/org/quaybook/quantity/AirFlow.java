package org.quaybook.quantity;

/**
 * Volume flow of air in cubic metres per hour.
 *
 * @param cubicMetresPerHour the value, never negative
 */
public record AirFlow(double cubicMetresPerHour) implements Quantity, Comparable<AirFlow> {

    public static final Kind<AirFlow> KIND = Kind.of("air flow", AirFlow::new, Unit.of("m³/h", 1, "m3/h"));

    public AirFlow {
        Quantity.finiteNotNegative(cubicMetresPerHour, KIND);
    }

    @Override
    public double canonical() {
        return cubicMetresPerHour;
    }

    @Override
    public Kind<AirFlow> kind() {
        return KIND;
    }

    @Override
    public int compareTo(AirFlow other) {
        return Double.compare(cubicMetresPerHour, other.cubicMetresPerHour);
    }
}
