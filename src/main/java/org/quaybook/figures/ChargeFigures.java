package org.quaybook.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Acceptance;

/**
 * What one charger does.
 *
 * @param recharge time back to full with this charger alone; empty for panels, and if its current is not written
 * @param most the most that it gives; empty where nobody wrote it
 * @param lasting what an alternator of its rating bears for hours; empty where that is not written
 * @param circuit what its cable bears and a fuse in it may be; empty where the job does not tell the conductor
 * @param cable what is lost on the way to the bank; empty where the job does not tell the conductor, its length and the current
 * @param summerDay energy that it brings on a usual summer day; empty if its hours are not written
 * @param winterDay energy that it brings on a usual winter day
 */
public record ChargeFigures(
        Charging charging,
        String key,
        Optional<RechargeFigures> recharge,
        Optional<Figure<Current>> most,
        Optional<Figure<Current>> lasting,
        Optional<ChargeCircuit> circuit,
        Optional<ChargeCable> cable,
        Optional<Figure<Energy>> summerDay,
        Optional<Figure<Energy>> winterDay) {

    /** Part of the panels' peak power that reaches the bank over a day (common practice, no source). */
    static final double SOLAR_YIELD = 0.75;

    /** Shares of written numbers come out a hair too small or too large. */
    private static final double HAIR = 1 + 1e-9;

    /** Whether an alternator bears a current for hours; one of unknown rating bears none. */
    public boolean bearsForHours(Current current) {
        return lasting.filter(it -> current.amperes() <= it.value().amperes() * HAIR)
                .isPresent();
    }

    /** @see RechargeFigures#toFull() */
    public Optional<Figure<TimeSpan>> toFull() {
        return recharge.flatMap(RechargeFigures::toFull);
    }

    /**
     * Sources that run together.
     *
     * @param key its name as a figure's key begins
     */
    public record Together(Way way, String key, RechargeFigures recharge) {}

    /** When sources run together. */
    public enum Way {
        /** All chargers on shore power. */
        AT_SHORE,
        /** All alternators of the engine. */
        ENGINE_RUNNING,
        /** All chargers on the generator. */
        GENERATOR_RUNNING;

        boolean has(Charging charging) {
            return switch (this) {
                case AT_SHORE -> MainsCharger.fedBy(charging, Source.SHORE);
                case ENGINE_RUNNING -> charging.kind() == ChargeKind.ALTERNATOR;
                case GENERATOR_RUNNING -> MainsCharger.fedBy(charging, Source.GENERATOR);
            };
        }
    }

    /**
     * What all chargers of a job need to know.
     *
     * @param absence what stays on, and what the inverter takes while it feeds that
     */
    record Charged(
            Job job,
            BankFigures bank,
            BankCharging charging,
            AbsenceFigures absence,
            SharedWay way,
            SupplyFigures supply,
            RechargeFigures.After after,
            Tables tables,
            FigureBook book) {

        /** What stays on, each as if it drew all the time. */
        List<Figure<Power>> staying() {
            return after.appliances().stream()
                    .filter(it -> Given.isYes(it.appliance().leftOn()))
                    .map(ApplianceFigures::power)
                    .toList();
        }
    }

    /**
     * What lets no more through than it can, however much is asked of it: the input limit on shore, the generator.
     *
     * @param power the most that it gives
     * @param formula of a charger that has it alone
     */
    private record Bottleneck(Power power, Formula formula, List<Input> inputs) {

        static Optional<Bottleneck> of(Charging charging, Job job) {
            Generator generator = job.generator();
            if (MainsCharger.fedBy(charging, Source.GENERATOR)) {
                return Optional.ofNullable(generator)
                        .filter(it -> it.power().value() != null)
                        .map(it -> new Bottleneck(
                                BankFigures.seen(it.power()),
                                Formula.GENERATOR_LIMIT,
                                List.of(Input.of("P", it.power()))));
            }
            Given<Current> limit = job.inverter().inputLimit();
            if (!MainsCharger.fedBy(charging, Source.SHORE) || limit == null || limit.value() == null) {
                return Optional.empty();
            }
            return MainsCharger.shoreVoltage(job)
                    .map(mains -> new Bottleneck(
                            new Power(BankFigures.seen(limit).amperes()
                                    * BankFigures.seen(mains).volts()),
                            Formula.INPUT_LIMIT,
                            List.of(Input.of("I_limit", limit), Input.of("U_mains", mains))));
        }

        /** What it gives, as an input to others: a generator's power as it is, the shore's worked out. */
        Input most(String key, FigureBook book) {
            Input first = inputs.get(0);
            return formula == Formula.GENERATOR_LIMIT
                    ? new Input("S", first.value(), first.origin())
                    : Input.of("S", book.enter(key, power, Rounding.DOWN, Formula.SUPPLY_LIMIT, inputs));
        }
    }

    static List<ChargeFigures> of(Charged it) {
        Set<String> keys = new HashSet<>();
        for (Way way : Way.values()) {
            keys.add(Ids.of(way));
        }
        List<ChargeFigures> figures = new ArrayList<>();
        for (Charging charging : it.job().charging()) {
            String name = Ids.of(charging.name() == null ? Ids.of(charging.kind()) : charging.name());
            String key = "charging." + (keys.add(name) ? name : name + "-" + figures.size());
            figures.add(of(charging, key, it));
        }
        return List.copyOf(figures);
    }

    /** Only ways that more than one source goes. */
    static List<Together> together(List<ChargeFigures> chargers, Charged it) {
        List<Together> together = new ArrayList<>();
        for (Way way : Way.values()) {
            List<Giving> parts = chargers.stream()
                    .filter(charger -> way.has(charger.charging()))
                    .flatMap(charger -> charger.recharge().stream()
                            .map(recharge -> new Giving(charger.charging(), recharge.current())))
                    .toList();
            if (parts.size() > 1) {
                String key = "charging." + Ids.of(way);
                Figure<Current> sum = it.book()
                        .enter(
                                key + ".current",
                                parts.stream()
                                        .map(part -> part.current().value())
                                        .reduce(new Current(0), Current::plus),
                                Rounding.DOWN,
                                Formula.SUM_OF_CURRENTS,
                                parts.stream()
                                        .map(part -> Input.of("I", part.current()))
                                        .toList());
                together.add(new Together(
                        way,
                        key,
                        RechargeFigures.of(
                                key, sum, left(key, sum, parts, it), it.bank(), it.charging(), it.after(), it.book())));
            }
        }
        return together;
    }

    /** A charger and what it gives while nothing else asks for its supply. */
    private record Giving(Charging charging, Figure<Current> current) {}

    private static ChargeFigures of(Charging charging, String key, Charged it) {
        boolean solar = charging.kind() == ChargeKind.SOLAR;
        Optional<RechargeFigures> recharge = solar
                ? Optional.empty()
                : current(charging, key, it)
                        .map(current -> RechargeFigures.of(
                                key,
                                current,
                                left(key, current, List.of(new Giving(charging, current)), it),
                                it.bank(),
                                it.charging(),
                                it.after(),
                                it.book()));
        Optional<Figure<Current>> most = ChargeCable.most(charging, key, it.bank(), it.book());
        return new ChargeFigures(
                charging,
                key,
                recharge,
                most,
                lasting(charging, key, it.book()),
                ChargeCircuit.of(charging, key, most, it.bank(), it.tables().rules(), it.book()),
                ChargeCable.of(charging, key, most, it.bank(), it.way(), it.supply(), it.tables(), it.book()),
                solar
                        ? sun(key + ".summer-day", charging, charging.summerSun(), it.book())
                        : run(key + ".summer-day", charging, recharge, it),
                solar
                        ? sun(key + ".winter-day", charging, charging.winterSun(), it.book())
                        : run(key + ".winter-day", charging, recharge, it));
    }

    private static Optional<Figure<Current>> lasting(Charging charging, String key, FigureBook book) {
        return Optional.ofNullable(charging.rated())
                .filter(rated -> rated.value() != null)
                .map(rated -> book.enter(
                        key + ".lasting",
                        BankFigures.seen(rated).times(Practice.ALTERNATOR_SHARE.fraction()),
                        Rounding.DOWN,
                        Formula.PART_OF_CURRENT,
                        Input.of("I₁", rated),
                        Input.usual("f", Practice.ALTERNATOR_SHARE, Reason.ALTERNATOR_SHARE)));
    }

    private static boolean onMains(Charging charging) {
        return MainsCharger.fedBy(charging, Source.SHORE) || MainsCharger.fedBy(charging, Source.GENERATOR);
    }

    /** A generator gives its charger no more than its own power, the shore no more than the input limit lets in. */
    private static Optional<Figure<Current>> current(Charging charging, String key, Charged it) {
        Given<Current> stated = charging.current();
        if (stated == null || stated.value() == null) {
            return Optional.empty();
        }
        return Optional.of(Bottleneck.of(charging, it.job())
                .map(supply -> least(charging, key, stated, supply, it))
                .orElseGet(() -> it.book().stated(key + ".current", stated)));
    }

    private static Figure<Current> least(
            Charging charging, String key, Given<Current> stated, Bottleneck supply, Charged it) {
        MainsCharger mains = MainsCharger.of(charging);
        double most = supply.power().watts()
                / mains.inputPerWatt()
                / it.charging().voltage().value().volts();
        List<Input> inputs = new ArrayList<>(List.of(Input.of("I₁", stated)));
        inputs.addAll(supply.inputs());
        inputs.addAll(List.of(
                mains.efficiencyInput(),
                mains.powerFactorInput(),
                Input.of("U", it.charging().voltage())));
        return it.book()
                .enter(
                        key + ".current",
                        new Current(Math.min(most, BankFigures.seen(stated).amperes())),
                        Rounding.DOWN,
                        supply.formula(),
                        inputs);
    }

    /**
     * On the mains the charger carries the bank alone, unless the inverter's circuits are never fed from there; but what stays
     * on comes first through a bottleneck, and chargers share it.
     *
     * @param parts chargers of one source
     */
    private static Figure<Current> left(String key, Figure<Current> current, List<Giving> parts, Charged it) {
        if (!onMains(parts.get(0).charging()) || neverFedFromShore(it.job())) {
            double load = it.absence().load().value().watts()
                    / it.bank().nominal().value().volts();
            return it.book()
                    .enter(
                            key + ".left-for-bank",
                            new Current(Math.max(0, current.value().amperes() - load)),
                            Rounding.DOWN,
                            Formula.LEFT_FOR_BANK,
                            Input.of("I₁", current),
                            Input.of("P", it.absence().load()),
                            Input.of("U", it.bank().nominal()));
        }
        Optional<Bottleneck> supply = Bottleneck.of(parts.get(0).charging(), it.job())
                .filter(found -> parts.size() > 1 || !it.staying().isEmpty());
        Optional<Figure<Current>> draw = it.absence().draw().whole();
        String whole = draw.isPresent() ? ".through-charger" : ".left-for-bank";
        Figure<Current> given = supply.map(found -> shared(key, whole, current, parts, found, it))
                .orElseGet(() -> draw.isPresent()
                        ? current
                        : it.book()
                                .enter(
                                        key + whole,
                                        current.value(),
                                        Rounding.DOWN,
                                        Formula.ALL_FOR_BANK,
                                        Input.of("I₁", current)));
        return draw.map(drawn -> it.book()
                        .enter(
                                key + ".left-for-bank",
                                new Current(Math.max(
                                        0,
                                        given.value().amperes() - drawn.value().amperes())),
                                Rounding.DOWN,
                                Formula.LEFT_BESIDE_DRAW,
                                Input.of("I₁", given),
                                Input.of("I_on", drawn)))
                .orElse(given);
    }

    /**
     * All that stays on draws at once, for so much of the time that the mean is right: less is never left.
     *
     * @param key begins the names of its figures
     * @param name the last part of the figure's own
     */
    private static Figure<Current> shared(
            String key, String name, Figure<Current> current, List<Giving> parts, Bottleneck supply, Charged it) {
        Voltage volts = it.charging().voltage().value();
        double asked = parts.stream()
                .mapToDouble(part -> volts.volts()
                        * part.current().value().amperes()
                        * MainsCharger.of(part.charging()).inputPerWatt())
                .sum();
        double loads =
                it.staying().stream().mapToDouble(load -> load.value().watts()).sum();
        double drawing = loads > 0 ? it.absence().power().value().watts() / loads : 0;
        double free = asked > 0 ? Math.min(1, supply.power().watts() / asked) : 1;
        double beside = asked > 0 ? Math.max(0, Math.min(1, (supply.power().watts() - loads) / asked)) : 1;
        List<Input> inputs = new ArrayList<>(List.of(Input.of("I₁", current)));
        it.staying().forEach(load -> inputs.add(Input.of("P", load)));
        if (loads > 0) {
            inputs.add(Input.of("P_mean", it.absence().power()));
        }
        inputs.add(supply.most(key + ".supply", it.book()));
        for (Giving part : parts) {
            MainsCharger mains = MainsCharger.of(part.charging());
            inputs.addAll(List.of(Input.of("I", part.current()), mains.efficiencyInput(), mains.powerFactorInput()));
        }
        inputs.add(Input.of("U", it.charging().voltage()));
        return it.book()
                .enter(
                        key + name,
                        current.value().times(drawing * beside + (1 - drawing) * free),
                        Rounding.DOWN,
                        loads > 0 ? Formula.LEFT_BESIDE_LOADS : Formula.LEFT_OF_SHARED,
                        inputs);
    }

    private static boolean neverFedFromShore(Job job) {
        return job.inverter().changeover() == null
                || job.inverter()
                        .changeover()
                        .kind()
                        .known()
                        .filter(ChangeoverKind.NONE::equals)
                        .isPresent();
    }

    private static Optional<Figure<Energy>> sun(
            String key, Charging charging, @Nullable Given<TimeSpan> sun, FigureBook book) {
        Given<Power> peak = charging.peak();
        if (sun == null || sun.value() == null || peak == null || peak.value() == null) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                key,
                new Energy(peak.value().watts() * sun.value().hours() * SOLAR_YIELD),
                Rounding.DOWN,
                Formula.DAY_SOLAR,
                Input.of("P_peak", peak),
                Input.of("t_sun", sun)));
    }

    private static Optional<Figure<Energy>> run(
            String key, Charging charging, Optional<RechargeFigures> recharge, Charged it) {
        Given<TimeSpan> perDay = charging.perDay();
        if (perDay == null || perDay.value() == null || recharge.isEmpty()) {
            return Optional.empty();
        }
        Acceptance acceptance = Acceptance.of(it.bank().battery().chemistry());
        Figure<Current> current = recharge.get().current();
        return Optional.of(it.book()
                .enter(
                        key,
                        new Energy(acceptance.bulkEfficiency().fraction()
                                * it.bank().nominal().value().volts()
                                * current.value().amperes()
                                * Objects.requireNonNull(perDay.value()).hours()),
                        Rounding.DOWN,
                        Formula.DAY_CHARGED,
                        Input.usual("η₁", acceptance.bulkEfficiency(), acceptance.citation()),
                        Input.of("U", it.bank().nominal()),
                        Input.of("I", current),
                        Input.of("t", perDay)));
    }
}
