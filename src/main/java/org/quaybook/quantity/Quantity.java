package org.quaybook.quantity;

/**
 * A physical value in one canonical unit. Every implementation refuses NaN and infinities, so a figure can never be
 * blank or endless.
 */
public sealed interface Quantity
        permits AirFlow,
                Area,
                Charge,
                Count,
                Current,
                CurrentPerCharge,
                Energy,
                Frequency,
                Length,
                Mass,
                Power,
                Ratio,
                Resistance,
                Temperature,
                TimeSpan,
                Torque,
                Voltage {

    /** The value in the canonical unit of its kind. */
    double canonical();

    /** What dimension this is, with the units it may be written in. */
    Kind<?> kind();

    /**
     * Guards a record's constructor.
     *
     * @throws IllegalArgumentException for NaN or an infinite value
     */
    static double finite(double value, Kind<?> kind) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(kind.name() + " must be a finite number, not " + value);
        }
        return value;
    }

    /**
     * Guards a record's constructor whose values cannot be below zero.
     *
     * @throws IllegalArgumentException for NaN, an infinite or a negative value
     */
    static double finiteNotNegative(double value, Kind<?> kind) {
        if (finite(value, kind) < 0) {
            throw new IllegalArgumentException(kind.name() + " cannot be negative, but is " + value);
        }
        return value;
    }
}
