package org.quaybook.calc;

import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.TimeSpan;

/** A source that charges the bank for a part of each day. Hours of the day count from midnight. */
public sealed interface ChargeSource {

    double DAY = 24;

    /** When its part of the day begins, from 0 to below 24. */
    double from();

    /** How long it lasts, from 0 to 24 h; it may run past midnight. */
    TimeSpan lasts();

    /**
     * What it offers the bank.
     *
     * @param hour within its part of the day
     * @param rest rest voltage of the bank
     * @param ohms inner resistance of the bank
     * @return amperes, not negative
     */
    double amperesAt(double hour, double rest, double ohms);

    /** Hours since its part of the day began, from 0 to below 24. */
    default double hoursIn(double hour) {
        double since = (hour - from()) % DAY;
        return since < 0 ? since + DAY : since;
    }

    private static void check(double from, TimeSpan lasts) {
        if (!(from >= 0 && from < DAY) || lasts.hours() > DAY) {
            throw new IllegalArgumentException("no day holds " + lasts + " from " + from + " h");
        }
    }

    /** The same current all the time that it runs. */
    record Steady(Current current, double from, TimeSpan lasts) implements ChargeSource {
        public Steady {
            check(from, lasts);
            if (current.amperes() < 0) {
                throw new IllegalArgumentException("a charger gives current, not " + current);
            }
        }

        @Override
        public double amperesAt(double hour, double rest, double ohms) {
            return current.amperes();
        }
    }

    /**
     * Panels: half a sine of power over the daylight, limited by the controller. Own model.
     *
     * @param most power at noon, at the bank
     * @param limit most current of the controller
     */
    record Sun(Power most, Current limit, double from, TimeSpan lasts) implements ChargeSource {

        /**
         * Middle of the daylight: half past twelve. The clock of most places is ahead of the sun, more so in summer
         * (common practice, no source).
         */
        private static final double NOON = 12.5;

        public Sun {
            check(from, lasts);
            if (most.watts() < 0 || limit.amperes() < 0) {
                throw new IllegalArgumentException("panels give power, not " + most + " and " + limit);
            }
        }

        /**
         * The half sine around noon that brings as much as a stated number of hours at full power: pi / 2 times as long.
         *
         * @param fullHours hours at full power that would bring as much, from 0 to 12
         */
        public static Sun around(Power most, Current limit, TimeSpan fullHours) {
            TimeSpan light = fullHours.times(Math.PI / 2);
            return new Sun(most, limit, NOON - light.hours() / 2, light);
        }

        @Override
        public double amperesAt(double hour, double rest, double ohms) {
            double watts = most.watts() * StrictMath.sin(Math.PI * Math.min(1, hoursIn(hour) / lasts.hours()));
            double amperes = 2 * watts / (rest + Math.sqrt(rest * rest + 4 * ohms * watts));
            return Math.min(limit.amperes(), amperes);
        }
    }
}
