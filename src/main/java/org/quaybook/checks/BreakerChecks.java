package org.quaybook.checks;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.AcFigures;
import org.quaybook.figures.AcFigures.CableFigures;
import org.quaybook.figures.AcFigures.CircuitFigures;
import org.quaybook.figures.AcFigures.Opener;
import org.quaybook.figures.AcFigures.RcdFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Stated;

/** AC breakers against their cables and against what the inverter can give, and the standing leakage. */
final class BreakerChecks {

    private final Job job;
    private final AcFigures ac;
    private final Findings findings;

    private BreakerChecks(Job job, Figures figures, Findings findings) {
        this.job = job;
        this.ac = figures.ac();
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Findings findings) {
        BreakerChecks checks = new BreakerChecks(job, figures, findings);
        for (CircuitFigures circuit : checks.ac.circuits()) {
            checks.cable(
                    circuit.circuit().breaker().known(),
                    circuit.cable(),
                    size(circuit.circuit().cable()),
                    circuit.circuit().id(),
                    circuit.circuit().place());
            checks.load(circuit);
            checks.disconnection(circuit);
        }
        checks.circuitsUnjudged();
        checks.shore();
        checks.ac.rcds().forEach(checks::leakage);
    }

    private void load(CircuitFigures circuit) {
        Optional<Current> rating = circuit.circuit().breaker().known();
        circuit.largest()
                .filter(it -> rating.isPresent() && it.current().value().compareTo(rating.get()) > 0)
                .ifPresent(it -> findings.add(
                        Severity.DECIDE,
                        Check.CIRCUIT_LOAD,
                        it.appliance().place(),
                        it.appliance().name(),
                        it.current().stated(),
                        circuit.circuit().id(),
                        rating.get()));
    }

    /** Too much in every way of laying forbids; too much only in the way that cools worst is for the installer to look up. */
    private void cable(
            Optional<Current> breaker,
            Optional<CableFigures> cable,
            Optional<ConductorSize> size,
            Object name,
            Place place) {
        if (cable.isEmpty() && size.isPresent()) {
            findings.add(Severity.DECIDE, Check.BREAKER_UNJUDGED, place, name, size.get());
        }
        if (breaker.isEmpty()
                || cable.isEmpty()
                || breaker.get().compareTo(cable.get().allowed().value()) <= 0) {
            return;
        }
        boolean sure =
                cable.get().laidKnown() || breaker.get().compareTo(cable.get().allowedAtBest()) > 0;
        findings.add(
                sure ? Severity.FORBIDS : Severity.DECIDE,
                sure ? Check.BREAKER_OVER_CABLE : Check.BREAKER_CABLE_LAID,
                place,
                name,
                Stated.asGiven(breaker.get()),
                size.orElseThrow(),
                cable.get().allowed().stated(),
                cable.get()
                        .mostBreaker()
                        .map(figure -> figure.stated())
                        .orElseGet(() -> cable.get().allowed().stated()));
    }

    /** Circuits of whose cable nothing could be checked, told once. */
    private void circuitsUnjudged() {
        List<AcCircuit> unjudged = job.acCircuits().stream()
                .filter(circuit -> size(circuit.cable()).isEmpty()
                        || circuit.breaker().known().isEmpty())
                .toList();
        if (!unjudged.isEmpty()) {
            findings.add(
                    Severity.NOTE,
                    Check.CIRCUIT_UNJUDGED,
                    unjudged.get(0).place(),
                    unjudged.stream().map(AcCircuit::id).toList());
        }
    }

    private static Optional<ConductorSize> size(@Nullable Given<ConductorSize> cable) {
        return Given.maybe(cable);
    }

    private void disconnection(CircuitFigures circuit) {
        if (circuit.onShort().filter(Opener.INVERTER::equals).isPresent()) {
            findings.add(
                    Severity.NOTE,
                    Check.BREAKER_ON_BATTERY,
                    circuit.circuit().place(),
                    circuit.circuit().id(),
                    ac.inverterFault().orElseThrow().stated(),
                    circuit.trip().orElseThrow().stated());
        }
    }

    private void shore() {
        Shore shore = job.shore();
        if (shore == null) {
            return;
        }
        Optional<Current> breaker = Given.maybe(shore.breaker());
        if (breaker.isEmpty()) {
            findings.add(Severity.DECIDE, Check.SHORE_BREAKER_UNKNOWN, shore.place());
        } else if (size(shore.cable()).isEmpty()) {
            findings.add(Severity.NOTE, Check.SHORE_CABLE_UNKNOWN, shore.place());
        }
        cable(breaker, ac.shoreCable(), size(shore.cable()), Source.SHORE, shore.place());
        Optional<Current> inlet = shore.inlet().known();
        if (breaker.isPresent() && inlet.isPresent() && breaker.get().compareTo(inlet.get()) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.BREAKER_OVER_INLET,
                    shore.place(),
                    Stated.asGiven(breaker.get()),
                    Stated.asGiven(inlet.get()));
        }
        if (breaker.isEmpty()) {
            ac.shoreCable()
                    .filter(cable -> inlet.isPresent()
                            && inlet.get().compareTo(cable.allowed().value()) > 0)
                    .ifPresent(cable -> findings.add(
                            Severity.FORBIDS,
                            Check.INLET_OVER_CABLE,
                            shore.place(),
                            Stated.asGiven(inlet.get()),
                            cable.allowed().stated()));
        }
    }

    private void leakage(RcdFigures rcd) {
        if (rcd.budget().isEmpty() || rcd.standing().isEmpty()) {
            return;
        }
        Figure<Current> budget = rcd.budget().get();
        Figure<Current> standing = rcd.standing().get();
        if (standing.value().compareTo(budget.value()) > 0) {
            findings.add(
                    Severity.NOTE,
                    Check.LEAKAGE_BUDGET,
                    rcd.rcd().place(),
                    standing.stated(),
                    rcd.rcd().id(),
                    budget.stated());
        }
    }
}
