package org.quaybook.calc;

import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/**
 * Whether a reading has moved since the first one: by a factor and by an amount, and by more than instruments blur.
 *
 * @param factor how many times the first reading counts as moved, at least 1
 * @param least the least difference that counts, above 0
 */
public record Drift(double factor, double least) {

    public Drift {
        if (factor < 1 || least <= 0) {
            throw new IllegalArgumentException("no rule by factor " + factor + " and difference " + least);
        }
    }

    /** What became of a reading. */
    public enum Judgement {
        STEADY,
        /** Worse than at first. */
        MOVED,
        /** Better than at first: mended, or read in another way. */
        BETTER,
        /** The readings are too blurred, or lack what is needed, to tell. */
        UNCLEAR
    }

    /**
     * Compares two readings of which the larger is the worse.
     *
     * @param blur how far apart two readings of the same thing may lie, not negative
     */
    public Judgement larger(double first, double now, double blur) {
        if (exceeds(now, first)) {
            return now - first > blur * (1 + NOISE) ? Judgement.MOVED : Judgement.UNCLEAR;
        }
        if (exceeds(first, now)) {
            return first - now > blur * (1 + NOISE) ? Judgement.BETTER : Judgement.UNCLEAR;
        }
        return blur > Math.max((factor - 1) * first, least) ? Judgement.UNCLEAR : Judgement.STEADY;
    }

    /** Compares two readings of which the smaller is the worse. */
    public Judgement smaller(double first, double now, double blur) {
        return switch (larger(first, now, blur)) {
            case MOVED -> Judgement.BETTER;
            case BETTER -> Judgement.MOVED;
            case STEADY -> Judgement.STEADY;
            case UNCLEAR -> Judgement.UNCLEAR;
        };
    }

    /** Less than binary fractions leave over between 0.3 and 1.5 times 0.2. */
    private static final double NOISE = 1e-9;

    private boolean exceeds(double one, double other) {
        return one >= factor * other * (1 - NOISE) && one - other >= least * (1 - NOISE);
    }

    /**
     * Ohm's law: the resistance that a drop at a current means. Leads held the wrong way round do not matter.
     *
     * @param current above 0
     */
    public static Resistance resistance(Voltage drop, Current current) {
        return new Resistance(Math.abs(drop.volts()) / current.amperes());
    }

    /**
     * Joule's law: the temperature that a joint would have at another load in other air; its rise over the air goes with
     * the square of the current. Holds once the temperature no longer changes.
     *
     * @param read temperature that was read
     * @param air beside it then
     * @param current through it then, above 0
     * @param otherAir the other air
     * @param otherCurrent the other load
     */
    public static Temperature at(
            Temperature read, Temperature air, Current current, Temperature otherAir, Current otherCurrent) {
        double load = otherCurrent.ratioTo(current);
        return otherAir.plusKelvin(read.kelvinAbove(air) * load * load);
    }
}
