package org.quaybook.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.GeneratorFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Bank;
import org.quaybook.job.Cable;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Job;
import org.quaybook.job.Pole;
import org.quaybook.job.Route;
import org.quaybook.job.Shore;
import org.quaybook.job.WireColour;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;

/** How the parts were chosen, placed and put together. */
final class FittingChecks {

    private static final int MOST_LUGS = 4;

    /** Least insulation in engine spaces by the American rules (from memory); the metric tables hold none below 70 °C. */
    private static final Temperature LEAST_INSULATION_AWG = new Temperature(75);

    /** Length one way from which thick cable costs more than moving the inverter, for each volt (common practice). */
    private static final double METRES_PER_VOLT = 1.5 / 12;

    private static final Power LARGE = new Power(1000);

    private final Job job;
    private final Figures figures;
    private final Findings findings;

    private FittingChecks(Job job, Figures figures, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        FittingChecks checks = new FittingChecks(job, figures, findings);
        checks.bank(job.bank());
        for (Cable cable : job.cables()) {
            checks.cable(cable, tables.rules().conductors());
        }
        if (job.craft().kind() != CraftKind.CABIN
                && !checks.polarityShown(tables.rules().conductors())) {
            job.acCircuits().stream()
                    .filter(circuit -> Given.isNo(circuit.twoPole()))
                    .forEach(circuit ->
                            findings.add(Severity.DECIDE, Check.ONE_POLE_BREAKER, circuit.place(), circuit.id()));
        }
        checks.onePole();
        checks.distance();
        checks.inverter(job.inverter());
        if (job.shore() != null) {
            checks.shore(job.shore());
        }
        if (job.generator() != null) {
            checks.generator(job.generator());
        }
        checks.passThroughUnknown();
    }

    /**
     * By the American rules a breaker of one pole may stay where a lamp shows that a pedestal is reversed and the shore
     * breaker, which opens both conductors, is there to part it.
     */
    private boolean polarityShown(ConductorSize.Series series) {
        Shore shore = job.shore();
        return series == ConductorSize.Series.AWG
                && shore != null
                && Given.isYes(shore.polarityLamp())
                && Given.maybe(shore.breaker()).isPresent();
    }

    private void bank(Bank bank) {
        if (Given.isNo(bank.blocksAlike())) {
            findings.add(Severity.FORBIDS, Check.BLOCKS_MIXED, bank.place());
        }
        if (Given.isNo(bank.linksAlike())) {
            findings.add(Severity.DECIDE, Check.LINKS_UNEQUAL, bank.place());
        }
        if (Given.isYes(bank.wingNuts())) {
            findings.add(Severity.FORBIDS, Check.WING_NUTS, bank.place());
        }
        Given.maybe(bank.lugsPerStud())
                .filter(lugs -> lugs > MOST_LUGS)
                .ifPresent(lugs -> findings.add(Severity.DECIDE, Check.LUGS_CROWDED, bank.place(), lugs, MOST_LUGS));
        if (Given.isNo(bank.largestLugLowest())) {
            findings.add(Severity.DECIDE, Check.LUG_ORDER, bank.place());
        }
        boolean silent =
                bank.protection() != null && Given.isNo(bank.protection().alarmBefore());
        if (silent
                && job.charging().stream()
                        .anyMatch(it -> it.kind() == ChargeKind.ALTERNATOR && !Given.isYes(it.starterBattery()))) {
            findings.add(Severity.DECIDE, Check.PROTECTION_SILENT, bank.place());
        }
    }

    private void cable(Cable cable, ConductorSize.Series series) {
        Optional<Temperature> insulation = cable.insulation().known();
        if (series == ConductorSize.Series.AWG
                && cable.route().value() == Route.ENGINE_SPACE
                && insulation.isPresent()
                && insulation.get().compareTo(LEAST_INSULATION_AWG) < 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.ENGINE_SPACE_INSULATION,
                    cable.insulation().place(),
                    cable.id(),
                    Stated.asGiven(insulation.get()),
                    Stated.asGiven(LEAST_INSULATION_AWG));
        }
        if (series == ConductorSize.Series.AWG
                && negative(cable)
                && Given.maybe(cable.colour()).filter(WireColour.BLACK::equals).isPresent()) {
            findings.add(Severity.NOTE, Check.BLACK_NEGATIVE, cable.place(), cable.id());
        }
        if (Given.isYes(cable.withAc())) {
            findings.add(Severity.DECIDE, Check.AC_DC_TOGETHER, cable.place(), cable.id());
        }
    }

    private static boolean negative(Cable cable) {
        return cable.side().filter(Pole.NEGATIVE::equals).isPresent();
    }

    /** The way back is part of the way; a job that forgets it has half the drop and longer times. */
    private void onePole() {
        List<Cable> cables =
                figures.supply().runs().stream().map(RunFigures::cable).toList();
        Set<Optional<Pole>> poles = cables.stream().map(Cable::side).collect(Collectors.toSet());
        if (poles.size() == 1 && !poles.contains(Optional.<Pole>empty())) {
            findings.add(
                    Severity.FORBIDS,
                    Check.SUPPLY_ONE_POLE,
                    cables.get(0).place(),
                    cables.stream().map(Cable::id).toList());
        }
    }

    private void distance() {
        Length usual =
                new Length(METRES_PER_VOLT * figures.bank().system().value().volts());
        boolean large = figures.inverter().continuous().value().compareTo(LARGE) > 0;
        for (RunFigures run : figures.supply().runs()) {
            Optional<Length> length = run.cable().length().known();
            if (large && length.isPresent() && length.get().compareTo(usual) > 0) {
                findings.add(
                        Severity.NOTE,
                        Check.INVERTER_FAR,
                        run.cable().place(),
                        run.cable().id(),
                        Stated.asGiven(length.get()),
                        Stated.asGiven(usual),
                        Stated.up(run.drop().value().times(1 / length.get().metres())));
            }
        }
    }

    private void inverter(Inverter inverter) {
        if (Given.isYes(job.craft().petrolAboard())) {
            if (Given.isNo(inverter.ignitionProtected())) {
                findings.add(Severity.FORBIDS, Check.IGNITION_PROTECTION, inverter.place());
            } else if (!Given.isYes(inverter.ignitionProtected())) {
                findings.add(Severity.DECIDE, Check.IGNITION_UNKNOWN, inverter.place());
            }
        }
        if (Given.maybe(job.craft().petrolAboard()).isEmpty() && !Given.isYes(inverter.ignitionProtected())) {
            findings.add(Severity.DECIDE, Check.PETROL_UNKNOWN, job.craft().place());
        }
        if (inverter.searchMode() != null && Given.isYes(inverter.searchMode().on())) {
            findings.add(Severity.NOTE, Check.SEARCH_MODE, inverter.place());
        }
    }

    private boolean automatic() {
        return job.inverter().changeover() != null
                && job.inverter().changeover().kind().value() == ChangeoverKind.AUTOMATIC;
    }

    private static Optional<Current> comes(Shore shore) {
        return Given.maybe(shore.breaker()).or(() -> shore.inlet().known());
    }

    private Optional<Current> comes(Generator generator) {
        return Given.maybe(generator.breaker())
                .or(() -> figures.generator().flatMap(GeneratorFigures::current).map(Figure::value));
    }

    /** What nobody has written was held against nothing. */
    private void passThroughUnknown() {
        Optional<Current> most = Stream.concat(
                        Stream.ofNullable(job.shore()).flatMap(it -> comes(it).stream()),
                        Stream.ofNullable(job.generator()).flatMap(it -> comes(it).stream()))
                .max(Comparator.naturalOrder());
        if (automatic()
                && most.isPresent()
                && Given.maybe(job.inverter().passThrough()).isEmpty()) {
            findings.add(
                    Severity.NOTE, Check.PASS_THROUGH_UNKNOWN, job.inverter().place(), Stated.up(most.get()));
        }
    }

    /** Without a breaker of its own on the way it can give the changeover all its power. */
    private void generator(Generator generator) {
        Optional<Current> carries = Given.maybe(job.inverter().passThrough());
        Optional<Current> breaker = Given.maybe(generator.breaker());
        Optional<Current> comes = comes(generator);
        if (automatic()
                && carries.isPresent()
                && comes.isPresent()
                && comes.get().compareTo(carries.get()) > 0) {
            findings.add(
                    breaker.isPresent() ? Severity.FORBIDS : Severity.DECIDE,
                    Check.GENERATOR_PASS_THROUGH,
                    generator.place(),
                    Stated.up(comes.get()),
                    Stated.asGiven(carries.get()));
        }
    }

    private void shore(Shore shore) {
        Optional<Current> carries = Given.maybe(job.inverter().passThrough());
        Optional<Current> comes = comes(shore);
        if (automatic()
                && carries.isPresent()
                && comes.isPresent()
                && comes.get().compareTo(carries.get()) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.PASS_THROUGH,
                    job.inverter().place(),
                    Stated.asGiven(comes.get()),
                    Stated.asGiven(carries.get()));
        }
        if (job.craft().kind() == CraftKind.BOAT
                && Given.isYes(job.craft().metalHull())
                && !Given.isYes(shore.galvanicIsolator())
                && shore.transformer() == null) {
            findings.add(Severity.DECIDE, Check.GALVANIC_ISOLATOR, shore.place());
        }
    }
}
