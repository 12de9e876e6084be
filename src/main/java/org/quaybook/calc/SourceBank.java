package org.quaybook.calc;

import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;

/**
 * A bank as the load sees it.
 *
 * @param rest rest voltage of a string
 * @param capacity capacity of all strings together at the rated rate, as it is now
 * @param ratedHours the rate that the capacity is stated for: 20 h for lead-acid
 * @param peukert Peukert exponent; 1 where the chemistry has no such loss
 * @param resistance inner resistance of the bank between its take-off points, links included
 * @param riseWhenLow factor on the resistance below {@code lowBelow}; at least 1
 * @param lowBelow state of charge below which the resistance is raised
 */
public record SourceBank(
        RestVoltage rest,
        Charge capacity,
        double ratedHours,
        double peukert,
        Resistance resistance,
        double riseWhenLow,
        Ratio lowBelow) {

    public SourceBank {
        if (capacity.ampereHours() <= 0 || ratedHours <= 0) {
            throw new IllegalArgumentException("no bank of " + capacity + " at the " + ratedHours + " h rate");
        }
        if (peukert < 1 || riseWhenLow < 1) {
            throw new IllegalArgumentException(
                    "Peukert exponent " + peukert + " and rise " + riseWhenLow + " cannot be below 1");
        }
    }

    /** The same kind of bank with another capacity and inner resistance. */
    public SourceBank with(Charge otherCapacity, Resistance otherResistance) {
        return new SourceBank(rest, otherCapacity, ratedHours, peukert, otherResistance, riseWhenLow, lowBelow);
    }

    /** Inner resistance at a state of charge. */
    public Resistance resistanceAt(Ratio stateOfCharge) {
        return stateOfCharge.fraction() < lowBelow.fraction() ? resistance.times(riseWhenLow) : resistance;
    }

    /** The current that the capacity is rated at: C / H. */
    public Current ratedCurrent() {
        return new Current(capacity.ampereHours() / ratedHours);
    }

    /**
     * The current that empties the rated capacity as fast as this current empties the bank, I (I H / C)^(k-1).
     * Peukert's law in its form for an H-hour rating, t = H (C / (I H))^k; below the rated current nothing is gained.
     *
     * @param current discharge current, not negative
     */
    public Current equivalent(Current current) {
        double ratio = current.ratioTo(ratedCurrent());
        return ratio <= 1 || peukert == 1 ? current : current.times(StrictMath.pow(ratio, peukert - 1));
    }
}
