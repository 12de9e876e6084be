package org.quaybook.calc;

import java.util.Optional;
import java.util.function.DoublePredicate;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.TimeSpan;

/**
 * A running time from full that somebody wishes for. Each question is answered by bisection over the one thing asked for,
 * because the time only ever rises or falls with it.
 *
 * @param demand what the load asks of the bank
 * @param limits what ends it
 * @param pauses how a pulsing load's pauses count
 * @param time the time wished for, above 0
 */
public record Wish(Demand demand, Limits limits, Pauses pauses, TimeSpan time) {

    /** A bank a thousand times as large or as small is none of these installations. */
    private static final double FARTHEST = 1000;

    private static final int HALVINGS = 50;

    public Wish {
        if (time.seconds() <= 0) {
            throw new IllegalArgumentException("nobody wishes for " + time);
        }
    }

    /** Whether a bank and its cables grant it. */
    public boolean isGrantedBy(SourceBank bank, Resistance supply) {
        return new Discharge(bank, supply)
                        .run(demand, Ratio.WHOLE, limits, pauses)
                        .time()
                        .compareTo(time)
                >= 0;
    }

    /**
     * The least capacity that grants it, the bank's resistance and everything else as it is: the safe side, for a larger
     * bank resists less.
     *
     * @return empty if no capacity up to a thousand times the bank's does; a thousandth of the bank's if even that does
     */
    public Optional<Charge> capacity(SourceBank bank, Resistance supply) {
        DoublePredicate grants =
                factor -> isGrantedBy(bank.with(bank.capacity().times(factor), bank.resistance()), supply);
        if (!grants.test(FARTHEST)) {
            return Optional.empty();
        }
        double too = 1 / FARTHEST;
        double enough = FARTHEST;
        if (grants.test(too)) {
            return Optional.of(bank.capacity().times(too));
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(too * enough);
            if (grants.test(middle)) {
                enough = middle;
            } else {
                too = middle;
            }
        }
        return Optional.of(bank.capacity().times(enough));
    }

    /**
     * The largest resistance of cables and joints that grants it, the bank as it is.
     *
     * @return empty if not even none at all does
     */
    public Optional<Resistance> supply(SourceBank bank) {
        if (!isGrantedBy(bank, new Resistance(0))) {
            return Optional.empty();
        }
        double grants = 0;
        double not = collapsing(bank);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (grants + not) / 2;
            if (isGrantedBy(bank, new Resistance(middle))) {
                grants = middle;
            } else {
                not = middle;
            }
        }
        return Optional.of(new Resistance(grants));
    }

    /** With this resistance the full bank gives half the power at most (maximum power theorem): too much for any wish. */
    private double collapsing(SourceBank bank) {
        double full = bank.rest().full().volts();
        Power half = demand.working().times(0.5);
        return full * full / (4 * half.watts());
    }
}
