package org.quaybook.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.quaybook.calc.Ending;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Appliance;
import org.quaybook.job.Job;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/**
 * What one appliance can do on this bank and inverter.
 *
 * @param verdict whether it can run at all
 * @param power its input while it works
 * @param average its mean input
 * @param startPower its input while it starts
 * @param load what the inverter then takes from the bank
 * @param startLoad what it takes while the appliance starts
 * @param running how it runs the bank down
 * @param uses whole uses from full, bank as it is; empty if it has no use time
 * @param wornUses whole uses with the worn bank
 * @param sharePerUse share of the bank for one use; empty if it has no use time
 * @param startLimit voltage at the inverter that its start must hold: the cut-out, or for a start shorter than the cut-out
 *     delay the voltage at which the inverter does not wait
 * @param startsDownTo lowest state of charge at which it can start; empty if it never can
 * @param startCurrent current out of the bank while it starts there, or at the reserve where that is higher: the largest
 *     that a start asks for in use; empty if it never can
 * @param startOfBlock what the hardest worked string gives of it; empty unless the job states a short-time limit for that
 */
public record ApplianceFigures(
        Appliance appliance,
        String key,
        Verdict verdict,
        Figure<Power> power,
        Figure<Power> average,
        Figure<Power> startPower,
        Figure<Power> load,
        Figure<Power> startLoad,
        RunningFigures running,
        Optional<Figure<Count>> uses,
        Optional<Figure<Count>> wornUses,
        Optional<Figure<Ratio>> sharePerUse,
        Figure<Voltage> startLimit,
        Optional<Figure<Ratio>> startsDownTo,
        Optional<Figure<Current>> startCurrent,
        Optional<Figure<Current>> startOfBlock)
        implements MainsLoad {

    /** Whether it runs on the bank as it is. */
    public boolean runs() {
        return verdict.runs();
    }

    /** Whether an appliance, or several at once, can run. */
    public enum Verdict {
        /** It can. */
        RUNS,
        /** It needs more than the inverter's continuous output. */
        TOO_LARGE,
        /** Its start needs more than the inverter's short-time output. */
        START_TOO_LARGE,
        /** The voltage falls to the inverter's or the battery's cut-out even with a full bank. */
        CUTS_OUT_WHEN_FULL,
        /** The worn bank only: it can run on the bank as it is. */
        NOT_WHEN_WORN;

        /** Whether it runs on the bank as it is. */
        public boolean runs() {
            return this == RUNS || this == NOT_WHEN_WORN;
        }
    }

    /** @see RunningFigures#time() */
    public Figure<TimeSpan> time() {
        return running.time();
    }

    /** @see RunningFigures#wornTime() */
    public Figure<TimeSpan> wornTime() {
        return running.wornTime();
    }

    /** @see RunningFigures#ending() */
    public Ending ending() {
        return running.ending();
    }

    /** @see RunningFigures#wornEnding() */
    public Ending wornEnding() {
        return running.wornEnding();
    }

    /** @see RunningFigures#alarmBelow() */
    public Optional<Figure<Ratio>> alarmBelow() {
        return running.alarmBelow();
    }

    /** @see RunningFigures#alarmRest() */
    public Optional<Figure<Voltage>> alarmRest() {
        return running.alarmRest();
    }

    /** @see RunningFigures#cutOutBelow() */
    public Optional<Figure<Ratio>> cutOutBelow() {
        return running.cutOutBelow();
    }

    /** @see RunningFigures#runningVoltage() */
    public Optional<Figure<Voltage>> runningVoltage() {
        return running.runningVoltage();
    }

    static List<ApplianceFigures> of(RunSystem system) {
        List<ApplianceFigures> figures = new ArrayList<>();
        keys(system.job()).forEach((appliance, key) -> {
            if (system.job()
                    .circuitOf(appliance)
                    .filter(AcCircuit::isPastInverter)
                    .isEmpty()) {
                figures.add(new ApplianceReckoning(system, appliance, key).figures());
            }
        });
        return figures;
    }

    /** What the keys of the figures of each appliance begin with, in the job's order. */
    static Map<Appliance, String> keys(Job job) {
        Set<String> taken = new HashSet<>();
        Map<Appliance, String> keys = new LinkedHashMap<>();
        for (Appliance appliance : job.appliances()) {
            String name = Ids.of(appliance.name());
            keys.put(appliance, "appliance." + (taken.add(name) ? name : name + "-" + keys.size()));
        }
        return keys;
    }
}
