package org.quaybook.calc;

import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;

/**
 * What a load asks of the bank, measured at the inverter's DC terminals.
 *
 * @param working power while it draws
 * @param pausing power between, the inverter's idle draw
 * @param duty share of the time that it draws, above 0 and at most 1
 */
public record Demand(Power working, Power pausing, Ratio duty) {

    public Demand {
        if (working.watts() <= 0 || pausing.watts() < 0) {
            throw new IllegalArgumentException("a load draws power, not " + working + " and " + pausing);
        }
        if (duty.fraction() <= 0 || duty.fraction() > 1) {
            throw new IllegalArgumentException("a duty is above 0 and at most 100 %, not " + duty);
        }
    }

    /** With something beside it that always draws. */
    public Demand plus(Power always) {
        return new Demand(working.plus(always), pausing.plus(always), duty);
    }

    /** A load that draws all the time. */
    public static Demand steady(Power power) {
        return new Demand(power, power, Ratio.WHOLE);
    }
}
