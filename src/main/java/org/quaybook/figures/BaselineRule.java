package org.quaybook.figures;

import java.util.Optional;
import org.quaybook.calc.Drift;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;

/**
 * How a later reading of one number is held against the first: the form that both are compared in, and the limits in that
 * form, in canonical units. Whoever compares, the program or the record page, takes them from here.
 *
 * @param form what is made of a reading before it is compared
 * @param drift from which difference on a reading has moved
 * @param limits the same for the first reading: what a later one is held against
 * @param smallerIsWorse whether a fall is the worse
 * @param ceiling readings above it count as it; infinite for none
 * @param blur how far apart two readings may lie, whatever the load
 * @param blurOfLoad the same times what {@link #weight} gives for the later load
 * @param load of the first reading; empty for {@link Form#AS_READ}
 * @param air beside the joint at the first reading; empty but for {@link Form#RISE}
 */
public record BaselineRule(
        Form form,
        Drift drift,
        Drift.Limits limits,
        boolean smallerIsWorse,
        double ceiling,
        double blur,
        double blurOfLoad,
        Optional<Current> load,
        Optional<Temperature> air) {

    /** What is made of a reading before it is compared. */
    public enum Form {
        /** Nothing. */
        AS_READ,
        /** Volts over amperes. */
        DROP,
        /** What the rest voltage of the same day lies above it, over amperes. */
        BEHIND,
        /** Kelvin over the air beside it, at the load of the first reading. */
        RISE
    }

    static BaselineRule asRead(Drift rule, double first, double blur) {
        return new BaselineRule(
                Form.AS_READ,
                rule,
                rule.limits(first),
                false,
                Double.POSITIVE_INFINITY,
                blur,
                0,
                Optional.empty(),
                Optional.empty());
    }

    static BaselineRule asReadFalling(Drift rule, double first, double ceiling, double blur) {
        return new BaselineRule(
                Form.AS_READ,
                rule,
                rule.limits(Math.min(first, ceiling)),
                true,
                ceiling,
                blur,
                0,
                Optional.empty(),
                Optional.empty());
    }

    /** @param volts what a meter blurs each reading by */
    static BaselineRule resistance(Form form, Drift rule, double first, double volts, Current load) {
        return new BaselineRule(
                form,
                rule,
                rule.limits(first),
                false,
                Double.POSITIVE_INFINITY,
                volts / load.amperes(),
                volts,
                Optional.of(load),
                Optional.empty());
    }

    /** @param kelvin what a thermometer blurs each rise by; the later one is scaled to the first load with its blur */
    static BaselineRule rise(Drift rule, double first, double kelvin, Current load, Temperature air) {
        return new BaselineRule(
                Form.RISE,
                rule,
                rule.limits(first),
                false,
                Double.POSITIVE_INFINITY,
                kelvin,
                kelvin,
                Optional.of(load),
                Optional.of(air));
    }

    /** Judges a reading in the form that is compared, of a day on which the load was {@code later}. */
    public Drift.Judgement judge(double compared, Optional<Current> later) {
        double now = Math.min(compared, ceiling);
        double blurred = blur + blurOfLoad * later.map(this::weight).orElse(0.0);
        return smallerIsWorse ? limits.smaller(now, blurred) : limits.larger(now, blurred);
    }

    private double weight(Current later) {
        double first = load.map(Current::amperes).orElse(0.0);
        return switch (form) {
            case AS_READ -> 0;
            case DROP, BEHIND -> 1 / later.amperes();
            case RISE -> first / later.amperes() * (first / later.amperes());
        };
    }

    /** How far apart two readings at the first load may lie, in the form that is compared. */
    double blurAtFirstLoad() {
        return blur + blurOfLoad * load.map(this::weight).orElse(0.0);
    }

    /** From where on a reading at the first load has moved, in the form that is compared. */
    double movesAt() {
        return smallerIsWorse
                ? Math.min(limits.down(), limits.first() - blurAtFirstLoad())
                : Math.max(limits.up(), limits.first() + blurAtFirstLoad());
    }

    /** Whether a smaller number on the meter is the worse. */
    public boolean fallsOnMeter() {
        return smallerIsWorse || form == Form.BEHIND;
    }
}
