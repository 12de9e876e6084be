package org.quaybook.calc;

import java.util.Optional;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/**
 * Charging with a steady source: full current until the bank no longer takes it, then a tail.
 *
 * @param bulk time at full current
 * @param absorption time of the tail
 */
public record Recharge(TimeSpan bulk, TimeSpan absorption) {

    /**
     * The time from a state of charge to full, t = integral of C / (eta I) ds with the current I that {@link ChargeIntake}
     * lets in. On the line of the tail that is C / (eta k) ln(I_a / I_b), k being its slope; at the rate of the table's
     * knee, tau ln(I / I_end) with tau = (1 - knee) C / (eta (I - I_end)).
     *
     * @param from state of charge at the beginning, 0 to 1
     * @param current what is left for the bank, loads already taken off; negative where the loads take more
     * @return empty if nothing goes in
     */
    public static Optional<Recharge> of(ChargeIntake intake, Ratio from, Current current) {
        double amperes = Math.min(current.amperes(), intake.most().amperes());
        if (amperes <= 0) {
            return Optional.empty();
        }
        double knee = intake.acceptance().knee().fraction();
        double tail = intake.tailsFrom(amperes);
        double start = Math.min(1, from.fraction());
        double bulk = steady(intake, amperes, start, Math.min(tail, knee))
                + steady(intake, amperes, Math.max(start, knee), tail);
        double absorption = falling(intake, Math.max(start, tail), knee)
                + falling(intake, Math.max(Math.max(start, tail), knee), 1);
        return Optional.of(new Recharge(TimeSpan.ofHours(bulk), TimeSpan.ofHours(absorption)));
    }

    /** Hours at a current between two states of charge on one side of the knee; 0 if the second is not above the first. */
    private static double steady(ChargeIntake intake, double amperes, double from, double to) {
        return to <= from ? 0 : (to - from) * intake.capacity().ampereHours() / (amperes * intake.efficiencyAt(from));
    }

    private static double falling(ChargeIntake intake, double from, double to) {
        if (to <= from) {
            return 0;
        }
        double slope = intake.slopeAmperes();
        double end = intake.endAmperes();
        return intake.capacity().ampereHours()
                / (intake.efficiencyAt(from) * slope)
                * StrictMath.log((end + slope * (1 - from)) / (end + slope * (1 - to)));
    }

    /** Both stages together. */
    public TimeSpan whole() {
        return bulk.plus(absorption);
    }
}
