package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.Demand;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Discharge.Run;
import org.quaybook.calc.Ending;
import org.quaybook.calc.Limits;
import org.quaybook.calc.SourceBank;
import org.quaybook.calc.TimeRange;
import org.quaybook.calc.Wish;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.RunningFigures.FromRow;
import org.quaybook.figures.RunningFigures.Range;
import org.quaybook.figures.RunningFigures.Warning;
import org.quaybook.figures.RunningFigures.Wished;
import org.quaybook.job.Given;
import org.quaybook.job.Protection;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Found;

/** Works out how one load, an appliance or several at once, runs the bank down. */
final class LoadReckoning {

    /** States of charge to start from besides full, in per cent. */
    private static final List<Integer> FROM = List.of(90, 80, 75, 70, 60, 50, 40, 30, 20);

    /** As many strings as a job may have. */
    private static final int MOST_STRINGS = 24;

    /**
     * What is known of a load.
     *
     * @param key begins the names of its figures
     * @param power its input while all of it works
     * @param start its input while it starts
     * @param load what the inverter then takes from the bank
     * @param startLoad what the inverter takes while it starts
     * @param startLimit voltage at the inverter that a start must hold
     * @param duty share of the time that it works
     * @param meanIsStated whether the job states its mean power, so that another power makes another duty
     * @param dutyInput where the duty comes from
     * @param powerSpread how far the power may be off
     * @param dutySpread how far the duty may be off; empty where it always works
     * @param wished the running time that the owner wishes for
     */
    record Load(
            String key,
            Figure<Power> power,
            Figure<Power> start,
            Figure<Power> load,
            Figure<Power> startLoad,
            Figure<Voltage> startLimit,
            Ratio duty,
            boolean meanIsStated,
            Input dutyInput,
            Found<Ratio> powerSpread,
            Optional<Found<Ratio>> dutySpread,
            @Nullable Given<TimeSpan> wished) {}

    private final RunSystem system;
    private final Load it;
    private final FigureBook book;
    private final Demand demand;
    private final List<Run> runs;
    private final Run wornRun;
    private final Optional<Ratio> startsDownTo;

    LoadReckoning(RunSystem system, Load load) {
        this.system = system;
        this.it = load;
        this.book = system.book();
        this.demand = demand(1, 1);
        List<Ratio> from = new ArrayList<>(List.of(Ratio.WHOLE));
        FROM.stream().map(LoadReckoning::ofPercent).forEach(from::add);
        this.runs = system.now().runs(demand, from, system.limits(), Pauses.RECOVER);
        this.wornRun = system.worn().run(demand, Ratio.WHOLE, system.limits(), Pauses.DO_NOT_RECOVER);
        this.startsDownTo = system.now()
                .lowestHolding(
                        it.startLoad().value().plus(system.standing()),
                        it.startLimit().value());
    }

    private static Ratio ofPercent(int percent) {
        return new Ratio(percent / 100.0);
    }

    /** What it and what always draws ask of the bank, with its power and its duty each so many times what they are. */
    private Demand demand(double power, double duty) {
        Power load = power == 1
                ? it.load().value()
                : system.inverter().losses().inputFor(it.power().value().times(power));
        double share = it.duty().fraction() * duty / (it.meanIsStated() ? power : 1);
        return new Demand(load, system.inverter().idle().value(), new Ratio(Math.min(1, share)))
                .plus(system.standing());
    }

    Verdict verdict() {
        if (it.power().value().compareTo(system.inverter().output().value()) > 0) {
            return Verdict.TOO_LARGE;
        }
        if (it.start().value().compareTo(system.inverter().startOutput().value()) > 0) {
            return Verdict.START_TOO_LARGE;
        }
        if (fromFull().time().seconds() == 0 || startsDownTo.isEmpty()) {
            return Verdict.CUTS_OUT_WHEN_FULL;
        }
        return wornRun.time().seconds() == 0 ? Verdict.NOT_WHEN_WORN : Verdict.RUNS;
    }

    boolean isAble() {
        return verdict() == Verdict.RUNS || verdict() == Verdict.NOT_WHEN_WORN;
    }

    /** From full, bank as it is. */
    Run fromFull() {
        return runs.get(0);
    }

    /** The lowest state of charge at which its start holds the voltage that it must; empty if none does. */
    Optional<Ratio> startsDownTo() {
        return startsDownTo;
    }

    RunningFigures figures() {
        BankFigures bank = system.bank();
        TimeSpan none = new TimeSpan(0);
        boolean able = isAble();
        Figure<TimeSpan> time = book.enter(
                it.key() + ".time",
                able ? fromFull().time() : none,
                Rounding.DOWN,
                Formula.RUN_TIME,
                timeInputs(bank.capacityNow(), bank.resistances()));
        Figure<TimeSpan> wornTime = book.enter(
                it.key() + ".time-worn",
                able ? wornRun.time() : none,
                Rounding.DOWN,
                Formula.RUN_TIME,
                timeInputs(bank.capacityWorn(), bank.resistancesWorn()));
        Optional<Figure<Ratio>> alarmBelow = system.now()
                .lowestHolding(demand.working(), system.inverter().alarm().value())
                .map(soc ->
                        lowest(".alarm-below", soc, it.load(), system.inverter().alarm()));
        Optional<Ratio> cutOutBelow =
                system.now().lowestHolding(demand.working(), system.limits().cutOut());
        return new RunningFigures(
                time,
                wornTime,
                fromFull().ending(),
                wornRun.ending(),
                able ? Optional.of(range(time)) : Optional.empty(),
                able ? fromRows() : List.of(),
                alarmBelow,
                alarmBelow.map(this::restAtAlarm),
                cutOutBelow.map(soc -> lowest(
                        ".cut-out-below", soc, it.load(), system.inverter().cutOut())),
                able
                        ? most(
                                ".alarm-resistance",
                                alarmBelow.map(Figure::value),
                                system.inverter().alarm())
                        : Optional.empty(),
                able
                        ? most(
                                ".cut-out-resistance",
                                cutOutBelow,
                                system.inverter().cutOut())
                        : Optional.empty(),
                voltage(".running-voltage", Ratio.WHOLE),
                able ? warning(alarmBelow) : Optional.empty(),
                Optional.ofNullable(it.wished())
                        .filter(wish -> wish.value() != null)
                        .map(wish -> wished(wish, time, wornTime)));
    }

    private List<Input> timeInputs(Figure<Charge> capacity, List<Input> resistances) {
        BankFigures bank = system.bank();
        List<Input> inputs = new ArrayList<>(List.of(
                Input.of("P₁", it.load()),
                it.dutyInput(),
                Input.of("P₀", system.inverter().idle()),
                Input.of("C", capacity),
                Input.usual("H", TimeSpan.ofHours(Practice.RATED_HOURS), Reason.RATED_HOURS),
                bank.battery().leadAcid()
                        ? Input.usual(
                                "k", bank.asItIs().peukert(), bank.battery().citation())
                        : Input.usual("k", bank.asItIs().peukert(), Reason.NO_PEUKERT)));
        inputs.addAll(resistances);
        inputs.addAll(List.of(
                Input.of("R", system.supply().resistance()),
                Input.of("s", bank.reserve()),
                Input.of("U", system.inverter().cutOut())));
        Optional.ofNullable(system.job().bank().protection())
                .map(Protection::cutOut)
                .filter(limit -> limit.value() != null)
                .ifPresent(limit -> inputs.add(Input.of("U_p", limit)));
        return system.withStanding(inputs);
    }

    /** The lowest state of charge that holds a limit under a load. */
    Figure<Ratio> lowest(String name, Ratio soc, Figure<Power> load, Figure<Voltage> limit) {
        return book.enter(
                it.key() + name,
                soc,
                Rounding.UP,
                Formula.LOWEST_CHARGE,
                system.withStanding(List.of(
                        Input.of("P₁", load),
                        Input.of("R", system.bank().resistanceAt(soc)),
                        Input.of("R", system.supply().resistance()),
                        Input.of("limit", limit))));
    }

    /** With which the voltage holds down to the reserve; empty where it does. */
    private Optional<Figure<Resistance>> most(String name, Optional<Ratio> below, Figure<Voltage> limit) {
        BankFigures bank = system.bank();
        Ratio reserve = bank.reserve().value();
        if (below.map(it -> it.compareTo(reserve) <= 0).orElse(false)) {
            return Optional.empty();
        }
        Figure<Resistance> inner = bank.resistanceAt(reserve);
        Voltage spare = bank.restAtReserve().value().minus(limit.value());
        Current current = demand.working().at(limit.value());
        double ohms = spare.volts() / current.amperes() - inner.value().ohms();
        return Optional.of(book.enter(
                it.key() + name,
                new Resistance(Math.max(0, ohms)),
                Rounding.DOWN,
                Formula.MOST_RESISTANCE,
                system.withStanding(List.of(
                        Input.of("E", bank.restAtReserve()),
                        Input.of("limit", limit),
                        Input.of("P₁", it.load()),
                        Input.of("R_i", inner)))));
    }

    private Figure<Voltage> restAtAlarm(Figure<Ratio> soc) {
        return book.enter(
                it.key() + ".alarm-rest",
                system.bank().asItIs().rest().at(soc.value()),
                Rounding.UP,
                Formula.REST_VOLTAGE,
                system.bank().restInputs(soc));
    }

    private Optional<Figure<Voltage>> voltage(String name, Ratio soc) {
        return system.now()
                .at(soc, demand.working())
                .map(point -> book.enter(
                        it.key() + name,
                        point.voltage(),
                        Rounding.DOWN,
                        Formula.LOADED_VOLTAGE,
                        system.withStanding(List.of(
                                system.rest(soc),
                                Input.of("P₁", it.load()),
                                Input.of("R", system.bank().resistanceAt(soc)),
                                Input.of("R", system.supply().resistance())))));
    }

    private List<FromRow> fromRows() {
        List<FromRow> rows = new ArrayList<>();
        for (int i = 0; i < FROM.size(); i++) {
            Ratio from = ofPercent(FROM.get(i));
            if (from.compareTo(system.bank().reserve().value()) > 0) {
                List<Input> inputs = new ArrayList<>();
                inputs.add(Input.usual("s₁", from, Reason.ROW));
                inputs.addAll(
                        timeInputs(system.bank().capacityNow(), system.bank().resistances()));
                rows.add(new FromRow(
                        from,
                        book.enter(
                                it.key() + ".time-from-" + FROM.get(i),
                                runs.get(i + 1).time(),
                                Rounding.DOWN,
                                Formula.RUN_TIME_FROM,
                                inputs),
                        voltage(".voltage-at-" + FROM.get(i), from)));
            }
        }
        return rows;
    }

    /** The time again with one input at one end of its spread, and the spread. */
    private record Change(String symbol, Found<Ratio> spread, TimeSpan worse, TimeSpan better) {}

    private Range range(Figure<TimeSpan> time) {
        List<Change> changes = new ArrayList<>(List.of(capacityChange(), resistanceChange(), powerChange()));
        it.dutySpread().ifPresent(spread -> changes.add(dutyChange(spread)));
        TimeRange range = TimeRange.of(
                time.value(),
                changes.stream()
                        .flatMap(change -> Stream.of(change.worse(), change.better()))
                        .toList());
        return new Range(
                end(".time-least", range.least(), time, changes, true),
                end(".time-most", range.most(), time, changes, false));
    }

    private Figure<TimeSpan> end(
            String name, TimeSpan value, Figure<TimeSpan> time, List<Change> changes, boolean worse) {
        List<Input> inputs = new ArrayList<>(List.of(Input.of("t", time)));
        for (Change change : changes) {
            inputs.add(Input.of("u_" + change.symbol(), change.spread()));
            inputs.add(
                    Input.usual("t_" + change.symbol(), worse ? change.worse() : change.better(), Reason.RECALCULATED));
        }
        inputs.add(Input.of("u_way", system.waySpread()));
        return book.enter(it.key() + name, value, Rounding.DOWN, Formula.TIME_RANGE, inputs);
    }

    private Change capacityChange() {
        SourceBank bank = system.now().bank();
        double spread = system.capacitySpread().value().fraction();
        return new Change(
                "C",
                system.capacitySpread(),
                again(bank.with(bank.capacity().times(1 - spread), bank.resistance()), 1, demand),
                again(bank.with(bank.capacity().times(1 + spread), bank.resistance()), 1, demand));
    }

    /** Bank and way at once: both err to the same side when joints are bad or the bank is cold. */
    private Change resistanceChange() {
        SourceBank bank = system.now().bank();
        double inner = system.resistanceSpread().value().fraction();
        double way = system.waySpread().value().fraction();
        return new Change(
                "R",
                system.resistanceSpread(),
                again(bank.with(bank.capacity(), bank.resistance().times(1 + inner)), 1 + way, demand),
                again(bank.with(bank.capacity(), bank.resistance().times(1 - inner)), 1 - way, demand));
    }

    private Change powerChange() {
        double spread = it.powerSpread().value().fraction();
        return new Change(
                "P",
                it.powerSpread(),
                again(system.now().bank(), 1, demand(1 + spread, 1)),
                again(system.now().bank(), 1, demand(1 - spread, 1)));
    }

    private Change dutyChange(Found<Ratio> spread) {
        return new Change(
                "d",
                spread,
                again(system.now().bank(), 1, demand(1, 1 + spread.value().fraction())),
                again(system.now().bank(), 1, demand(1, 1 - spread.value().fraction())));
    }

    private TimeSpan again(SourceBank bank, double way, Demand changed) {
        return new Discharge(bank, system.now().supply().times(way))
                .run(changed, Ratio.WHOLE, system.limits(), Pauses.RECOVER)
                .time();
    }

    /** From where the alarm sounds until the inverter or the battery switches off, or the bank is empty. */
    private Optional<Warning> warning(Optional<Figure<Ratio>> alarmBelow) {
        Ratio alarm = alarmBelow.map(Figure::value).orElse(Ratio.WHOLE);
        if (alarm.equals(Ratio.NONE)) {
            return Optional.empty();
        }
        Limits toTheDark =
                new Limits(Ratio.NONE, system.limits().cutOut(), system.limits().protection());
        Run run = system.now().run(demand, alarm, toTheDark, Pauses.RECOVER);
        BankFigures bank = system.bank();
        return Optional.of(new Warning(
                warningTime(".warning-time", run, bank.capacityNow(), bank.resistances()),
                wornRun.time().seconds() == 0
                        ? Optional.empty()
                        : Optional.of(warningTime(
                                ".warning-time-worn",
                                wornAfterAlarm(toTheDark),
                                bank.capacityWorn(),
                                bank.resistancesWorn())),
                run.ending(),
                alarm.compareTo(bank.reserve().value()) > 0));
    }

    private Run wornAfterAlarm(Limits toTheDark) {
        Ratio alarm = system.worn()
                .lowestHolding(demand.working(), system.inverter().alarm().value())
                .orElse(Ratio.WHOLE);
        return system.worn().run(demand, alarm, toTheDark, Pauses.DO_NOT_RECOVER);
    }

    private Figure<TimeSpan> warningTime(String name, Run run, Figure<Charge> capacity, List<Input> resistances) {
        Optional<Figure<TimeSpan>> delay = system.inverter().alarmDelay();
        double lost = delay.map(it -> it.value().seconds()).orElse(0.0);
        List<Input> inputs = new ArrayList<>(timeInputs(capacity, resistances));
        inputs.add(Input.of("U_a", system.inverter().alarm()));
        inputs.add(delay.map(it -> Input.of("t_a", it))
                .orElseGet(() -> Input.usual("t_a", new TimeSpan(0), Reason.NOT_WRITTEN)));
        return book.enter(
                it.key() + name,
                new TimeSpan(Math.max(0, run.time().seconds() - lost)),
                Rounding.DOWN,
                Formula.WARNING_TIME,
                inputs);
    }

    private Wished wished(Given<TimeSpan> given, Figure<TimeSpan> time, Figure<TimeSpan> wornTime) {
        Figure<TimeSpan> wanted = book.stated(it.key() + ".wished-time", given);
        Wish wish = new Wish(demand, system.limits(), Pauses.DO_NOT_RECOVER, wanted.value());
        boolean large = verdict() == Verdict.TOO_LARGE || verdict() == Verdict.START_TOO_LARGE;
        Optional<Figure<Count>> strings = large ? Optional.empty() : strings(wish, wanted);
        Optional<Figure<Resistance>> resistance =
                large || wornRun.ending() == Ending.RESERVE ? Optional.empty() : resistance(wish, wanted);
        return new Wished(
                wanted,
                wornTime.value().compareTo(wanted.value()) >= 0,
                time.value().compareTo(wanted.value()) >= 0,
                large ? Optional.empty() : capacity(wish, wanted),
                strings,
                strings.map(this::blocks),
                resistance,
                resistance.flatMap(most -> system.leastConductor(most.value())));
    }

    /** As a capacity when new, so that it can be bought. */
    private Optional<Figure<Charge>> capacity(Wish wish, Figure<TimeSpan> wanted) {
        BankFigures bank = system.bank();
        double whenNew = bank.capacity().value().ratioTo(bank.capacityWorn().value());
        return wish.capacity(system.worn().bank(), system.worn().supply())
                .map(worn -> book.enter(
                        it.key() + ".wished-capacity",
                        worn.times(whenNew),
                        Rounding.UP,
                        Formula.WISHED_CAPACITY,
                        system.withStanding(List.of(
                                Input.of("t_w", wanted),
                                Input.of("P₁", it.load()),
                                Input.of("C₀", bank.capacity()),
                                Input.of("C", bank.capacityWorn()),
                                Input.of("R", bank.resistanceWorn()),
                                Input.of("R", system.supply().resistance())))));
    }

    private Optional<Figure<Count>> strings(Wish wish, Figure<TimeSpan> wanted) {
        for (int strings = 1; strings <= MOST_STRINGS; strings++) {
            if (wish.isGrantedBy(worn(strings), system.worn().supply())) {
                return Optional.of(book.enter(
                        it.key() + ".wished-strings",
                        new Count(strings),
                        Rounding.UP,
                        Formula.WISHED_STRINGS,
                        system.withStanding(List.of(
                                Input.of("t_w", wanted),
                                Input.of("P₁", it.load()),
                                Input.of("C", system.bank().capacityWorn()),
                                Input.of("R", system.bank().resistanceWorn()),
                                Input.of("R", system.supply().resistance()),
                                Input.usual("m", strings, Reason.SAME_KIND)))));
            }
        }
        return Optional.empty();
    }

    /** The worn bank with another number of strings: its capacity in proportion, its resistance by the ladder. */
    private SourceBank worn(int strings) {
        BankFigures bank = system.bank();
        int fitted = bank.sharing().shares().size();
        return bank.worn()
                .with(
                        bank.capacityWorn().value().times(strings / (double) fitted),
                        bank.wornResistanceOf().apply(strings));
    }

    private Figure<Count> blocks(Figure<Count> strings) {
        int series = BankFigures.seen(system.job().bank().series());
        return book.enter(
                it.key() + ".wished-blocks",
                new Count(strings.value().number() * series),
                Rounding.UP,
                Formula.WISHED_BLOCKS,
                Input.of("m", strings),
                Input.of("n", system.job().bank().series()));
    }

    private Optional<Figure<Resistance>> resistance(Wish wish, Figure<TimeSpan> wanted) {
        return wish.supply(system.worn().bank())
                .map(most -> book.enter(
                        it.key() + ".wished-resistance",
                        most,
                        Rounding.DOWN,
                        Formula.WISHED_RESISTANCE,
                        system.withStanding(List.of(
                                Input.of("t_w", wanted),
                                Input.of("P₁", it.load()),
                                Input.of("C", system.bank().capacityWorn()),
                                Input.of("R", system.bank().resistanceWorn()),
                                Input.of("U", system.inverter().cutOut())))));
    }
}
