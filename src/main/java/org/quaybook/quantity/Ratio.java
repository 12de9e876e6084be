package org.quaybook.quantity;

/**
 * A share of a whole: 1 is 100 %.
 *
 * @param fraction the value
 */
public record Ratio(double fraction) implements Quantity, Comparable<Ratio> {

    public static final Kind<Ratio> KIND = Kind.of("share", Ratio::new, Unit.of("%", 0.01, "percent"));

    public Ratio {
        Quantity.finite(fraction, KIND);
    }

    public static final Ratio NONE = new Ratio(0);
    public static final Ratio WHOLE = new Ratio(1);

    public Ratio plus(Ratio other) {
        return new Ratio(fraction + other.fraction);
    }

    public Ratio minus(Ratio other) {
        return new Ratio(fraction - other.fraction);
    }

    public Ratio times(double factor) {
        return new Ratio(fraction * factor);
    }

    public Ratio dividedBy(double divisor) {
        return new Ratio(fraction / divisor);
    }

    @Override
    public double canonical() {
        return fraction;
    }

    @Override
    public Kind<Ratio> kind() {
        return KIND;
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(fraction, other.fraction);
    }
}
