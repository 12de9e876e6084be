package org.quaybook.quantity;

/**
 * Tightening torque in newton metres.
 *
 * @param newtonMetres the value, never negative
 */
public record Torque(double newtonMetres) implements Quantity, Comparable<Torque> {

    public static final Kind<Torque> KIND = Kind.of("torque", Torque::new, Unit.of("Nm", 1, "N·m", "N m"));

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
