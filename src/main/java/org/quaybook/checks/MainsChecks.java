package org.quaybook.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.BondLogic;
import org.quaybook.figures.BondLogic.Verdict;
import org.quaybook.figures.Figures;
import org.quaybook.figures.OnGenerator;
import org.quaybook.figures.SupplyMode;
import org.quaybook.figures.Tables;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Charging;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.NeutralBond;
import org.quaybook.job.Rcd;
import org.quaybook.job.RcdType;
import org.quaybook.job.Shore;
import org.quaybook.job.Socket;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.Transformer;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Found;

/** The AC side: residual current devices, neutral bond, changeover, shore inlet. */
final class MainsChecks {

    /** Of a supply, up or down from its nominal voltage: IEC 60038, from memory. */
    private static final double VOLTAGE_SPREAD = 0.1;

    private final Job job;
    private final Tables tables;
    private final BondLogic bonds;
    private final Findings findings;
    private final OnGenerator onGenerator;

    private MainsChecks(Job job, Figures figures, Tables tables, Findings findings) {
        this.job = job;
        this.bonds = figures.ac().bonds();
        this.tables = tables;
        this.findings = findings;
        this.onGenerator = new OnGenerator(job);
    }

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        MainsChecks checks = new MainsChecks(job, figures, tables, findings);
        checks.circuitsUnknown();
        checks.sourceMissing(Source.SHORE, job.shore());
        checks.sourceMissing(Source.GENERATOR, job.generator());
        job.acCircuits().forEach(checks::circuit);
        job.rcds().forEach(checks::rcd);
        checks.neutralBond();
        checks.changeover();
        checks.withoutChangeover();
        checks.generatorInterlock();
        checks.voltages();
        checks.inlet();
    }

    private void circuitsUnknown() {
        if (job.acCircuits().stream().noneMatch(it -> it.source().value() == Source.INVERTER)) {
            findings.add(Severity.DECIDE, Check.CIRCUITS_UNKNOWN, job.inverter().place());
        }
    }

    /** Most checks of a supply begin with what is written of it; a job that only names it would pass them all. */
    private void sourceMissing(Source source, @Nullable Object supply) {
        if (supply != null) {
            return;
        }
        List<Object> fed = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (AcCircuit circuit : job.acCircuits()) {
            if (circuit.source().value() == source) {
                fed.add(circuit.id());
                places.add(circuit.place());
            }
        }
        for (Rcd rcd : job.rcds()) {
            if (rcd.source().value() == source) {
                fed.add(rcd.id());
                places.add(rcd.place());
            }
        }
        for (Charging charging : job.charging()) {
            if (Given.maybe(charging.fedBy()).equals(Optional.of(source))) {
                fed.add(ChargeChecks.name(charging));
                places.add(charging.place());
            }
        }
        for (Socket socket : job.sockets()) {
            if (Stream.of(socket.shoreOn(), socket.shoreOff(), socket.generatorOn())
                    .anyMatch(by -> Given.maybe(by).equals(Optional.of(source)))) {
                fed.add(socket.name());
                places.add(socket.place());
            }
        }
        if (!fed.isEmpty()) {
            findings.add(Severity.DECIDE, Check.SOURCE_MISSING, places.get(0), source, fed);
        }
    }

    private void circuit(AcCircuit circuit) {
        if (circuit.source().value() == Source.INVERTER && circuit.rcd() == null) {
            findings.add(Severity.FORBIDS, Check.RCD_MISSING, circuit.place(), circuit.id(), circuit.name());
        }
        boolean fromShore = circuit.source().value() == Source.SHORE;
        boolean inletGuarded = job.shore() != null && job.shore().rcd() != null;
        if (fromShore && circuit.rcd() == null && !inletGuarded) {
            findings.add(Severity.FORBIDS, Check.RCD_MISSING_SHORE, circuit.place(), circuit.id(), circuit.name());
        }
        onGenerator(circuit);
        if (circuit.source().value() == Source.INVERTER && isUpstream(circuit.rcd())) {
            findings.add(
                    Severity.FORBIDS,
                    Check.RCD_UPSTREAM,
                    circuit.place(),
                    circuit.id(),
                    Objects.requireNonNull(circuit.rcd()));
        }
    }

    /**
     * An RCD behind the inverter sees all that its circuits take. One in the shore feed is passed by the generator, unless
     * it was seen to trip on it or all that the generator feeds passes an RCD of its own.
     */
    private void onGenerator(AcCircuit circuit) {
        Generator generator = job.generator();
        if (generator == null
                || generator.rcd() != null
                || circuit.source().value() == Source.INVERTER
                || !onGenerator.feeds(circuit).equals(Optional.of(Source.GENERATOR))) {
            return;
        }
        String rcd = circuit.rcd();
        if (rcd == null) {
            findings.add(Severity.FORBIDS, Check.RCD_MISSING_GENERATOR, circuit.place(), circuit.id(), circuit.name());
        } else if (isUpstream(rcd) && !trippedOnGenerator(rcd)) {
            findings.add(Severity.DECIDE, Check.RCD_ON_GENERATOR, circuit.place(), circuit.id(), circuit.name(), rcd);
        }
    }

    private boolean trippedOnGenerator(String rcd) {
        return job.tests().stream()
                .anyMatch(test -> test.test() == TestKind.RCD_TRIP
                        && test.of().contains(rcd)
                        && test.result() != null
                        && test.result().value() != null
                        && Given.maybe(test.source())
                                .filter(Source.GENERATOR::equals)
                                .isPresent());
    }

    private boolean isUpstream(@Nullable String id) {
        return job.rcds().stream()
                .anyMatch(rcd -> rcd.id().equals(id) && rcd.source().value() == Source.SHORE);
    }

    private void rcd(Rcd rcd) {
        Optional<Current> rating = rcd.rating().known();
        Current most = tables.rules().rcd().residual().value();
        if (rating.isPresent() && rating.get().compareTo(most) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.RCD_RATING,
                    rcd.place(),
                    rcd.id(),
                    Stated.asGiven(rating.get()),
                    Stated.asGiven(most));
        }
        if (rcd.type().value() == RcdType.AC) {
            findings.add(Severity.DECIDE, Check.RCD_TYPE, rcd.place(), rcd.id());
        }
    }

    private void neutralBond() {
        Place place = job.inverter().place();
        Optional<NeutralBond> bond = Given.maybe(job.inverter().neutralBond());
        if (bond.isEmpty()) {
            findings.add(Severity.DECIDE, Check.NEUTRAL_BOND_UNKNOWN, place);
        }
        if (verdict(SupplyMode.INVERTER) == Verdict.WRONG) {
            findings.add(Severity.FORBIDS, Check.NEUTRAL_BOND_MISSING, place);
        }
        if (bonds.tiedOnShore()) {
            findings.add(Severity.FORBIDS, Check.NEUTRAL_BOND_ALWAYS, place);
        }
        Changeover changeover = job.inverter().changeover();
        transformer();
        boolean behindTransformer = job.shore() != null && job.shore().transformer() != null;
        if (bond.filter(NeutralBond.INVERTER_ONLY::equals).isPresent()
                && !behindTransformer
                && changeover != null
                && Given.isNo(changeover.neutralBusPerSource())) {
            findings.add(
                    Severity.DECIDE, Check.NEUTRAL_BUS_COMMON, changeover.kind().place());
        }
        Generator generator = job.generator();
        if (generator != null && verdict(SupplyMode.GENERATOR) == Verdict.WRONG) {
            findings.add(Severity.FORBIDS, Check.GENERATOR_BOND, generator.place());
        } else if (generator != null && verdict(SupplyMode.GENERATOR) == Verdict.UNKNOWN) {
            findings.add(Severity.DECIDE, Check.GENERATOR_BOND_UNKNOWN, generator.place());
        }
    }

    /** Only what floats can do without the end of the shore's earth: it keeps galvanic currents off. */
    private void transformer() {
        Transformer transformer = job.shore() == null ? null : job.shore().transformer();
        if (transformer == null) {
            return;
        }
        Optional<Boolean> tied = Given.maybe(transformer.neutralTied());
        Optional<Boolean> goesOn = Given.maybe(transformer.shoreEarthGoesOn());
        boolean boat = job.craft().kind() == CraftKind.BOAT;
        if (tied.filter(it -> !it).isPresent()) {
            findings.add(Severity.FORBIDS, Check.TRANSFORMER_BOND, transformer.place());
        }
        if (boat && goesOn.filter(it -> it).isPresent()) {
            findings.add(Severity.DECIDE, Check.TRANSFORMER_EARTH, transformer.place());
        }
        if (tied.isEmpty() || (boat && goesOn.isEmpty())) {
            findings.add(Severity.DECIDE, Check.TRANSFORMER_UNKNOWN, transformer.place());
        }
    }

    private Verdict verdict(SupplyMode mode) {
        return bonds.of(mode).map(BondLogic.Mode::verdict).orElse(Verdict.RIGHT);
    }

    /** What a changeover passes on by turns must not differ; a transformer may stand between. */
    private void voltages() {
        Shore shore = job.shore();
        Changeover changeover = job.inverter().changeover();
        boolean apart = changeover != null && changeover.kind().value() == ChangeoverKind.NONE;
        if (shore == null || shore.voltage() == null || shore.transformer() != null || apart) {
            return;
        }
        Optional<Voltage> gives = Given.maybe(job.inverter().output().voltage());
        Optional<Voltage> comes = Given.maybe(shore.voltage());
        if (gives.isPresent() && comes.isPresent() && Math.abs(comes.get().ratioTo(gives.get()) - 1) > VOLTAGE_SPREAD) {
            findings.add(
                    Severity.DECIDE,
                    Check.SHORE_VOLTAGE,
                    shore.voltage().place(),
                    Stated.asGiven(comes.get()),
                    Stated.asGiven(gives.get()));
        }
    }

    private void changeover() {
        Changeover changeover = job.inverter().changeover();
        boolean twoSources = job.shore() != null || job.generator() != null;
        if (!twoSources) {
            return;
        }
        if (changeover == null) {
            findings.add(
                    Severity.DECIDE, Check.CHANGEOVER_UNKNOWN, job.inverter().place());
            return;
        }
        if (changeover.kind().value() == ChangeoverKind.NONE) {
            return;
        }
        if (Given.isNo(changeover.interlocked()) || Given.isNo(changeover.switchesNeutral())) {
            findings.add(
                    Severity.FORBIDS,
                    Check.CHANGEOVER_INTERLOCK,
                    changeover.kind().place());
        } else if (!Given.isYes(changeover.interlocked()) || !Given.isYes(changeover.switchesNeutral())) {
            findings.add(
                    Severity.DECIDE, Check.CHANGEOVER_UNKNOWN, changeover.kind().place());
        }
    }

    /** What is fed by turns from two sources needs something that changes over. */
    private void withoutChangeover() {
        Changeover changeover = job.inverter().changeover();
        if (changeover == null || changeover.kind().value() != ChangeoverKind.NONE) {
            return;
        }
        List<Socket> both =
                job.sockets().stream().filter(MainsChecks::inverterToo).toList();
        if (!both.isEmpty()) {
            findings.add(
                    Severity.FORBIDS,
                    Check.CHANGEOVER_MISSING,
                    both.get(0).place(),
                    both.stream().map(Socket::name).toList());
        }
    }

    /** Whether the inverter feeds a socket at one time and another source at another. */
    private static boolean inverterToo(Socket socket) {
        List<Source> sources = Stream.of(socket.shoreOn(), socket.shoreOff(), socket.generatorOn())
                .flatMap(by -> Given.maybe(by).stream())
                .filter(source -> source != Source.NOTHING)
                .distinct()
                .toList();
        return sources.contains(Source.INVERTER) && sources.size() > 1;
    }

    /** The changeover of the inverter parts it from both, but not both from each other. */
    private void generatorInterlock() {
        Generator generator = job.generator();
        if (generator == null || job.shore() == null) {
            return;
        }
        if (Given.isNo(generator.interlocked())) {
            findings.add(Severity.FORBIDS, Check.GENERATOR_INTERLOCK, generator.place());
        } else if (!Given.isYes(generator.interlocked())) {
            findings.add(Severity.DECIDE, Check.GENERATOR_INTERLOCK_UNKNOWN, generator.place());
        }
    }

    private void inlet() {
        Shore shore = job.shore();
        if (shore == null) {
            return;
        }
        Given<Length> distance = shore.breakerDistance();
        if (distance == null || distance.value() == null) {
            boolean asked = Given.maybe(shore.breaker()).isPresent();
            tables.rules()
                    .inletToBreaker()
                    .filter(most -> asked)
                    .ifPresent(most -> findings.add(
                            Severity.DECIDE,
                            Check.SHORE_BREAKER_DISTANCE_UNKNOWN,
                            shore.place(),
                            Stated.asGiven(most.value())));
            return;
        }
        Length length = distance.value();
        tables.rules()
                .inletToBreaker()
                .map(Found::value)
                .filter(most -> length.compareTo(most) > 0)
                .ifPresent(most -> findings.add(
                        Severity.FORBIDS,
                        Check.SHORE_BREAKER_DISTANCE,
                        distance.place(),
                        Stated.up(length),
                        Stated.asGiven(most)));
    }
}
