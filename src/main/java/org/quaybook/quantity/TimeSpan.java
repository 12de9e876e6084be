package org.quaybook.quantity;

/**
 * A span of time in seconds.
 *
 * @param seconds the value, never negative
 */
public record TimeSpan(double seconds) implements Quantity, Comparable<TimeSpan> {

    public static final Kind<TimeSpan> KIND = Kind.of(
            "time",
            TimeSpan::new,
            Unit.of("s", 1),
            Unit.of("ms", 1e-3),
            Unit.of("min", 60),
            Unit.of("h", 3600),
            Unit.of("d", 86400, "days", "day"));

    public TimeSpan {
        Quantity.finiteNotNegative(seconds, KIND);
    }

    public TimeSpan plus(TimeSpan other) {
        return new TimeSpan(seconds + other.seconds);
    }

    public TimeSpan minus(TimeSpan other) {
        return new TimeSpan(seconds - other.seconds);
    }

    public TimeSpan times(double factor) {
        return new TimeSpan(seconds * factor);
    }

    public TimeSpan dividedBy(double divisor) {
        return new TimeSpan(seconds / divisor);
    }

    /** How many times the other goes into this. */
    public double ratioTo(TimeSpan other) {
        return seconds / other.seconds;
    }

    public static TimeSpan ofHours(double hours) {
        return new TimeSpan(hours * 3600);
    }

    public double hours() {
        return seconds / 3600;
    }

    @Override
    public double canonical() {
        return seconds;
    }

    @Override
    public Kind<TimeSpan> kind() {
        return KIND;
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(seconds, other.seconds);
    }
}
