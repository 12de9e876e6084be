package org.quaybook.calc;

import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Voltage;

/**
 * Who disconnects a short on the inverter's output: an inverter gives only a little more than its rated current, a breaker's
 * magnetic trip wants several times its rating.
 *
 * @param inverterGives the most that the inverter gives into a short
 * @param breakerWants the current that surely trips the breaker at once
 */
public record FaultDisconnection(Current inverterGives, Current breakerWants) {

    /** Usual fault current of an inverter in multiples of its rated current (from memory). */
    private static final double FAULT_MULTIPLE = 2;

    /**
     * Compares both.
     *
     * @param continuous the inverter's continuous output
     * @param output its output voltage
     * @param rating of the breaker
     * @param surelyTrips upper end of its magnetic band in multiples of its rating: 5, 10 or 20 for curves B, C, D (IEC
     *     60898-1)
     */
    public static FaultDisconnection of(Power continuous, Voltage output, Current rating, double surelyTrips) {
        return new FaultDisconnection(inverterGives(continuous, output), rating.times(surelyTrips));
    }

    /** The most that an inverter gives into a short: twice its rated current (from memory). */
    public static Current inverterGives(Power continuous, Voltage output) {
        return continuous.at(output).times(FAULT_MULTIPLE);
    }

    /** Whether the breaker trips at once on the inverter. */
    public boolean breakerTrips() {
        return inverterGives.compareTo(breakerWants) >= 0;
    }
}
