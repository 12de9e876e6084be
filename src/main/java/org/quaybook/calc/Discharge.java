package org.quaybook.calc;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/**
 * A bank feeding an inverter through its cables.
 *
 * @param bank the bank
 * @param supply resistance of cables and joints between the bank's take-off and the inverter, both ways
 */
public record Discharge(SourceBank bank, Resistance supply) {

    private static final Resistance NOTHING = new Resistance(0);

    /**
     * Where Gauss's rule of five points looks between 0 and 1, and how much each counts: exact for polynomials up to the
     * ninth degree (Abramowitz and Stegun 25.4.30, from memory; the closed forms of the zeros of the fifth Legendre
     * polynomial). No point lies on an end, so a jump of the resistance between two stretches is never in either.
     */
    private static final double[] POINTS = points();

    private static final double[] WEIGHTS = weights();

    private static double[] points() {
        double inner = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
        double outer = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;
        return Arrays.stream(new double[] {-outer, -inner, 0, inner, outer})
                .map(at -> (1 + at) / 2)
                .toArray();
    }

    private static double[] weights() {
        double inner = (322 + 13 * Math.sqrt(70)) / 1800;
        double outer = (322 - 13 * Math.sqrt(70)) / 1800;
        return new double[] {outer, inner, 64.0 / 225, inner, outer};
    }

    /** How a pulsing load's pauses count for Peukert's law. */
    public enum Pauses {
        /** Charge lost to a high current comes back in the pauses: the mean current counts. The hopeful bound. */
        RECOVER,
        /** Nothing comes back: each current counts as if it flowed all the time. The cautious bound. */
        DO_NOT_RECOVER
    }

    /**
     * How a discharge went.
     *
     * @param time how long it lasted; 0 if the load cannot run at all
     * @param endsAt state of charge at the end
     * @param ending what ended it
     * @param drawn charge that left the bank
     * @param energy energy that left the bank's cells, losses in the bank included
     */
    public record Run(TimeSpan time, Ratio endsAt, Ending ending, Charge drawn, Energy energy) {}

    private Resistance path(Ratio stateOfCharge) {
        return bank.resistanceAt(stateOfCharge).plus(supply);
    }

    /** Working point at the inverter's terminals; empty if the voltage collapses. */
    public Optional<WorkingPoint> at(Ratio stateOfCharge, Power power) {
        return WorkingPoint.of(bank.rest().at(stateOfCharge), path(stateOfCharge), power);
    }

    /** Whether the inverter's terminals stay at or above a voltage. */
    public boolean holds(Ratio stateOfCharge, Power power, Voltage limit) {
        return at(stateOfCharge, power)
                .map(point -> point.voltage().compareTo(limit) >= 0)
                .orElse(false);
    }

    /**
     * The greatest power with which the inverter's terminals stay at or above a voltage: U (E - U) / R, but never more than
     * the bank can give at any voltage, where U is E / 2.
     *
     * @return 0 if they do not even without load
     */
    public Power greatestHolding(Ratio stateOfCharge, Voltage limit) {
        double rest = bank.rest().at(stateOfCharge).volts();
        double volts = Math.max(limit.volts(), rest / 2);
        return new Power(
                Math.max(0, volts * (rest - volts) / path(stateOfCharge).ohms()));
    }

    /**
     * The lowest state of charge at which the inverter's terminals stay at or above a voltage under a load.
     *
     * @return empty if they do not even when the bank is full
     */
    public Optional<Ratio> lowestHolding(Power power, Voltage limit) {
        return lowest(inner -> WorkingPoint.leastRest(limit, inner.plus(supply), NOTHING, power));
    }

    /** The same beside a current that does not change with the voltage. */
    public Optional<Ratio> lowestHolding(Power power, Voltage limit, Beside beside) {
        return lowest(inner -> WorkingPoint.leastRest(limit, inner.plus(supply), NOTHING, power)
                .plus(beside.lostWith(inner)));
    }

    /**
     * The most current beside a load with which the inverter's terminals stay at or above a voltage: what of the rest voltage
     * load and other currents leave above it, over the resistance that the current meets.
     *
     * @param others what draws besides already
     * @param shared resistance of what the current passes of the inverter's cables
     * @return 0 if they do not even without it
     */
    public Current mostBeside(Ratio stateOfCharge, Power power, Voltage limit, Beside others, Resistance shared) {
        Resistance inner = bank.resistanceAt(stateOfCharge);
        Voltage needed = WorkingPoint.leastRest(limit, inner.plus(supply), NOTHING, power)
                .plus(others.lostWith(inner));
        double spare = bank.rest().at(stateOfCharge).minus(needed).volts();
        return new Current(Math.max(0, spare / inner.plus(shared).ohms()));
    }

    /** The lowest state of charge at which the bank's own terminals stay at or above a voltage under a load. */
    private Optional<Ratio> lowestProtected(Power power, Voltage limit) {
        return lowest(inner -> WorkingPoint.leastRest(limit, inner, supply, power));
    }

    private interface Need {
        /** The rest voltage needed with this inner resistance of the bank. */
        Voltage with(Resistance inner);
    }

    /** The rest voltage never falls when the state of charge rises, and the resistance only falls, in one jump. */
    private Optional<Ratio> lowest(Need need) {
        Ratio jump = bank.lowBelow();
        Optional<Ratio> above = bank.rest().lowestAt(need.with(bank.resistance()));
        if (above.isEmpty() || above.get().compareTo(jump) >= 0) {
            return above;
        }
        return bank.rest()
                .lowestAt(need.with(bank.resistance().times(bank.riseWhenLow())))
                .filter(below -> below.compareTo(jump) < 0)
                .or(() -> Optional.of(jump));
    }

    /**
     * Runs a load from a state of charge until a limit ends it.
     *
     * <p>The time is the integral of C / I over the state of charge, I being the equivalent current of Peukert's law at
     * the working point. It is taken by Gauss's rule between the bends of the rest-voltage curve, so no step of time is
     * chosen and the end is met exactly.
     */
    public Run run(Demand demand, Ratio from, Limits limits, Pauses pauses) {
        return runs(demand, List.of(from), limits, pauses).get(0);
    }

    /**
     * Runs a load from several states of charge, each on its own, with one integration for all.
     *
     * @param from states of charge, 0 to 1, in any order
     * @return a run for each, in the same order; one from at or below the end lasts no time
     */
    public List<Run> runs(Demand demand, List<Ratio> from, Limits limits, Pauses pauses) {
        Optional<Ratio> cutOut = lowestHolding(demand.working(), limits.cutOut());
        Voltage opens = limits.protection();
        Optional<Ratio> protection = opens == null ? Optional.of(Ratio.NONE) : lowestProtected(demand.working(), opens);
        if (cutOut.isEmpty() || protection.isEmpty()) {
            Ending ending = cutOut.isEmpty() ? Ending.CUT_OUT : Ending.PROTECTION;
            return from.stream().map(soc -> notStarted(soc, ending)).toList();
        }
        Ending ending = Ending.RESERVE;
        Ratio end = limits.reserve();
        if (cutOut.get().compareTo(end) > 0) {
            ending = Ending.CUT_OUT;
            end = cutOut.get();
        }
        if (protection.get().compareTo(end) > 0) {
            ending = Ending.PROTECTION;
            end = protection.get();
        }
        return new Course(demand, from, end, ending, pauses).runs(from);
    }

    private static Run notStarted(Ratio from, Ending ending) {
        return new Run(new TimeSpan(0), from, ending, new Charge(0), new Energy(0));
    }

    /** The integrals from the end upwards, known at each mark. */
    private final class Course {
        private final Demand demand;
        private final Pauses pauses;
        private final Ratio end;
        private final Ending ending;
        private final double[] marks;
        private final double[] hours;
        private final double[] ampereHours;
        private final double[] wattHours;

        Course(Demand demand, List<Ratio> from, Ratio end, Ending ending, Pauses pauses) {
            this.demand = demand;
            this.pauses = pauses;
            this.end = end;
            this.ending = ending;
            this.marks = marks(from);
            this.hours = new double[marks.length];
            this.ampereHours = new double[marks.length];
            this.wattHours = new double[marks.length];
            for (int at = 1; at < marks.length; at++) {
                integrate(at);
            }
        }

        /** The end, the states of charge to start from, and between them where the curve bends or the resistance jumps. */
        private double[] marks(List<Ratio> from) {
            double highest = from.stream().mapToDouble(Ratio::fraction).max().orElse(0);
            TreeSet<Double> marks = new TreeSet<>();
            from.forEach(soc -> marks.add(soc.fraction()));
            bank.rest().bends().forEach(bend -> marks.add(bend.fraction()));
            marks.add(bank.lowBelow().fraction());
            marks.add(end.fraction());
            return marks.subSet(end.fraction(), true, Math.max(end.fraction(), highest), true).stream()
                    .mapToDouble(Double::doubleValue)
                    .toArray();
        }

        private void integrate(int at) {
            double low = marks[at - 1];
            double width = marks[at] - low;
            double restLow = bank.rest().at(new Ratio(low)).volts();
            double rise = bank.rest().at(new Ratio(marks[at])).volts() - restLow;
            double path = path(new Ratio(low + width / 2)).ohms();
            double time = 0;
            double charge = 0;
            double energy = 0;
            for (int i = 0; i < POINTS.length; i++) {
                double rest = restLow + POINTS[i] * rise;
                Flow flow = flow(rest, path);
                double slice = WEIGHTS[i] * width * bank.capacity().ampereHours() / flow.equivalent;
                time += slice;
                charge += slice * flow.mean;
                energy += slice * flow.mean * rest;
            }
            hours[at] = hours[at - 1] + time;
            ampereHours[at] = ampereHours[at - 1] + charge;
            wattHours[at] = wattHours[at - 1] + energy;
        }

        private Flow flow(double rest, double path) {
            double duty = demand.duty().fraction();
            double working = amperes(rest, path, demand.working());
            if (duty == 1) {
                return new Flow(working, equivalent(working));
            }
            double pausing = amperes(rest, path, demand.pausing());
            double mean = duty * working + (1 - duty) * pausing;
            return new Flow(
                    mean,
                    pauses == Pauses.RECOVER
                            ? equivalent(mean)
                            : duty * equivalent(working) + (1 - duty) * equivalent(pausing));
        }

        private double equivalent(double amperes) {
            return bank.equivalent(new Current(amperes)).amperes();
        }

        /** At the very end of a load that collapses the root may lie a rounding below 0. */
        private double amperes(double rest, double path, Power power) {
            double under = rest * rest - 4 * path * power.watts();
            return 2 * power.watts() / (rest + Math.sqrt(Math.max(0, under)));
        }

        List<Run> runs(List<Ratio> from) {
            return from.stream()
                    .map(soc -> soc.compareTo(end) <= 0 ? notStarted(soc, ending) : run(soc))
                    .toList();
        }

        private Run run(Ratio soc) {
            int at = Arrays.binarySearch(marks, soc.fraction());
            return new Run(
                    TimeSpan.ofHours(hours[at]), end, ending, new Charge(ampereHours[at]), new Energy(wattHours[at]));
        }
    }

    /** Mean current, and the current that counts for the capacity, both in amperes. */
    private record Flow(double mean, double equivalent) {}
}
