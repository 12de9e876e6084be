package org.quaybook.quantity;

/**
 * Tightening torque in newton metres.
 *
 * @param newtonMetres the value, never negative
 */
public record Torque(double newtonMetres) implements Quantity, Comparable<Torque> {

    /** Of a pound-force at an inch, in N·m. NIST SP 811 Appendix B, from memory. */
    private static final double POUND_INCH = 0.1129848;

    public static final Kind<Torque> KIND = Kind.of(
            "torque",
            Torque::new,
            Unit.of("Nm", 1, "N·m", "N m"),
            Unit.of("lbf·in", POUND_INCH, "lbf in", "in·lbf", "in lbf", "in-lb", "in lb"),
            Unit.of("lbf·ft", 12 * POUND_INCH, "lbf ft", "ft·lbf", "ft lbf", "ft-lb", "ft lb"));

    public Torque {
        Quantity.finiteNotNegative(newtonMetres, KIND);
    }

    @Override
    public double canonical() {
        return newtonMetres;
    }

    @Override
    public Kind<Torque> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Torque other) {
        return Double.compare(newtonMetres, other.newtonMetres);
    }
}
