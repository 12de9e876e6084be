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
 * @param summerDay energy that it brings on a usual summer day; empty if its hours are not written
 * @param winterDay energy that it brings on a usual winter day
 */
public record ChargeFigures(
        Charging charging,
        String key,
        Optional<RechargeFigures> recharge,
        Optional<Figure<Energy>> summerDay,
        Optional<Figure<Energy>> winterDay) {

    /** Part of the panels' peak power that reaches the bank over a day (common practice, no source). */
    static final double SOLAR_YIELD = 0.75;

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
     * @param meanwhile what the inverter takes while it feeds what stays on
     */
    record Charged(
            Job job,
            BankFigures bank,
            BankCharging charging,
            Figure<Power> meanwhile,
            RechargeFigures.After after,
            FigureBook book) {}

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
            List<RechargeFigures> parts = chargers.stream()
                    .filter(charger -> way.has(charger.charging()))
                    .flatMap(charger -> charger.recharge().stream())
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
                                key,
                                sum,
                                left(key, sum, way != Way.ENGINE_RUNNING, it),
                                it.bank(),
                                it.charging(),
                                it.after(),
                                it.book())));
            }
        }
        return together;
    }

    private static ChargeFigures of(Charging charging, String key, Charged it) {
        boolean solar = charging.kind() == ChargeKind.SOLAR;
        Optional<RechargeFigures> recharge = solar
                ? Optional.empty()
                : current(charging, key, it)
                        .map(current -> RechargeFigures.of(
                                key,
                                current,
                                left(key, current, onMains(charging), it),
                                it.bank(),
                                it.charging(),
                                it.after(),
                                it.book()));
        return new ChargeFigures(
                charging,
                key,
                recharge,
                solar
                        ? sun(key + ".summer-day", charging, charging.summerSun(), it.book())
                        : run(key + ".summer-day", charging, recharge, it),
                solar
                        ? sun(key + ".winter-day", charging, charging.winterSun(), it.book())
                        : run(key + ".winter-day", charging, recharge, it));
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
        Generator generator = it.job().generator();
        if (MainsCharger.fedBy(charging, Source.GENERATOR)
                && generator != null
                && generator.power().value() != null) {
            return Optional.of(least(
                    charging,
                    key,
                    stated,
                    BankFigures.seen(generator.power()),
                    Formula.GENERATOR_LIMIT,
                    List.of(Input.of("P", generator.power())),
                    it));
        }
        Given<Current> limit = it.job().inverter().inputLimit();
        Optional<Given<Voltage>> mains = MainsCharger.shoreVoltage(it.job());
        if (MainsCharger.fedBy(charging, Source.SHORE) && limit != null && limit.value() != null && mains.isPresent()) {
            Voltage volts = BankFigures.seen(mains.get());
            return Optional.of(least(
                    charging,
                    key,
                    stated,
                    new Power(volts.volts() * limit.value().amperes()),
                    Formula.INPUT_LIMIT,
                    List.of(Input.of("I_limit", limit), Input.of("U_mains", mains.get())),
                    it));
        }
        return Optional.of(it.book().stated(key + ".current", stated));
    }

    private static Figure<Current> least(
            Charging charging,
            String key,
            Given<Current> stated,
            Power supply,
            Formula formula,
            List<Input> supplyInputs,
            Charged it) {
        MainsCharger mains = MainsCharger.of(charging);
        double most = supply.watts()
                / mains.inputPerWatt()
                / it.charging().voltage().value().volts();
        List<Input> inputs = new ArrayList<>(List.of(Input.of("I₁", stated)));
        inputs.addAll(supplyInputs);
        inputs.addAll(List.of(
                mains.efficiencyInput(),
                mains.powerFactorInput(),
                Input.of("U", it.charging().voltage())));
        return it.book()
                .enter(
                        key + ".current",
                        new Current(Math.min(most, BankFigures.seen(stated).amperes())),
                        Rounding.DOWN,
                        formula,
                        inputs);
    }

    /** On the mains the charger carries the bank alone, unless the inverter's circuits are never fed from there. */
    private static Figure<Current> left(String key, Figure<Current> current, boolean onMains, Charged it) {
        boolean relieved = onMains && !neverFedFromShore(it.job());
        double load = relieved
                ? 0
                : it.meanwhile().value().watts() / it.bank().nominal().value().volts();
        return it.book()
                .enter(
                        key + ".left-for-bank",
                        new Current(Math.max(0, current.value().amperes() - load)),
                        Rounding.DOWN,
                        relieved ? Formula.ALL_FOR_BANK : Formula.LEFT_FOR_BANK,
                        relieved
                                ? List.of(Input.of("I₁", current))
                                : List.of(
                                        Input.of("I₁", current),
                                        Input.of("P", it.meanwhile()),
                                        Input.of("U", it.bank().nominal())));
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
