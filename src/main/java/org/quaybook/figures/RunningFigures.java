package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import org.quaybook.calc.Ending;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/**
 * How a load, one appliance or several at once, runs the bank down.
 *
 * @param time running time from full, bank as it is; pauses let the bank recover
 * @param wornTime running time from full, bank worn and cold; nothing recovers: the time to plan on
 * @param ending what ends the first
 * @param wornEnding what ends the second
 * @param range the first as a range, by how well its inputs are known; empty if it cannot run
 * @param from the same from lower states of charge, each above the reserve, highest first; empty if it cannot run
 * @param alarmBelow state of charge below which the alarm sounds while it works; empty if it always sounds
 * @param alarmRest rest voltage at that state of charge
 * @param cutOutBelow state of charge below which the inverter cuts out while it works; empty if it always does
 * @param mostForAlarm the most resistance between bank and inverter with which the alarm stays quiet down to the reserve; empty
 *     if it does
 * @param mostForCutOut the same with which the inverter does not cut out
 * @param runningVoltage voltage at the inverter with the bank full and the load working; empty if it collapses
 * @param warning from the alarm to the dark; empty if it cannot run, or if the alarm does not sound even when the bank is
 *     empty
 * @param wish what a wished running time asks for; empty if nobody wishes one
 */
public record RunningFigures(
        Figure<TimeSpan> time,
        Figure<TimeSpan> wornTime,
        Ending ending,
        Ending wornEnding,
        Optional<Range> range,
        List<FromRow> from,
        Optional<Figure<Ratio>> alarmBelow,
        Optional<Figure<Voltage>> alarmRest,
        Optional<Figure<Ratio>> cutOutBelow,
        Optional<Figure<Resistance>> mostForAlarm,
        Optional<Figure<Resistance>> mostForCutOut,
        Optional<Figure<Voltage>> runningVoltage,
        Optional<Warning> warning,
        Optional<Wished> wish) {

    public RunningFigures {
        from = List.copyOf(from);
    }

    /**
     * A running time as a range.
     *
     * @param least where the inputs turn out for the worse; 0 if it might then not run at all
     * @param most where they turn out for the better
     */
    public record Range(Figure<TimeSpan> least, Figure<TimeSpan> most) {}

    /**
     * A running time from a state of charge.
     *
     * @param voltage at the inverter's terminals there while the load works; empty if it collapses
     */
    public record FromRow(Ratio stateOfCharge, Figure<TimeSpan> time, Optional<Figure<Voltage>> voltage) {}

    /**
     * How long the alarm warns, if the load goes on.
     *
     * @param time bank as it is; pauses let the bank recover
     * @param wornTime bank worn and cold, nothing recovers; empty if the load then cannot run at all
     * @param ending what ends it; {@link Ending#RESERVE} stands for an empty bank here, since nothing switches off at the
     *     reserve
     * @param aboveReserve whether the alarm sounds before the reserve is reached, bank as it is
     */
    public record Warning(
            Figure<TimeSpan> time, Optional<Figure<TimeSpan>> wornTime, Ending ending, boolean aboveReserve) {

        /** The shorter of the two; empty if the load cannot run with the bank worn and cold. */
        public Optional<Figure<TimeSpan>> toPlanOn() {
            return wornTime.map(worn -> worn.value().compareTo(time.value()) < 0 ? worn : time);
        }
    }

    /**
     * What a wished running time asks for, reckoned with the bank worn and cold.
     *
     * @param time the wish
     * @param granted whether the bank grants it worn and cold
     * @param grantedNow whether it grants it as it is
     * @param capacity the least capacity, when new, that grants it with the bank's resistance as it is; empty if none does
     * @param strings the least number of strings of the same kind that grants it; empty if none that a job may have does
     * @param blocks blocks in these strings
     * @param resistance the largest resistance of cables and joints that grants it, where the voltage ends it; empty where
     *     the voltage does not end it, and where not even no resistance does
     * @param conductor the least conductor of the rulebook that keeps this resistance in every run
     */
    public record Wished(
            Figure<TimeSpan> time,
            boolean granted,
            boolean grantedNow,
            Optional<Figure<Charge>> capacity,
            Optional<Figure<Count>> strings,
            Optional<Figure<Count>> blocks,
            Optional<Figure<Resistance>> resistance,
            Optional<Conductor> conductor) {}
}
