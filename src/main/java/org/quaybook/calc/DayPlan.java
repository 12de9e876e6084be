package org.quaybook.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;

/**
 * What the inverter feeds over a day, in stretches of unchanging demand. Hours of the day count from midnight.
 *
 * @param stretches from 0 to 24 h without gaps, in order
 */
public record DayPlan(List<Stretch> stretches) {

    private static final double DAY = 24;

    public DayPlan {
        stretches = List.copyOf(stretches);
        double at = 0;
        for (Stretch stretch : stretches) {
            if (stretch.from() != at || stretch.to() <= at) {
                throw new IllegalArgumentException(
                        "a stretch from " + stretch.from() + " h does not follow " + at + " h");
            }
            at = stretch.to();
        }
        if (at != DAY) {
            throw new IllegalArgumentException("the day ends at " + at + " h");
        }
    }

    /**
     * One use of an appliance.
     *
     * @param name what it is called
     * @param power its input while it draws, more than 0
     * @param duty share of the time that it draws
     * @param from hour that the use begins, from 0 to below 24; it may run past midnight
     * @param lasts from 0 to 24 h
     */
    public record Use(String name, Power power, Ratio duty, double from, TimeSpan lasts) {
        public Use {
            if (!(from >= 0 && from < DAY) || lasts.hours() > DAY || power.watts() <= 0) {
                throw new IllegalArgumentException(name + " draws " + power + " for " + lasts + " from " + from + " h");
            }
        }
    }

    /**
     * A part of the day in which nothing is switched.
     *
     * @param demand what the inverter then takes from the bank
     * @param output what its appliances want of it while all of them draw
     * @param running their names
     */
    public record Stretch(double from, double to, Demand demand, Power output, List<String> running) {
        public Stretch {
            running = List.copyOf(running);
        }
    }

    /** The day with nothing but one demand. */
    public static DayPlan of(Demand always) {
        return new DayPlan(List.of(new Stretch(0, DAY, always, new Power(0), List.of())));
    }

    /**
     * The uses of a day through the inverter. What runs at once goes through its losses together: those that draw all the
     * time make its lower demand; with those that pulse, all at once, it makes the upper one for so long that the mean output
     * is right. More than the inverter's continuous output it does not give.
     */
    public static DayPlan of(List<Use> uses, InverterLosses losses) {
        TreeSet<Double> marks = new TreeSet<>(List.of(0.0, DAY));
        uses.forEach(use -> {
            marks.add(use.from());
            marks.add((use.from() + use.lasts().hours()) % DAY);
        });
        List<Stretch> stretches = new ArrayList<>();
        double from = 0;
        for (double to : marks.tailSet(0.0, false)) {
            double middle = (from + to) / 2;
            stretches.add(stretch(
                    from, to, uses.stream().filter(use -> runs(use, middle)).toList(), losses));
            from = to;
        }
        return new DayPlan(stretches);
    }

    private static boolean runs(Use use, double hour) {
        double since = hour - use.from();
        return (since < 0 ? since + DAY : since) < use.lasts().hours();
    }

    private static Stretch stretch(double from, double to, List<Use> uses, InverterLosses losses) {
        double steady = 0;
        double pulsing = 0;
        double pulsingMean = 0;
        for (Use use : uses) {
            double watts = use.power().watts();
            if (use.duty().fraction() == 1) {
                steady += watts;
            } else {
                pulsing += watts;
                pulsingMean += watts * use.duty().fraction();
            }
        }
        double most = losses.continuous().watts();
        double low = Math.min(most, steady);
        double high = Math.min(most, steady + pulsing);
        double idle = Math.max(losses.idle().watts(), LEAST_WATTS);
        Demand demand = high > low
                ? new Demand(
                        losses.inputFor(new Power(high)),
                        losses.inputFor(new Power(low)),
                        new Ratio(Math.max(LEAST_DUTY, Math.min(1, pulsingMean / (high - low)))))
                : Demand.steady(
                        new Power(Math.max(idle, losses.inputFor(new Power(low)).watts())));
        return new Stretch(
                from,
                to,
                demand,
                new Power(steady + pulsing),
                uses.stream().map(Use::name).distinct().toList());
    }

    /** A demand is more than nothing, and so is its duty. */
    private static final double LEAST_WATTS = 1e-3;

    private static final double LEAST_DUTY = 1e-9;

    /** Energy that the inverter takes in a day. */
    public double wattHours() {
        return stretches.stream()
                .mapToDouble(it -> (it.to() - it.from())
                        * (it.demand().duty().fraction() * it.demand().working().watts()
                                + (1 - it.demand().duty().fraction())
                                        * it.demand().pausing().watts()))
                .sum();
    }
}
