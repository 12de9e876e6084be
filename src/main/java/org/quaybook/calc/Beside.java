package org.quaybook.calc;

import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;

/**
 * A current that the bank gives besides the inverter's, the same at any voltage.
 *
 * @param current drawn of the bank, not negative
 * @param shared resistance of what it passes of the inverter's cables, joints included; of several currents together their
 *     mean, each counted by its current
 */
public record Beside(Current current, Resistance shared) {

    /** Nothing. */
    public static final Beside NOTHING = new Beside(new Current(0), new Resistance(0));

    public Beside {
        if (current.amperes() < 0) {
            throw new IllegalArgumentException("nothing draws " + current);
        }
    }

    /** One that passes none of the inverter's cables. */
    public static Beside atBank(Current current) {
        return new Beside(current, NOTHING.shared);
    }

    /** This one and another. */
    public Beside plus(Beside other) {
        Current sum = current.plus(other.current);
        return sum.amperes() == 0
                ? NOTHING
                : new Beside(sum, new Resistance(lost().plus(other.lost()).volts() / sum.amperes()));
    }

    /** What the inverter's terminals lose by it in the cables that it shares, beside what they lose in the bank: Ohm's law. */
    public Voltage lost() {
        return current.through(shared);
    }

    /** What they lose by it in bank and cables together, behind an inner resistance of the bank. */
    Voltage lostWith(Resistance inner) {
        return current.through(inner.plus(shared));
    }
}
