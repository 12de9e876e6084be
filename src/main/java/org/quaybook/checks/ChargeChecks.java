package org.quaybook.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.quaybook.diag.Severity;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.ChargeCable;
import org.quaybook.figures.ChargeCircuit;
import org.quaybook.figures.ChargeFigures;
import org.quaybook.figures.ChargingAtOnce;
import org.quaybook.figures.DayFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Formula;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.GeneratorFigures;
import org.quaybook.figures.RechargeFigures;
import org.quaybook.figures.ReturnFigures;
import org.quaybook.figures.Tables;
import org.quaybook.figures.Working;
import org.quaybook.job.Bank;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Fuse;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.quantity.ClockTime;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;
import org.quaybook.reference.Rulebook;

/** What charges the bank against what the bank, the alternator and the shore supply bear. */
final class ChargeChecks {

    private static final double COLD_MARGIN_KELVIN = 2;

    /** Share of a supply that charging may take for hours (common practice). */
    private static final double MOST_FOR_HOURS = 0.8;

    private final Job job;
    private final Figures figures;
    private final Findings findings;

    private ChargeChecks(Job job, Figures figures, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        ChargeChecks checks = new ChargeChecks(job, figures, findings);
        for (Charging charging : job.charging()) {
            checks.cable(charging);
            checks.cold(charging);
            checks.alternator(charging);
            checks.limit(charging, tables.rules());
            checks.loop(charging);
        }
        checks.unjudged(tables.rules());
        figures.charging().forEach(charger -> checks.drop(charger, tables.rules()));
        figures.charging().forEach(checks::beaten);
        checks.shore();
        checks.generator();
        checks.sum();
        checks.day();
    }

    /** Its name in the job, else what kind it is. */
    static Object name(Charging charging) {
        return charging.name() == null ? charging.kind() : charging.name();
    }

    /**
     * A source that gives no more than the cable bears needs no fuse at its own end: only the bank can then overload the
     * cable.
     */
    private void cable(Charging charging) {
        Optional<ChargeCircuit> circuit = figures(charging).circuit();
        if (circuit.isEmpty()) {
            return;
        }
        ChargeCircuit it = circuit.get();
        Conductor cable = Given.maybe(charging.cable()).orElseThrow();
        Current gives = most(charging);
        if (gives.compareTo(it.allowed().value()) > 0) {
            boolean sure = Given.maybe(charging.route()).isPresent() || gives.compareTo(it.allowedElsewhere()) > 0;
            findings.add(
                    sure ? Severity.FORBIDS : Severity.DECIDE,
                    sure ? Check.CHARGE_CABLE : Check.CHARGE_CABLE_ENGINE,
                    charging.place(),
                    name(charging),
                    Stated.asGiven(gives),
                    cable,
                    it.allowed().stated());
        }
        fuse(charging, cable, it);
    }

    private ChargeFigures figures(Charging charging) {
        return figures.charging().stream()
                .filter(it -> it.charging().equals(charging))
                .findFirst()
                .orElseThrow();
    }

    /** Sources of whose cable nothing could be checked, told once. */
    private void unjudged(Rulebook rules) {
        List<Charging> unjudged = job.charging().stream()
                .filter(charging -> (ChargeCable.judged(charging, rules).isEmpty() && !isInTheInverter(charging))
                        || most(charging).amperes() <= 0)
                .toList();
        if (!unjudged.isEmpty()) {
            findings.add(
                    Severity.NOTE,
                    Check.CHARGE_UNJUDGED,
                    unjudged.get(0).place(),
                    unjudged.stream().map(ChargeChecks::name).toList());
        }
    }

    /** A charger in one case with the inverter has no cable of its own: all that it gives passes every cable of the feed. */
    private boolean isInTheInverter(Charging charging) {
        return charging.kind() == ChargeKind.SHORE_CHARGER
                && charging.cable() == null
                && figures.supply().runs().stream()
                        .allMatch(run -> charging.through().contains(run.cable().id()));
    }

    /** The rulebook's limit for what is not critical is asked of any feed; charging well asks for less. */
    private void drop(ChargeFigures charger, Rulebook rules) {
        Charging charging = charger.charging();
        Optional<ChargeCable> cable = charger.cable();
        if (cable.isEmpty()
                || cable.get()
                                .drop()
                                .value()
                                .compareTo(cable.get().allowedDrop().value())
                        <= 0) {
            return;
        }
        ChargeCable it = cable.get();
        boolean beyond = it.share().value().compareTo(rules.otherDrop().value()) > 0;
        findings.addWithFit(
                beyond ? Severity.DECIDE : Severity.NOTE,
                Check.CHARGE_DROP,
                charging.place(),
                it.least(),
                name(charging),
                ChargeCable.judged(charging, rules).orElseThrow(),
                it.most().stated(),
                it.drop().stated(),
                it.share().stated(),
                it.allowedDrop().stated());
    }

    /** The bank feeds a fault in this cable from its own end, whatever the charger at the other end does. */
    private void fuse(Charging charging, Conductor cable, ChargeCircuit circuit) {
        Optional<FuseFigures> fuse = figures.fuses().stream()
                .filter(it -> it.fuse() != null && it.fuse().id().equals(charging.fuse()))
                .findFirst();
        if (fuse.isEmpty()) {
            findings.add(
                    Severity.DECIDE,
                    Check.CHARGE_FUSE,
                    charging.place(),
                    name(charging),
                    cable,
                    figures.bank().shortCircuit().stated(),
                    circuit.allowed().stated());
            return;
        }
        Optional<Current> rating = fuse.get().rating().map(Figure::value);
        Figure<Current> most = circuit.mostFuse();
        if (rating.filter(it -> it.compareTo(most.value()) > 0).isPresent()) {
            findings.add(
                    Severity.FORBIDS,
                    Check.CHARGE_FUSE_LARGE,
                    charging.place(),
                    fuse.get().id(),
                    Stated.asGiven(rating.get()),
                    name(charging),
                    cable,
                    most.stated());
        }
        Optional<Figure<Current>> least = circuit.leastFuse();
        if (least.isPresent()
                && rating.filter(it -> it.compareTo(least.get().value()) < 0).isPresent()) {
            findings.add(
                    Severity.DECIDE,
                    Check.CHARGE_FUSE_SMALL,
                    charging.place(),
                    fuse.get().id(),
                    Stated.asGiven(rating.get()),
                    name(charging),
                    Stated.up(most(charging)),
                    least.get().stated());
        }
    }

    private Current most(Charging charging) {
        return ChargingAtOnce.given(charging, figures.bank().nominal().value());
    }

    private void cold(Charging charging) {
        Bank bank = job.bank();
        if (!BankFigures.isLithium(bank) || Given.isYes(charging.coldStop())) {
            return;
        }
        Temperature least = Optional.ofNullable(bank.protection())
                .flatMap(protection -> Given.maybe(protection.chargeAbove()))
                .or(() -> figures.bank().battery().chargeableAbove())
                .orElse(new Temperature(0));
        Optional<Temperature> coldest = bank.temperature().known();
        if (coldest.isPresent() && coldest.get().kelvinAbove(least) < COLD_MARGIN_KELVIN) {
            findings.add(
                    Severity.FORBIDS,
                    Check.COLD_CHARGE,
                    charging.place(),
                    name(charging),
                    Stated.down(coldest.get()),
                    Stated.up(least));
        }
    }

    /** One whose current is not written gives all that it can. */
    private void alternator(Charging charging) {
        if (charging.kind() != ChargeKind.ALTERNATOR
                || !BankFigures.isLithium(job.bank())
                || Given.isYes(charging.temperatureSensor())) {
            return;
        }
        Current gives = most(charging);
        Optional<Current> rated = Given.maybe(charging.rated());
        boolean limited = Given.isYes(charging.currentLimited())
                && Given.maybe(charging.current()).isPresent();
        if (rated.isEmpty() && limited) {
            findings.add(
                    Severity.NOTE,
                    Check.ALTERNATOR_RATING_UNWRITTEN,
                    charging.place(),
                    name(charging),
                    Stated.up(gives));
        } else if (rated.isEmpty()) {
            findings.add(Severity.DECIDE, Check.ALTERNATOR_UNKNOWN, charging.place(), name(charging));
        } else if (!figures(charging).bearsForHours(gives)) {
            findings.add(
                    Severity.DECIDE,
                    Check.ALTERNATOR_HEAT,
                    charging.place(),
                    name(charging),
                    Stated.up(gives),
                    Stated.asGiven(rated.get()),
                    figures(charging).lasting().orElseThrow().stated());
        }
    }

    /** Asked only where something that bears what is written does not bear the rating. */
    private void limit(Charging charging, Rulebook rules) {
        Optional<Current> rated = ChargingAtOnce.perhaps(charging);
        if (rated.isEmpty()) {
            return;
        }
        List<Object> tooSmall = tooSmallFor(rated.get(), charging, rules);
        if (!tooSmall.isEmpty()) {
            findings.add(
                    Severity.DECIDE,
                    Check.ALTERNATOR_LIMIT_UNKNOWN,
                    charging.place(),
                    name(charging),
                    Stated.asGiven(most(charging)),
                    Stated.asGiven(rated.get()),
                    tooSmall);
        }
    }

    private List<Object> tooSmallFor(Current rated, Charging charging, Rulebook rules) {
        Current written = most(charging);
        Predicate<Current> tooSmall = bears -> bears.compareTo(rated) < 0 && bears.compareTo(written) >= 0;
        double load = rules.fuseLoad().value().fraction();
        List<Object> names = new ArrayList<>();
        ChargeCable.judged(charging, rules)
                .filter(cable -> tooSmall.test(
                        figures(charging).circuit().orElseThrow().allowed().value()))
                .ifPresent(names::add);
        figures.fuses().stream()
                .filter(it -> it.fuse() != null && carries(it.fuse(), charging))
                .filter(it -> it.rating()
                        .filter(rating -> tooSmall.test(rating.value().times(load)))
                        .isPresent())
                .forEach(it -> names.add(it.id()));
        figures.supply().runs().stream()
                .filter(run -> figures.way().passes(charging, Set.of(run.cable().id())))
                .filter(run -> tooSmall.test(run.allowed().value()))
                .forEach(run -> names.add(run.cable().id()));
        boolean hot = BankFigures.isLithium(job.bank())
                && !Given.isYes(charging.temperatureSensor())
                && figures(charging).bearsForHours(written);
        if (hot) {
            names.add(name(charging));
        }
        return List.copyOf(names);
    }

    private boolean carries(Fuse fuse, Charging charging) {
        Set<String> passed = new TreeSet<>(fuse.protects());
        passed.add(fuse.id());
        return charging.isFusedBy(fuse) || (!fuse.isBranch() && figures.way().passes(charging, passed));
    }

    private void loop(Charging charging) {
        if (charging.kind() == ChargeKind.SHORE_CHARGER
                && Given.maybe(charging.fedBy()).orElse(Source.SHORE) == Source.INVERTER) {
            findings.add(Severity.FORBIDS, Check.SOURCE_LOOP, charging.place(), name(charging));
        }
    }

    /** What draws in the minute after shore power has come back. */
    private void shore() {
        Shore shore = job.shore();
        Optional<ReturnFigures> returning = figures.shoreReturn();
        if (shore == null || returning.isEmpty() || returning.get().chargers().isEmpty()) {
            return;
        }
        ReturnFigures it = returning.get();
        if (it.byItself().value().compareTo(it.supply().value()) > 0 && !it.limited()) {
            findings.add(
                    Severity.DECIDE,
                    Check.SHORE_OVERLOAD,
                    shore.place(),
                    it.chargers().stream()
                            .map(charger -> name(charger.charging()))
                            .toList(),
                    it.byItself().stated(),
                    it.supply().stated(),
                    it.fits().stated());
            return;
        }
        if (!it.limited() && it.byItself().value().compareTo(it.supply().value().times(MOST_FOR_HOURS)) > 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.SHORE_NEARLY_FULL,
                    shore.place(),
                    it.byItself().stated(),
                    it.supply().stated());
        }
        Figure<Current> most = it.withHeater();
        if (it.heater().isPresent() && most.value().compareTo(it.supply().value()) > 0) {
            findings.add(
                    Severity.NOTE,
                    Check.SHORE_RETURN,
                    shore.place(),
                    it.heater().get(),
                    most.stated(),
                    it.supply().stated());
        }
    }

    private void generator() {
        Generator generator = job.generator();
        if (generator == null || figures.generator().isEmpty()) {
            return;
        }
        GeneratorFigures it = figures.generator().get();
        it.beyond()
                .forEach(appliance -> findings.add(
                        Severity.NOTE,
                        Check.GENERATOR_BEYOND,
                        generator.place(),
                        appliance.appliance().name(),
                        appliance.power().stated(),
                        appliance.startPower().stated(),
                        it.shortTime().stated()));
        if (!it.carries()) {
            findings.add(
                    Severity.DECIDE,
                    Check.GENERATOR_SMALL,
                    generator.place(),
                    it.power().stated(),
                    it.charger().stated(),
                    besideCharging(it),
                    it.needed().stated(),
                    it.fits().stated());
        } else if (it.startsTooHard() && it.beyond().isEmpty()) {
            findings.add(
                    Severity.NOTE,
                    Check.GENERATOR_START,
                    generator.place(),
                    it.shortTime().stated(),
                    it.starter().orElse("—"),
                    it.start().stated());
        }
    }

    private List<String> besideCharging(GeneratorFigures it) {
        List<String> names =
                Stream.concat(it.largest().stream(), it.staying().stream()).toList();
        return names.isEmpty() ? List.of("—") : names;
    }

    /** What stays on takes all that a charger gives, or all that the supply of one lets through. */
    private void beaten(ChargeFigures charger) {
        charger.recharge()
                .filter(it -> it.left().value().amperes() <= 0)
                .ifPresent(it -> findings.add(
                        Severity.DECIDE,
                        Check.CHARGER_BEATEN,
                        charger.charging().place(),
                        name(charger.charging()),
                        it.current().stated(),
                        taken(it).stated()));
    }

    /** What stays on takes of the supply itself, or of the bank through the inverter, as what is left was reckoned. */
    private Figure<Power> taken(RechargeFigures charged) {
        Working working = charged.left().working();
        boolean atTheSupply = working.formula() == Formula.LEFT_BESIDE_LOADS
                || (working.formula() == Formula.LEFT_BESIDE_DRAW
                        && working.inputs().get(0).value() instanceof Current passes
                        && passes.amperes() <= 0);
        return atTheSupply ? figures.absence().power() : figures.absence().load();
    }

    /** A usual day that a full bank does not bring to its end. */
    private void day() {
        figures.day().courses().stream()
                .filter(course -> course.season() == DayFigures.Season.DARK)
                .flatMap(course -> course.cutOut().stream())
                .forEach(end -> findings.add(
                        Severity.NOTE,
                        Check.DAY_CUT_OUT,
                        job.bank().place(),
                        new ClockTime(end.at().value()),
                        end.running().isEmpty() ? "—" : end.running()));
    }

    private void sum() {
        Optional<Figure<Current>> charged = figures.bankLoad().charged();
        if (charged.isEmpty()) {
            return;
        }
        Current sum = charged.get().value();
        Figure<Current> limit = figures.bankCharging().limit();
        Figure<Current> cold = figures.bankCharging().coldLimit();
        Bank bank = job.bank();
        if (sum.compareTo(limit.value()) > 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.CHARGE_CURRENT,
                    bank.place(),
                    charged.get().stated(),
                    limit.stated());
        }
        // Where it must not be charged at all, the check of each source speaks.
        if (cold.value().amperes() > 0
                && cold.value().compareTo(limit.value()) < 0
                && sum.compareTo(cold.value()) > 0) {
            findings.add(
                    Severity.NOTE,
                    Check.CHARGE_COLD,
                    bank.place(),
                    charged.get().stated(),
                    cold.stated(),
                    bank.temperature().known().map(Stated::down).orElseThrow());
        }
    }
}
