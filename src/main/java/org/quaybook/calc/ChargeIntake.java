package org.quaybook.calc;

import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.reference.Acceptance;

/**
 * The charge that a bank takes.
 *
 * <p>Below its knee it takes whatever is offered, up to the allowed current; above, the current it takes falls on a
 * straight line over the state of charge to the end current when full, which in time is an exponential tail. The knee of
 * the table holds at the rate that the table names with it; a smaller current meets the line later, a larger one sooner.
 * Own model; knee, efficiencies and end current come from the table of acceptance.
 *
 * @param capacity capacity of the bank as it is, above 0
 * @param acceptance how the chemistry takes charge
 * @param most largest current that may go in, not negative; 0 when the bank is too cold
 */
public record ChargeIntake(Charge capacity, Acceptance acceptance, Current most) {

    public ChargeIntake {
        if (capacity.ampereHours() <= 0 || most.amperes() < 0) {
            throw new IllegalArgumentException("no bank of " + capacity + " takes " + most);
        }
    }

    /** The current at which charging ends. */
    double endAmperes() {
        return acceptance.tailRate() * capacity.ampereHours();
    }

    /** How much the accepted current falls for the whole of the state of charge, in amperes. */
    double slopeAmperes() {
        double atKnee = acceptance.kneeRate() * capacity.ampereHours();
        return (atKnee - endAmperes()) / (1 - acceptance.knee().fraction());
    }

    /** State of charge from which a current can no longer flow whole, 0 to 1. */
    double tailsFrom(double amperes) {
        return Math.min(1, Math.max(0, 1 - (amperes - endAmperes()) / slopeAmperes()));
    }

    /** The most that goes in at a state of charge from 0 to 1; nothing goes into a full bank. */
    double amperesAt(double soc) {
        return soc >= 1 ? 0 : Math.min(most.amperes(), endAmperes() + slopeAmperes() * (1 - soc));
    }

    /** Charge stored for charge put in, at a state of charge from 0 to 1. */
    double efficiencyAt(double soc) {
        return soc < acceptance.knee().fraction()
                ? acceptance.bulkEfficiency().fraction()
                : acceptance.absorptionEfficiency().fraction();
    }
}
