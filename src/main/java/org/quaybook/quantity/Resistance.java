package org.quaybook.quantity;

/**
 * Electric resistance in ohms.
 *
 * @param ohms the value, never negative
 */
public record Resistance(double ohms) implements Quantity, Comparable<Resistance> {

    public static final Kind<Resistance> KIND = Kind.of(
            "resistance",
            Resistance::new,
            Unit.of("Ω", 1, "ohm", "Ohm", "\u2126"),
            Unit.of("mΩ", 1e-3, "mohm", "mOhm", "m\u2126", "milliohm"),
            Unit.of("kΩ", 1e3, "kohm", "kOhm", "k\u2126"),
            Unit.of("MΩ", 1e6, "Mohm", "MOhm", "M\u2126", "megohm"));

    public Resistance {
        Quantity.finiteNotNegative(ohms, KIND);
    }

    public Resistance plus(Resistance other) {
        return new Resistance(ohms + other.ohms);
    }

    public Resistance minus(Resistance other) {
        return new Resistance(ohms - other.ohms);
    }

    public Resistance times(double factor) {
        return new Resistance(ohms * factor);
    }

    public Resistance dividedBy(double divisor) {
        return new Resistance(ohms / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(Resistance other) {
        return ohms / other.ohms;
    }

    @Override
    public double canonical() {
        return ohms;
    }

    @Override
    public Kind<Resistance> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Resistance other) {
        return Double.compare(ohms, other.ohms);
    }
}
