package org.quaybook.figures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.DcRun;
import org.quaybook.calc.Drift;
import org.quaybook.calc.RunRating;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.figures.BaselineFigures.Reading;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Rcd;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Constant;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/** Works out what a later visit can compare. */
final class BaselineReckoning {

    /** Kinds that a later visit compares, in the order in which they are best read. */
    private static final List<TestKind> COMPARED = List.of(
            TestKind.REST_VOLTAGE,
            TestKind.BANK_DROP,
            TestKind.VOLTAGE_DROP,
            TestKind.JOINT_DROP,
            TestKind.JOINT_TEMPERATURE,
            TestKind.INVERTER_VOLTAGE,
            TestKind.RCD_TRIP,
            TestKind.LEAKAGE,
            TestKind.INSULATION,
            TestKind.EARTH_CONTINUITY,
            TestKind.NEUTRAL_BOND);

    private static final Set<TestKind> UNDER_LOAD = Set.of(
            TestKind.BANK_DROP,
            TestKind.VOLTAGE_DROP,
            TestKind.JOINT_DROP,
            TestKind.JOINT_TEMPERATURE,
            TestKind.INVERTER_VOLTAGE);

    private static final double TEN_AMPERES = 10;

    private final Job job;
    private final BankFigures bank;
    private final InverterFigures inverter;
    private final SupplyFigures supply;
    private final FigureBook book;
    private final Map<String, Figure<Resistance>> cold = new HashMap<>();
    private final Set<String> keys = new LinkedHashSet<>();

    BaselineReckoning(Job job, BankFigures bank, InverterFigures inverter, SupplyFigures supply, FigureBook book) {
        this.job = job;
        this.bank = bank;
        this.inverter = inverter;
        this.supply = supply;
        this.book = book;
    }

    /** What makes two tests the same: read again, they can be compared. */
    private record Same(TestKind kind, List<String> of, Optional<Source> source, Optional<Quantity> at) {

        /** An RCD is tested at its rated current and at five times that: two numbers. */
        static Same as(TestResult test) {
            boolean joint = test.test() == TestKind.JOINT_DROP;
            return new Same(
                    test.test(),
                    joint ? test.of() : test.of().stream().sorted().toList(),
                    Given.maybe(test.source()),
                    test.test() == TestKind.RCD_TRIP ? Given.maybe(test.at()) : Optional.empty());
        }
    }

    BaselineFigures figures() {
        supply.runs().forEach(run -> cold.put(run.cable().id(), coldResistance(run)));
        Figure<Current> current = current();
        Figure<Voltage> joint = book.enter(
                "baseline.joint-drop",
                current.value().through(Practice.JOINT),
                Rounding.NEAREST,
                Formula.OHM,
                Input.of("I", current),
                Input.usual("R", Practice.JOINT, Reason.JOINT));
        Map<Same, List<TestResult>> tests = new LinkedHashMap<>();
        usual().forEach(same -> tests.put(same, new ArrayList<>()));
        for (TestResult test : job.tests()) {
            if (COMPARED.contains(test.test()) && Given.maybe(test.result()).isPresent()) {
                tests.computeIfAbsent(Same.as(test), same -> new ArrayList<>()).add(test);
            }
        }
        rcdsWithoutTest(tests);
        List<Item> items = tests.entrySet().stream()
                .sorted(Comparator.comparing(
                        entry -> COMPARED.indexOf(entry.getKey().kind())))
                .map(entry -> item(entry.getKey(), entry.getValue(), current))
                .toList();
        return new BaselineFigures(current, joint, items);
    }

    /** What every installation of this kind has to read. */
    private List<Same> usual() {
        List<Same> usual = new ArrayList<>();
        usual.add(new Same(TestKind.REST_VOLTAGE, List.of(), Optional.empty(), Optional.empty()));
        usual.add(new Same(TestKind.BANK_DROP, List.of(), Optional.empty(), Optional.empty()));
        job.cables()
                .forEach(cable -> usual.add(
                        new Same(TestKind.VOLTAGE_DROP, List.of(cable.id()), Optional.empty(), Optional.empty())));
        usual.add(new Same(TestKind.INVERTER_VOLTAGE, List.of(), Optional.empty(), Optional.empty()));
        if (job.tests().stream().noneMatch(test -> test.test() == TestKind.LEAKAGE) && job.shore() != null) {
            usual.add(new Same(TestKind.LEAKAGE, List.of(), Optional.of(Source.SHORE), Optional.empty()));
        }
        if (job.tests().stream().noneMatch(test -> test.test() == TestKind.INSULATION)) {
            usual.add(new Same(TestKind.INSULATION, List.of(), Optional.empty(), Optional.empty()));
        }
        return usual;
    }

    /** Each RCD on each source that can feed it, where no test of it stands. */
    private void rcdsWithoutTest(Map<Same, List<TestResult>> tests) {
        for (Rcd rcd : job.rcds()) {
            for (Source source : sources(rcd)) {
                boolean there = tests.keySet().stream()
                        .anyMatch(same -> same.kind() == TestKind.RCD_TRIP
                                && same.of().contains(rcd.id())
                                && same.source().equals(Optional.of(source)));
                if (!there) {
                    Optional<Quantity> rating = rcd.rating().known().map(value -> value);
                    tests.put(
                            new Same(TestKind.RCD_TRIP, List.of(rcd.id()), Optional.of(source), rating),
                            new ArrayList<>());
                }
            }
        }
    }

    private List<Source> sources(Rcd rcd) {
        boolean both = Given.maybe(rcd.source()).orElse(Source.SHORE) == Source.INVERTER
                && job.shore() != null
                && job.inverter().changeover() != null;
        return both
                ? List.of(Source.INVERTER, Source.SHORE)
                : Given.maybe(rcd.source()).map(List::of).orElse(List.of(Source.SHORE));
    }

    private Figure<Current> current() {
        for (TestResult test : job.tests()) {
            Optional<Current> at = load(test);
            if (UNDER_LOAD.contains(test.test()) && at.isPresent()) {
                return book.enter(
                        "baseline.current",
                        at.get(),
                        Rounding.NEAREST,
                        Formula.AS_STATED,
                        Input.of("", Objects.requireNonNull(test.at())));
            }
        }
        double half = inverter.nominalCurrent().value().amperes() / 2;
        return book.enter(
                "baseline.current",
                new Current(half < TEN_AMPERES ? half : TEN_AMPERES * Math.floor(half / TEN_AMPERES)),
                Rounding.NEAREST,
                Formula.TEST_CURRENT,
                Input.of("I", inverter.nominalCurrent()));
    }

    /** The current during a test, if there was one to speak of. */
    private static Optional<Current> load(TestResult test) {
        return Given.maybe(test.at())
                .filter(Current.class::isInstance)
                .map(Current.class::cast)
                .filter(current -> current.amperes() > 0);
    }

    private Figure<Resistance> coldResistance(RunFigures run) {
        Given<Integer> joints = run.cable().joints();
        return book.enter(
                "cable." + run.cable().id() + ".cold-resistance",
                run.cold(),
                Rounding.NEAREST,
                Formula.COLD_RESISTANCE,
                Input.of("r", run.rating().perMetre()).per("m"),
                Input.of("L", run.cable().length()),
                run.conductor(),
                joints == null || joints.value() == null
                        ? Input.usual("n", run.joints(), Reason.JOINTS_PER_RUN)
                        : Input.of("n", joints),
                Input.usual("r_j", Practice.JOINT, Reason.JOINT));
    }

    private Item item(Same same, List<TestResult> tests, Figure<Current> current) {
        String key = key(same);
        List<TestResult> inTime = tests.stream()
                .sorted(Comparator.comparing(BaselineReckoning::day))
                .toList();
        Optional<TestResult> first = inTime.stream().findFirst();
        Optional<TestResult> latest = inTime.isEmpty()
                ? Optional.empty()
                : Optional.of(inTime.get(inTime.size() - 1))
                        .filter(last -> day(last).isAfter(day(inTime.get(0))));
        Optional<Figure<?>> predicted = predicted(key, same, first.orElse(null), current);
        Optional<Reading> then = first.map(test -> reading(key + ".first", test, test));
        Optional<Reading> now = latest.map(test -> reading(key + ".latest", test, inTime.get(0)));
        Optional<BaselineRule> rule = then.flatMap(it -> rule(same.kind(), it));
        return new Item(
                same.kind(),
                key,
                same.of(),
                same.source(),
                predicted,
                then,
                now,
                now.or(() -> then).flatMap(last -> fullLoad(key, last.test())),
                then.flatMap(a -> now.flatMap(b -> change(key, same.kind(), a, b))),
                rule,
                rule.flatMap(it -> then.flatMap(a -> movedFrom(key, it, a))),
                now.map(it -> judgement(rule, it)));
    }

    /** A test without a day was done at handover, before anything that has one. */
    private static LocalDate day(TestResult test) {
        return test.on() == null ? LocalDate.MIN : test.on();
    }

    private String key(Same same) {
        List<String> parts = new ArrayList<>(List.of(Ids.of(same.kind())));
        same.of().forEach(of -> parts.add(Ids.of(of)));
        same.source().ifPresent(source -> parts.add(Ids.of(source)));
        String plain = "test." + String.join("-", parts);
        String key = plain;
        for (int i = 2; !keys.add(key); i++) {
            key = plain + "-" + i;
        }
        return key;
    }

    private Optional<Figure<?>> predicted(
            String key, Same same, @Nullable TestResult first, Figure<Current> usualCurrent) {
        Optional<Current> stated = Optional.ofNullable(first).flatMap(BaselineReckoning::load);
        Current current = stated.orElse(usualCurrent.value());
        Input load = first != null && stated.isPresent()
                ? Input.of("I", Objects.requireNonNull(first.at()))
                : Input.of("I", usualCurrent);
        String name = key + ".predicted";
        return switch (same.kind()) {
            case REST_VOLTAGE ->
                Optional.of(book.enter(
                        name,
                        bank.restFull().value(),
                        Rounding.NEAREST,
                        Formula.REST_WHEN_FULL,
                        Input.of("E", bank.restFull())));
            case BANK_DROP ->
                Optional.of(book.enter(
                        name,
                        current.through(bank.resistance().value()),
                        Rounding.NEAREST,
                        Formula.OHM,
                        load,
                        Input.of("R", bank.resistance())));
            case VOLTAGE_DROP -> runs(name, same.of(), current, load);
            case JOINT_DROP ->
                Optional.of(book.enter(
                        name,
                        current.through(Practice.JOINT),
                        Rounding.NEAREST,
                        Formula.OHM,
                        load,
                        Input.usual("R", Practice.JOINT, Reason.JOINT)));
            case INVERTER_VOLTAGE -> Optional.of(atInverter(name, current, load));
            case JOINT_TEMPERATURE -> warmth(name, same.of(), first, current, load);
            default -> Optional.empty();
        };
    }

    private Optional<Figure<?>> runs(String name, List<String> of, Current current, Input load) {
        List<Figure<Resistance>> path = supply.runs().stream()
                .filter(run -> of.contains(run.cable().id()))
                .map(run -> Objects.requireNonNull(cold.get(run.cable().id())))
                .toList();
        if (path.isEmpty()) {
            return Optional.empty();
        }
        List<Input> inputs = new ArrayList<>(List.of(load));
        path.forEach(run -> inputs.add(Input.of("R", run)));
        return Optional.of(
                book.enter(name, current.through(sum(path)), Rounding.NEAREST, Formula.OHM_IN_SERIES, inputs));
    }

    private static Resistance sum(List<Figure<Resistance>> path) {
        return path.stream().map(Figure::value).reduce(new Resistance(0), Resistance::plus);
    }

    private Figure<Voltage> atInverter(String name, Current current, Input load) {
        List<Figure<Resistance>> path = new ArrayList<>(List.of(bank.resistance()));
        supply.runs()
                .forEach(run ->
                        path.add(Objects.requireNonNull(cold.get(run.cable().id()))));
        List<Input> inputs = new ArrayList<>(List.of(Input.of("E", bank.restFull()), load));
        path.forEach(part -> inputs.add(Input.of("R", part)));
        return book.enter(
                name,
                bank.restFull().value().minus(current.through(sum(path))),
                Rounding.DOWN,
                Formula.VOLTAGE_BEHIND,
                inputs);
    }

    /** A sound joint is no warmer than the warmest of the cables it ends. */
    private Optional<Figure<?>> warmth(
            String name, List<String> of, @Nullable TestResult first, Current current, Input load) {
        Optional<Temperature> stated = Optional.ofNullable(first).flatMap(test -> Given.maybe(test.ambient()));
        Temperature air = stated.orElse(Practice.ROOM);
        Input airInput = first != null && stated.isPresent()
                ? Input.of("T₀", Objects.requireNonNull(first.ambient()))
                : Input.usual("T₀", Practice.ROOM, Reason.NOT_WRITTEN);
        return supply.runs().stream()
                .filter(run -> of.contains(run.cable().id())
                        || job.fuses().stream()
                                .anyMatch(fuse -> of.contains(fuse.id())
                                        && fuse.protects().contains(run.cable().id())))
                .max(Comparator.comparing(run -> warmth(run, current, air)))
                .<Figure<?>>map(run -> book.enter(
                        name,
                        warmth(run, current, air),
                        Rounding.UP,
                        Formula.CONDUCTOR_TEMPERATURE,
                        run.conductor(),
                        load,
                        airInput,
                        Input.of("I₁", run.rating().base()),
                        Input.of("k₂", run.rating().bundle()),
                        Input.of("T₁", run.cable().insulation())));
    }

    private static Temperature warmth(RunFigures run, Current current, Temperature air) {
        RunRating rating = run.rating();
        Current bears = rating.base()
                .value()
                .times(rating.conductor().parallel() * rating.bundle().value());
        return DcRun.workingTemperature(
                current, bears, air, BankFigures.seen(run.cable().insulation()));
    }

    private Reading reading(String name, TestResult test, TestResult first) {
        Quantity read = Given.maybe(test.result()).orElseThrow();
        return new Reading(test, read, compared(name, test, first));
    }

    private Optional<Figure<?>> compared(String name, TestResult test, TestResult first) {
        Given<Quantity> result = Objects.requireNonNull(test.result());
        Quantity read = BankFigures.seen(result);
        Optional<Current> load = load(test);
        return switch (test.test()) {
            case BANK_DROP, VOLTAGE_DROP, JOINT_DROP ->
                load.map(current -> book.enter(
                        name,
                        Drift.resistance((Voltage) read, current),
                        Rounding.NEAREST,
                        Formula.RESISTANCE_READ,
                        Input.of("U", result),
                        Input.of("I", Objects.requireNonNull(test.at()))));
            case INVERTER_VOLTAGE -> load.flatMap(current -> whole(name, test, (Voltage) read, current));
            case JOINT_TEMPERATURE -> warm(name, test, first);
            default -> Optional.of(book.enter(name, read, Rounding.NEAREST, Formula.AS_STATED, Input.of("", result)));
        };
    }

    /** The whole way from the inside of the bank to the inverter, if the rest voltage was read on the same day. */
    private Optional<Figure<?>> whole(String name, TestResult test, Voltage read, Current current) {
        return job.tests().stream()
                .filter(other -> other.test() == TestKind.REST_VOLTAGE
                        && Objects.equals(other.on(), test.on())
                        && Given.maybe(other.result()).isPresent())
                .findFirst()
                .map(other -> {
                    Given<Quantity> rest = Objects.requireNonNull(other.result());
                    return book.enter(
                            name,
                            Drift.resistance(((Voltage) BankFigures.seen(rest)).minus(read), current),
                            Rounding.NEAREST,
                            Formula.RESISTANCE_BEHIND,
                            Input.of("E", rest),
                            Input.of("U", Objects.requireNonNull(test.result())),
                            Input.of("I", Objects.requireNonNull(test.at())));
                });
    }

    private Optional<Figure<?>> warm(String name, TestResult test, TestResult first) {
        Given<Quantity> result = Objects.requireNonNull(test.result());
        if (test.equals(first)) {
            return Optional.of(book.enter(
                    name, BankFigures.seen(result), Rounding.NEAREST, Formula.AS_STATED, Input.of("", result)));
        }
        Given<Temperature> air = test.ambient();
        Given<Temperature> firstAir = first.ambient();
        if (Given.maybe(air).isEmpty()
                || Given.maybe(firstAir).isEmpty()
                || load(test).isEmpty()
                || load(first).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                name,
                Drift.at(
                        (Temperature) BankFigures.seen(result),
                        BankFigures.seen(Objects.requireNonNull(air)),
                        load(test).get(),
                        BankFigures.seen(Objects.requireNonNull(firstAir)),
                        load(first).get()),
                Rounding.NEAREST,
                Formula.WARMTH_AT_FIRST_LOAD,
                Input.of("T", result),
                Input.of("T₀", Objects.requireNonNull(air)),
                Input.of("I", Objects.requireNonNull(test.at())),
                Input.of("T₁", Objects.requireNonNull(firstAir)),
                Input.of("I₁", Objects.requireNonNull(first.at()))));
    }

    /** Ohm's and Joule's laws: what a joint shows when the inverter takes its worst current. */
    private Optional<Figure<?>> fullLoad(String key, TestResult test) {
        Optional<Current> load = load(test);
        if (load.isEmpty() || test.at() == null || test.result() == null) {
            return Optional.empty();
        }
        Figure<Current> worst = inverter.worstCurrent();
        String name = key + ".full-load";
        Given<Temperature> air = test.ambient();
        Quantity read = BankFigures.seen(test.result());
        if (test.test() == TestKind.JOINT_DROP) {
            return Optional.of(book.enter(
                    name,
                    worst.value().through(Drift.resistance((Voltage) read, load.get())),
                    Rounding.UP,
                    Formula.DROP_AT_FULL_LOAD,
                    Input.of("U₁", test.result()),
                    Input.of("I₁", test.at()),
                    Input.of("I", worst)));
        }
        if (test.test() != TestKind.JOINT_TEMPERATURE || air == null || air.value() == null) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                name,
                Drift.at((Temperature) read, air.value(), load.get(), air.value(), worst.value()),
                Rounding.UP,
                Formula.WARMTH_AT_FULL_LOAD,
                Input.of("T₁", test.result()),
                Input.of("T₀", air),
                Input.of("I₁", test.at()),
                Input.of("I", worst)));
    }

    /** Degrees and the volts of a bank at rest have no ratio that means anything. */
    private Optional<Figure<Ratio>> change(String key, TestKind kind, Reading first, Reading latest) {
        if (kind == TestKind.JOINT_TEMPERATURE
                || kind == TestKind.REST_VOLTAGE
                || first.compared().isEmpty()
                || latest.compared().isEmpty()
                || first.compared().get().value().canonical() == 0) {
            return Optional.empty();
        }
        Figure<?> now = latest.compared().get();
        Figure<?> then = first.compared().get();
        return Optional.of(book.enter(
                key + ".change",
                new Ratio(now.value().canonical() / then.value().canonical()),
                Rounding.NEAREST,
                Formula.SHARE,
                Input.of("a", now),
                Input.of("b", then)));
    }

    /**
     * Rounded so that whoever compares by hand looks twice rather than not at all. Empty where a meter would have to show
     * less than nothing: then no reading can be so much lower than the first.
     */
    private Optional<Figure<?>> movedFrom(String key, BaselineRule rule, Reading first) {
        Figure<?> compared = first.compared().orElseThrow();
        double most = rule.ceiling();
        List<Input> inputs = new ArrayList<>();
        inputs.add(
                compared.value().canonical() > most
                        ? Input.usual("a", like(compared.value(), most), Reason.INSULATION_CEILING)
                        : Input.of("a", compared));
        inputs.add(Input.usual("f", new Ratio(rule.drift().factor()), Reason.MOVED));
        inputs.add(
                Input.usual("d", difference(rule, first.reading(), rule.drift().least()), Reason.MOVED));
        inputs.add(Input.usual("b", difference(rule, first.reading(), rule.blurAtFirstLoad()), Reason.METER_BLUR));
        double load = rule.load().map(Current::amperes).orElse(0.0);
        if (rule.form() == BaselineRule.Form.DROP || rule.form() == BaselineRule.Form.BEHIND) {
            inputs.add(Input.of("I", Objects.requireNonNull(first.test().at())));
        }
        if (rule.form() == BaselineRule.Form.BEHIND) {
            inputs.add(Input.of("U₁", Objects.requireNonNull(first.test().result())));
        }
        if (rule.form() == BaselineRule.Form.RISE) {
            inputs.add(Input.of("T₀", Objects.requireNonNull(first.test().ambient())));
        }
        double read = first.reading().canonical();
        double moved = rule.movesAt();
        double onMeter = switch (rule.form()) {
            case AS_READ -> moved;
            case DROP -> moved * load;
            case BEHIND -> read - (moved - rule.limits().first()) * load;
            case RISE -> moved + rule.air().orElseThrow().celsius();
        };
        if (rule.fallsOnMeter() && onMeter <= 0) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                key + ".moved-from",
                like(first.reading(), onMeter),
                rule.fallsOnMeter() ? Rounding.UP : Rounding.DOWN,
                switch (rule.form()) {
                    case AS_READ -> rule.smallerIsWorse() ? Formula.MOVED_DOWN : Formula.MOVED_UP;
                    case DROP -> Formula.MOVED_DROP;
                    case BEHIND -> Formula.MOVED_BEHIND;
                    case RISE -> Formula.MOVED_WARMTH;
                },
                inputs));
    }

    private static Quantity like(Quantity quantity, double canonical) {
        return quantity.kind().make().apply(canonical);
    }

    private static Object difference(BaselineRule rule, Quantity read, double canonical) {
        return switch (rule.form()) {
            case AS_READ -> like(read, canonical);
            case DROP, BEHIND -> new Resistance(canonical);
            case RISE -> new Constant(canonical, "K");
        };
    }

    private static Drift.Judgement judgement(Optional<BaselineRule> rule, Reading latest) {
        if (rule.isEmpty() || latest.compared().isEmpty()) {
            return Drift.Judgement.UNCLEAR;
        }
        double now = latest.compared().get().value().canonical();
        double air = rule.get().air().map(Temperature::celsius).orElse(0.0);
        return rule.get().judge(now - air, load(latest.test()));
    }

    /** What later readings are held against; empty where the first lacks something for that. */
    private Optional<BaselineRule> rule(TestKind kind, Reading first) {
        if (first.compared().isEmpty()) {
            return Optional.empty();
        }
        double then = first.compared().get().value().canonical();
        Optional<Current> load = load(first.test());
        return switch (kind) {
            case VOLTAGE_DROP, JOINT_DROP ->
                load.map(it -> BaselineRule.resistance(
                        BaselineRule.Form.DROP, Practice.RESISTANCE_MOVED, then, Practice.MILLIVOLT, it));
            case BANK_DROP ->
                load.map(it -> BaselineRule.resistance(
                        BaselineRule.Form.DROP, Practice.RESISTANCE_MOVED, then, Practice.BANK_VOLTS_BLUR, it));
            case INVERTER_VOLTAGE ->
                load.map(it -> BaselineRule.resistance(
                        BaselineRule.Form.BEHIND, Practice.RESISTANCE_MOVED, then, Practice.BANK_VOLTS_BLUR, it));
            case JOINT_TEMPERATURE ->
                load.flatMap(it -> Given.maybe(first.test().ambient())
                        .map(air -> BaselineRule.rise(
                                Practice.WARMTH_MOVED, then - air.celsius(), Practice.KELVIN_BLUR, it, air)));
            case RCD_TRIP -> Optional.of(BaselineRule.asRead(Practice.TIME_MOVED, then, 0));
            case LEAKAGE -> Optional.of(BaselineRule.asRead(Practice.LEAKAGE_MOVED, then, 0));
            case INSULATION ->
                Optional.of(
                        BaselineRule.asReadFalling(Practice.INSULATION_MOVED, then, Practice.INSULATION_CEILING, 0));
            case REST_VOLTAGE ->
                Optional.of(BaselineRule.asReadFalling(
                        new Drift(
                                1,
                                Practice.REST_FALL_PER_VOLT
                                        * bank.system().value().volts()),
                        then,
                        Double.POSITIVE_INFINITY,
                        2 * Practice.BANK_VOLTS_BLUR));
            case EARTH_CONTINUITY, NEUTRAL_BOND -> Optional.of(BaselineRule.asRead(Practice.CONTINUITY_MOVED, then, 0));
            default -> Optional.empty();
        };
    }
}
