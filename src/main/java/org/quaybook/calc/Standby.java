package org.quaybook.calc;

import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/** A bank that nothing is taken from but standby loads and its own self-discharge. */
public final class Standby {

    private static final double HOURS_PER_MONTH = 30 * 24.0;

    private Standby() {}

    /**
     * Time until a share of the capacity is gone: share C / (I + C d / 720 h), d being the self-discharge of a month of 30
     * days.
     *
     * @param share share of the capacity that may go, 0 to 1
     * @param standby current of standby loads, not negative
     * @param perMonth self-discharge, share of the capacity in a month
     * @throws IllegalArgumentException if nothing at all drains the bank
     */
    public static TimeSpan until(Charge capacity, Ratio share, Current standby, Ratio perMonth) {
        double amperes = standby.amperes() + capacity.ampereHours() * perMonth.fraction() / HOURS_PER_MONTH;
        if (amperes <= 0) {
            throw new IllegalArgumentException("nothing drains the bank");
        }
        return TimeSpan.ofHours(share.fraction() * capacity.ampereHours() / amperes);
    }
}
