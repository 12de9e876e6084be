package org.quaybook.checks;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.FaultDisconnection;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figures;
import org.quaybook.figures.Tables;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.BreakerCurve;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/** AC breakers against their cables and against what the inverter can give, and the standing leakage. */
final class BreakerChecks {

    /** Insulation of usual AC cable, for want of a field: PVC (common practice). */
    private static final Temperature PVC = new Temperature(70);

    /** Share of an RCD's rating that standing leakage should stay below (common practice). */
    private static final double LEAKAGE_SHARE = 0.3;

    private final Job job;
    private final Figures figures;
    private final Tables tables;
    private final Findings findings;

    private BreakerChecks(Job job, Figures figures, Tables tables, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.tables = tables;
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        BreakerChecks checks = new BreakerChecks(job, figures, tables, findings);
        for (AcCircuit circuit : job.acCircuits()) {
            checks.cable(circuit);
            checks.disconnection(circuit);
        }
        checks.shore();
        job.rcds().forEach(checks::leakage);
    }

    private void cable(AcCircuit circuit) {
        Optional<Current> allowed = allowed(circuit.cable());
        Optional<Current> breaker = circuit.breaker().known();
        if (allowed.isPresent() && breaker.isPresent() && breaker.get().compareTo(allowed.get()) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.BREAKER_OVER_CABLE,
                    circuit.place(),
                    circuit.id(),
                    Stated.asGiven(breaker.get()),
                    String.valueOf(Given.maybe(circuit.cable()).orElseThrow()),
                    Stated.down(allowed.get()));
        }
    }

    /** What a conductor of an AC cable may carry; empty if its size is unknown or not in the rulebook's table. */
    private Optional<Current> allowed(@Nullable Given<ConductorSize> cable) {
        return Given.maybe(cable)
                .filter(size -> tables.rules().ampacity().sizes().contains(size))
                .map(size -> tables.rules().ampacity().base(size, PVC).value());
    }

    private void disconnection(AcCircuit circuit) {
        Optional<Current> breaker = circuit.breaker().known();
        Optional<BreakerCurve> curve = Given.maybe(circuit.curve());
        Optional<Voltage> output = job.inverter().output().voltage().known();
        if (circuit.source().value() != Source.INVERTER || breaker.isEmpty() || curve.isEmpty() || output.isEmpty()) {
            return;
        }
        FaultDisconnection fault = FaultDisconnection.of(
                figures.inverter().continuous().value(), output.get(), breaker.get(), surelyTrips(curve.get()));
        if (!fault.breakerTrips()) {
            findings.add(
                    Severity.NOTE,
                    Check.BREAKER_ON_BATTERY,
                    circuit.place(),
                    circuit.id(),
                    Stated.down(fault.inverterGives()),
                    Stated.up(fault.breakerWants()));
        }
    }

    private static double surelyTrips(BreakerCurve curve) {
        return switch (curve) {
            case B -> 5;
            case C -> 10;
            case D -> 20;
        };
    }

    private void shore() {
        Shore shore = job.shore();
        if (shore == null) {
            return;
        }
        Optional<Current> breaker = Given.maybe(shore.breaker());
        Optional<Current> allowed = allowed(shore.cable());
        if (breaker.isPresent() && allowed.isPresent() && breaker.get().compareTo(allowed.get()) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.BREAKER_OVER_CABLE,
                    shore.place(),
                    "shore",
                    Stated.asGiven(breaker.get()),
                    String.valueOf(Given.maybe(shore.cable()).orElseThrow()),
                    Stated.down(allowed.get()));
        }
        Optional<Current> inlet = shore.inlet().known();
        if (breaker.isPresent() && inlet.isPresent() && breaker.get().compareTo(inlet.get()) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.BREAKER_OVER_INLET,
                    shore.place(),
                    Stated.asGiven(breaker.get()),
                    Stated.asGiven(inlet.get()));
        }
    }

    private void leakage(Rcd rcd) {
        Optional<Current> rating = rcd.rating().known();
        Current standing = job.appliances().stream()
                .flatMap(appliance -> Given.maybe(appliance.leakage()).stream())
                .reduce(new Current(0), Current::plus);
        if (rating.isPresent() && standing.compareTo(rating.get().times(LEAKAGE_SHARE)) > 0) {
            findings.add(
                    Severity.NOTE,
                    Check.LEAKAGE_BUDGET,
                    rcd.place(),
                    Stated.up(standing),
                    rcd.id(),
                    Stated.down(rating.get().times(LEAKAGE_SHARE)));
        }
    }
}
