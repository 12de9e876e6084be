package org.quaybook.quantity;

/**
 * Volume flow of air in cubic metres per hour; in the U.S. in cubic feet per minute, of which a foot is 0.3048 m (NIST SP
 * 811 Appendix B, from memory).
 *
 * @param cubicMetresPerHour the value, never negative
 */
public record AirFlow(double cubicMetresPerHour) implements Quantity, Comparable<AirFlow> {

    public static final Kind<AirFlow> KIND = Kind.of(
            "air flow", AirFlow::new, Unit.of("m³/h", 1, "m3/h"), Unit.of("cfm", 1.69901079552, "ft³/min", "ft3/min"));

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
