package org.quaybook.calc;

import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.reference.Acceptance;

/**
 * Charging in two stages: full current up to the knee of the chemistry, then a current that tails off exponentially to
 * its end value. Own model; the knee, the efficiencies and the end current come from the table of acceptance.
 *
 * @param bulk time at full current
 * @param absorption time of the tail
 */
public record Recharge(TimeSpan bulk, TimeSpan absorption) {

    /**
     * The time from a state of charge to full.
     *
     * <p>Bulk: (knee - s) C / (I eta). Tail: with tau = (1 - knee) C / (eta (I - I_end)) the charge put in while the
     * current falls from I to I_end is just what is missing, and it takes tau ln(I / I_end). A charger that gives no more
     * than the end current never tails off.
     *
     * @param capacity capacity of the bank
     * @param from state of charge at the beginning, 0 to 1
     * @param current what the charger gives the bank, loads already taken off, above 0
     */
    public static Recharge of(Charge capacity, Ratio from, Current current, Acceptance acceptance) {
        if (current.amperes() <= 0) {
            throw new IllegalArgumentException("nothing charges with " + current);
        }
        double whole = capacity.ampereHours();
        double knee = acceptance.knee().fraction();
        double bulk = Math.max(0, knee - from.fraction())
                * whole
                / (current.amperes() * acceptance.bulkEfficiency().fraction());
        double above = 1 - Math.max(knee, from.fraction());
        double end = acceptance.tailRate() * whole;
        double eta = acceptance.absorptionEfficiency().fraction();
        double tail = current.amperes() <= end
                ? above * whole / (current.amperes() * eta)
                : above * whole / (eta * (current.amperes() - end)) * Math.log(current.amperes() / end);
        return new Recharge(TimeSpan.ofHours(bulk), TimeSpan.ofHours(tail));
    }

    /** Both stages together. */
    public TimeSpan whole() {
        return bulk.plus(absorption);
    }
}
