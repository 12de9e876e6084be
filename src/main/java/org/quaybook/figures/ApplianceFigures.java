package org.quaybook.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.quaybook.calc.Demand;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Discharge.Run;
import org.quaybook.calc.Ending;
import org.quaybook.calc.Limits;
import org.quaybook.job.Appliance;
import org.quaybook.job.Given;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
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
 * @param time running time from full, bank as it is; pauses let the bank recover
 * @param wornTime running time from full, bank worn and cold; nothing recovers: the time to plan on
 * @param ending what ends the first
 * @param wornEnding what ends the second
 * @param uses whole uses from full, bank as it is; empty if it has no use time
 * @param wornUses whole uses with the worn bank
 * @param sharePerUse share of the bank for one use; empty if it has no use time
 * @param startsDownTo lowest state of charge at which it can start; empty if it never can
 * @param alarmBelow state of charge below which the alarm sounds while it works; empty if it always sounds
 * @param alarmRest rest voltage at that state of charge
 * @param cutOutBelow state of charge below which the inverter cuts out while it works; empty if it always does
 * @param runningVoltage voltage at the inverter with the bank full and the appliance working; empty if it collapses
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
        Figure<TimeSpan> time,
        Figure<TimeSpan> wornTime,
        Ending ending,
        Ending wornEnding,
        Optional<Figure<Count>> uses,
        Optional<Figure<Count>> wornUses,
        Optional<Figure<Ratio>> sharePerUse,
        Optional<Figure<Ratio>> startsDownTo,
        Optional<Figure<Ratio>> alarmBelow,
        Optional<Figure<Voltage>> alarmRest,
        Optional<Figure<Ratio>> cutOutBelow,
        Optional<Figure<Voltage>> runningVoltage) {

    /** Whether it runs on the bank as it is. */
    public boolean runs() {
        return verdict == Verdict.RUNS || verdict == Verdict.NOT_WHEN_WORN;
    }

    /** Whether an appliance can run. */
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
        NOT_WHEN_WORN
    }

    static List<ApplianceFigures> of(
            List<Appliance> appliances,
            BankFigures bank,
            InverterFigures inverter,
            SupplyFigures supply,
            Limits limits,
            FigureBook book) {
        Discharge now = new Discharge(bank.asItIs(), supply.resistance().value());
        Discharge worn = new Discharge(bank.worn(), supply.resistance().value());
        Set<String> keys = new HashSet<>();
        List<ApplianceFigures> figures = new ArrayList<>();
        for (Appliance appliance : appliances) {
            String name = Ids.of(appliance.name());
            String key = "appliance." + (keys.add(name) ? name : name + "-" + figures.size());
            figures.add(new Builder(appliance, key, bank, inverter, supply, now, worn, limits, book).build());
        }
        return figures;
    }

    private static final class Builder {
        private final Appliance appliance;
        private final String key;
        private final BankFigures bank;
        private final InverterFigures inverter;
        private final SupplyFigures supply;
        private final Discharge now;
        private final Discharge worn;
        private final Limits limits;
        private final FigureBook book;

        Builder(
                Appliance appliance,
                String key,
                BankFigures bank,
                InverterFigures inverter,
                SupplyFigures supply,
                Discharge now,
                Discharge worn,
                Limits limits,
                FigureBook book) {
            this.appliance = appliance;
            this.key = key;
            this.bank = bank;
            this.inverter = inverter;
            this.supply = supply;
            this.now = now;
            this.worn = worn;
            this.limits = limits;
            this.book = book;
        }

        ApplianceFigures build() {
            Figure<Power> power = book.stated(key + ".power", appliance.power());
            Ratio duty = duty();
            Figure<Power> average = book.enter(
                    key + ".average",
                    power.value().times(duty.fraction()),
                    Rounding.UP,
                    Formula.DUTY,
                    Input.of("P", power),
                    dutyInput(duty));
            Figure<Power> start = startPower(power);
            Figure<Power> load = load(".load", power);
            Figure<Power> startLoad = load(".start-load", start);
            Demand demand = new Demand(load.value(), inverter.idle().value(), duty);
            Run run = now.run(demand, Ratio.WHOLE, limits, Pauses.RECOVER);
            Run wornRun = worn.run(demand, Ratio.WHOLE, limits, Pauses.DO_NOT_RECOVER);
            Optional<Ratio> starts = now.lowestHolding(startLoad.value(), limits.cutOut());
            Verdict verdict = verdict(power.value(), start.value(), run, wornRun, starts);
            boolean runs = verdict == Verdict.RUNS || verdict == Verdict.NOT_WHEN_WORN;
            TimeSpan none = new TimeSpan(0);
            Figure<TimeSpan> time = time(
                    ".time", runs ? run.time() : none, load, dutyInput(duty), bank.capacityNow(), bank.resistance());
            Figure<TimeSpan> wornTime = time(
                    ".time-worn",
                    runs ? wornRun.time() : none,
                    load,
                    dutyInput(duty),
                    bank.capacityWorn(),
                    bank.resistanceWorn());
            Optional<Figure<Ratio>> alarmBelow = now.lowestHolding(
                            load.value(), inverter.alarm().value())
                    .map(soc -> lowest(".alarm-below", soc, load, inverter.alarm()));
            return new ApplianceFigures(
                    appliance,
                    key,
                    verdict,
                    power,
                    average,
                    start,
                    load,
                    startLoad,
                    time,
                    wornTime,
                    run.ending(),
                    wornRun.ending(),
                    uses(".uses", time),
                    uses(".uses-worn", wornTime),
                    sharePerUse(run, time),
                    starts.filter(soc -> runs).map(soc -> lowest(".starts-down-to", soc, startLoad, inverter.cutOut())),
                    alarmBelow,
                    alarmBelow.map(this::restAtAlarm),
                    now.lowestHolding(load.value(), limits.cutOut())
                            .map(soc -> lowest(".cut-out-below", soc, load, inverter.cutOut())),
                    now.at(Ratio.WHOLE, load.value())
                            .map(point -> book.enter(
                                    key + ".running-voltage",
                                    point.voltage(),
                                    Rounding.DOWN,
                                    Formula.LOADED_VOLTAGE,
                                    Input.of("E", bank.restFull()),
                                    Input.of("P₁", load),
                                    Input.of("R", bank.resistance()),
                                    Input.of("R", supply.resistance()))));
        }

        private Ratio duty() {
            Optional<Ratio> byAverage = Given.maybe(appliance.average())
                    .map(mean -> new Ratio(mean.ratioTo(BankFigures.seen(appliance.power()))));
            return byAverage.or(() -> Given.maybe(appliance.duty())).orElse(Ratio.WHOLE);
        }

        private Input dutyInput(Ratio duty) {
            if (appliance.average() != null && appliance.average().value() != null) {
                return Input.of("P_mean", appliance.average());
            }
            return appliance.duty() != null && appliance.duty().value() != null
                    ? Input.of("d", appliance.duty())
                    : Input.usual("d", duty, Practice.NOT_WRITTEN);
        }

        private Figure<Power> startPower(Figure<Power> power) {
            double factor = Given.maybe(appliance.start()).orElse(1.0);
            return book.enter(
                    key + ".start-power",
                    power.value().times(factor),
                    Rounding.UP,
                    Formula.START,
                    Input.of("P", power),
                    appliance.start() != null && appliance.start().value() != null
                            ? Input.of("s", appliance.start())
                            : Input.usual("s", factor, Practice.NOT_WRITTEN));
        }

        private Figure<Power> load(String name, Figure<Power> power) {
            return book.enter(
                    key + name,
                    inverter.losses().inputFor(power.value()),
                    Rounding.UP,
                    Formula.INVERTER_LOAD,
                    Input.of("P", power),
                    Input.of("P₀", inverter.idle()),
                    Input.of("η", inverter.fullEfficiency()),
                    Input.of("η_best", inverter.bestEfficiency()));
        }

        private Verdict verdict(Power power, Power start, Run run, Run wornRun, Optional<Ratio> starts) {
            if (power.compareTo(inverter.continuous().value()) > 0) {
                return Verdict.TOO_LARGE;
            }
            if (start.compareTo(inverter.shortTime().value()) > 0) {
                return Verdict.START_TOO_LARGE;
            }
            if (run.time().seconds() == 0 || starts.isEmpty()) {
                return Verdict.CUTS_OUT_WHEN_FULL;
            }
            return wornRun.time().seconds() == 0 ? Verdict.NOT_WHEN_WORN : Verdict.RUNS;
        }

        private Figure<TimeSpan> time(
                String name,
                TimeSpan time,
                Figure<Power> load,
                Input duty,
                Figure<Charge> capacity,
                Figure<Resistance> resistance) {
            return book.enter(
                    key + name,
                    time,
                    Rounding.DOWN,
                    Formula.RUN_TIME,
                    Input.of("P₁", load),
                    duty,
                    Input.of("P₀", inverter.idle()),
                    Input.of("C", capacity),
                    Input.usual("H", TimeSpan.ofHours(Practice.RATED_HOURS), Practice.RATED_HOURS_SOURCE),
                    Input.usual(
                            "k",
                            now.bank().peukert(),
                            bank.battery().leadAcid() ? bank.battery().citation() : Practice.NO_PEUKERT_SOURCE),
                    Input.of("R", resistance),
                    Input.of("R", supply.resistance()),
                    Input.of("s", bank.reserve()),
                    Input.of("U", inverter.cutOut()));
        }

        /** The length of one use; only asked for where the job states it. */
        private Input perUse() {
            return Input.of("t_use", Objects.requireNonNull(appliance.perUse()));
        }

        private Optional<Figure<Count>> uses(String name, Figure<TimeSpan> time) {
            return Given.maybe(appliance.perUse())
                    .map(perUse -> book.enter(
                            key + name,
                            new Count(Math.floor(time.value().ratioTo(perUse))),
                            Rounding.DOWN,
                            Formula.USES,
                            Input.of("t", time),
                            perUse()));
        }

        private Optional<Figure<Ratio>> sharePerUse(Run run, Figure<TimeSpan> time) {
            if (time.value().seconds() == 0) {
                return Optional.empty();
            }
            return Given.maybe(appliance.perUse())
                    .map(perUse -> book.enter(
                            key + ".share-per-use",
                            new Ratio((1 - run.endsAt().fraction()) * perUse.ratioTo(time.value())),
                            Rounding.UP,
                            Formula.SHARE_PER_USE,
                            Input.of("t", time),
                            perUse()));
        }

        private Figure<Ratio> lowest(String name, Ratio soc, Figure<Power> load, Figure<Voltage> limit) {
            return book.enter(
                    key + name,
                    soc,
                    Rounding.UP,
                    Formula.LOWEST_CHARGE,
                    Input.of("P₁", load),
                    Input.of("R", bank.resistance()),
                    Input.of("R", supply.resistance()),
                    Input.of("limit", limit));
        }

        private Figure<Voltage> restAtAlarm(Figure<Ratio> soc) {
            return book.enter(
                    key + ".alarm-rest",
                    bank.asItIs().rest().at(soc.value()),
                    Rounding.UP,
                    Formula.REST_VOLTAGE,
                    Input.of("s", soc));
        }
    }
}
