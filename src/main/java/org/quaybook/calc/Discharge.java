package org.quaybook.calc;

import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
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

    /** Simpson's rule needs an even number of steps; at 8 for each bend the printed figures no longer change. */
    private static final int STEPS_BETWEEN_BENDS = 8;

    private static final int HALVINGS = 60;

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

    /** Voltage at the bank's own terminals while the inverter draws a current. */
    private Voltage bankVoltage(Ratio stateOfCharge, Current current) {
        return bank.rest().at(stateOfCharge).minus(current.through(bank.resistanceAt(stateOfCharge)));
    }

    /** Whether the inverter's terminals stay at or above a voltage. */
    public boolean holds(Ratio stateOfCharge, Power power, Voltage limit) {
        return at(stateOfCharge, power)
                .map(point -> point.voltage().compareTo(limit) >= 0)
                .orElse(false);
    }

    private boolean protectionHolds(Ratio stateOfCharge, Power power, Voltage limit) {
        return at(stateOfCharge, power)
                .map(point -> bankVoltage(stateOfCharge, point.current()).compareTo(limit) >= 0)
                .orElse(false);
    }

    /**
     * The lowest state of charge at which the inverter's terminals stay at or above a voltage under a load.
     *
     * @return empty if they do not even when the bank is full
     */
    public Optional<Ratio> lowestHolding(Power power, Voltage limit) {
        return lowest(soc -> holds(soc, power, limit));
    }

    private interface Condition {
        boolean at(Ratio stateOfCharge);
    }

    /** Bisection: voltage under load never falls when the state of charge rises. */
    private static Optional<Ratio> lowest(Condition condition) {
        if (!condition.at(Ratio.WHOLE)) {
            return Optional.empty();
        }
        if (condition.at(Ratio.NONE)) {
            return Optional.of(Ratio.NONE);
        }
        double fails = 0;
        double holds = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fails + holds) / 2;
            if (condition.at(new Ratio(middle))) {
                holds = middle;
            } else {
                fails = middle;
            }
        }
        return Optional.of(new Ratio(holds));
    }

    /**
     * Runs a load from a state of charge until a limit ends it.
     *
     * <p>The time is the integral of C / I over the state of charge, I being the equivalent current of Peukert's law at
     * the working point. It is taken by Simpson's rule between the bends of the rest-voltage curve, so no step of time is
     * chosen and the end is met exactly.
     */
    public Run run(Demand demand, Ratio from, Limits limits, Pauses pauses) {
        Ratio cutOut = lowestHolding(demand.working(), limits.cutOut()).orElse(null);
        Voltage protectionVoltage = limits.protection();
        Ratio protection = protectionVoltage == null
                ? Ratio.NONE
                : lowest(soc -> protectionHolds(soc, demand.working(), protectionVoltage))
                        .orElse(null);
        if (cutOut == null) {
            return notStarted(from, Ending.CUT_OUT);
        }
        if (protection == null) {
            return notStarted(from, Ending.PROTECTION);
        }
        Ending ending = Ending.RESERVE;
        Ratio end = limits.reserve();
        if (cutOut.compareTo(end) > 0) {
            ending = Ending.CUT_OUT;
            end = cutOut;
        }
        if (protection.compareTo(end) > 0) {
            ending = Ending.PROTECTION;
            end = protection;
        }
        return end.compareTo(from) >= 0 ? notStarted(from, ending) : integrate(demand, from, end, ending, pauses);
    }

    private static Run notStarted(Ratio from, Ending ending) {
        return new Run(new TimeSpan(0), from, ending, new Charge(0), new Energy(0));
    }

    private Run integrate(Demand demand, Ratio from, Ratio end, Ending ending, Pauses pauses) {
        TreeSet<Double> marks = new TreeSet<>();
        Stream.concat(bank.rest().bends().stream(), Stream.of(bank.lowBelow()))
                .map(Ratio::fraction)
                .filter(mark -> mark > end.fraction() && mark < from.fraction())
                .forEach(marks::add);
        marks.add(end.fraction());
        marks.add(from.fraction());
        double hours = 0;
        double ampereHours = 0;
        double wattHours = 0;
        double low = marks.first();
        for (double high : marks.tailSet(low, false)) {
            double step = (high - low) / STEPS_BETWEEN_BENDS;
            for (int i = 0; i <= STEPS_BETWEEN_BENDS; i++) {
                // The resistance jumps at lowBelow: keep the ends of a stretch on its own side of the jump.
                double soc = i == STEPS_BETWEEN_BENDS ? Math.nextDown(high) : low + i * step;
                Flow flow = flow(demand, new Ratio(soc), pauses);
                double weight = i == 0 || i == STEPS_BETWEEN_BENDS ? 1 : i % 2 == 0 ? 2 : 4;
                double slice = weight * step / 3 * bank.capacity().ampereHours() / flow.equivalent;
                hours += slice;
                ampereHours += slice * flow.mean;
                wattHours += slice * flow.mean * bank.rest().at(new Ratio(soc)).volts();
            }
            low = high;
        }
        return new Run(TimeSpan.ofHours(hours), end, ending, new Charge(ampereHours), new Energy(wattHours));
    }

    /** Mean current, and the current that counts for the capacity, both in amperes. */
    private record Flow(double mean, double equivalent) {}

    private Flow flow(Demand demand, Ratio soc, Pauses pauses) {
        double duty = demand.duty().fraction();
        Current working = current(soc, demand.working());
        Current pausing = current(soc, demand.pausing());
        double mean = duty * working.amperes() + (1 - duty) * pausing.amperes();
        double equivalent = switch (pauses) {
            case RECOVER -> bank.equivalent(new Current(mean)).amperes();
            case DO_NOT_RECOVER ->
                duty * bank.equivalent(working).amperes()
                        + (1 - duty) * bank.equivalent(pausing).amperes();
        };
        return new Flow(mean, equivalent);
    }

    private Current current(Ratio soc, Power power) {
        return at(soc, power)
                .orElseThrow(() -> new IllegalStateException("voltage collapses above the cut-out: " + power))
                .current();
    }
}
