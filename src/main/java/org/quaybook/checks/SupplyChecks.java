package org.quaybook.checks;

import java.util.Optional;
import java.util.stream.Collectors;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figures;
import org.quaybook.figures.SupplyFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Ratio;
import org.quaybook.reference.Rulebook;

/** The DC path: what the conductors bear and drop, and whether it can be made dead. */
final class SupplyChecks {

    private SupplyChecks() {}

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        Ratio mostDrop = tables.rules().otherDrop().value();
        SupplyFigures supply = figures.supply();
        for (RunFigures run : supply.runs()) {
            if (run.allowed()
                            .value()
                            .compareTo(figures.inverter().worstCurrent().value())
                    < 0) {
                findings.add(
                        Severity.FORBIDS,
                        Check.CABLE_AMPACITY,
                        run.cable().place(),
                        run.cable().id(),
                        run.rating().conductor(),
                        run.allowed().stated(),
                        figures.inverter().worstCurrent().stated(),
                        least(run));
            }
            parallel(run, tables.rules(), findings);
        }
        if (supply.decidingDrop().value().compareTo(supply.allowedDrop().value()) > 0) {
            findings.add(
                    supply.decidingShare().value().compareTo(mostDrop) > 0 ? Severity.FORBIDS : Severity.DECIDE,
                    Check.SUPPLY_DROP,
                    job.cables().get(0).place(),
                    supply.decidingDrop().stated(),
                    supply.decidingShare().stated(),
                    figures.inverter().worstCurrent().stated(),
                    supply.allowedDrop().stated(),
                    supply.runs().stream()
                            .map(run -> run.cable().id() + ": " + least(run))
                            .collect(Collectors.joining(", ")));
        }
        isolators(job, findings);
    }

    /** The least conductor that does, and in brackets that of the other series of sizes. */
    private static String least(RunFigures run) {
        return run.least().map(Object::toString).orElse("—")
                + run.leastElsewhere().map(other -> " (" + other + ")").orElse("");
    }

    /** What conductors must have in common to share a current. */
    private static void parallel(RunFigures run, Rulebook rules, Findings findings) {
        Conductor conductor = run.rating().conductor();
        if (!run.fitted() || conductor.parallel() == 1) {
            return;
        }
        if (Given.isNo(run.cable().alike())) {
            findings.add(
                    Severity.FORBIDS,
                    Check.PARALLEL_UNEVEN,
                    run.cable().place(),
                    run.cable().id(),
                    conductor);
        } else if (!Given.isYes(run.cable().alike())) {
            findings.add(
                    Severity.NOTE,
                    Check.PARALLEL_UNPROVED,
                    run.cable().place(),
                    run.cable().id(),
                    conductor);
        }
        if (conductor.size().compareTo(rules.parallelLeast().value()) < 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.PARALLEL_THIN,
                    run.cable().place(),
                    run.cable().id(),
                    conductor,
                    rules.parallelLeast().value(),
                    least(run));
        }
    }

    private static void isolators(Job job, Findings findings) {
        Optional<Isolator> battery = job.isolators().stream()
                .filter(isolator -> job.cables().stream()
                        .anyMatch(cable -> isolator.isolates().contains(cable.id())))
                .findFirst();
        if (battery.isEmpty()) {
            findings.add(Severity.FORBIDS, Check.ISOLATOR_MISSING, job.bank().place());
        }
        battery.filter(isolator -> Given.isNo(isolator.toolFree()))
                .ifPresent(isolator -> findings.add(
                        Severity.FORBIDS, Check.ISOLATOR_TOOL, isolator.place(), isolator.id(), isolator.where()));
    }
}
