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

    /** Less than binary fractions leave over between 0.3 and 1.5 times 0.2. */
    public static final double NOISE = 1e-9;

    /**
     * What the rule means for one first reading, as numbers that later ones are held against.
     *
     * @param first the first reading
     * @param up from here on a reading is larger
     * @param down up to here it is smaller
     * @param tolerance the least difference that counts; a blur above it hides everything
     */
    public record Limits(double first, double up, double down, double tolerance) {

        /**
         * Judges a later reading where the larger is the worse.
         *
         * @param blur how far apart two readings of the same thing may lie, not negative
         */
        public Judgement larger(double now, double blur) {
            if (now >= up - NOISE * Math.abs(up)) {
                return now - first > blur * (1 + NOISE) ? Judgement.MOVED : Judgement.UNCLEAR;
            }
            if (now <= down + NOISE * Math.abs(down)) {
                return first - now > blur * (1 + NOISE) ? Judgement.BETTER : Judgement.UNCLEAR;
            }
            return blur > tolerance ? Judgement.UNCLEAR : Judgement.STEADY;
        }

        /** Judges a later reading where the smaller is the worse. */
        public Judgement smaller(double now, double blur) {
            return switch (larger(now, blur)) {
                case MOVED -> Judgement.BETTER;
                case BETTER -> Judgement.MOVED;
                case STEADY -> Judgement.STEADY;
                case UNCLEAR -> Judgement.UNCLEAR;
            };
        }
    }

    /** The rule for a first reading. */
    public Limits limits(double first) {
        return new Limits(
                first,
                Math.max(factor * first, first + least),
                Math.min(first / factor, first - least),
                Math.max((factor - 1) * first, least));
    }

    /**
     * Compares two readings of which the larger is the worse.
     *
     * @param blur how far apart two readings of the same thing may lie, not negative
     */
    public Judgement larger(double first, double now, double blur) {
        return limits(first).larger(now, blur);
    }

    /** Compares two readings of which the smaller is the worse. */
    public Judgement smaller(double first, double now, double blur) {
        return limits(first).smaller(now, blur);
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
