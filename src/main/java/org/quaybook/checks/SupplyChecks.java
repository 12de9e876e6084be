package org.quaybook.checks;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.SupplyFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Rulebook;

/** The DC path: what the conductors bear and drop, and whether it can be made dead. */
final class SupplyChecks {

    private SupplyChecks() {}

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        Ratio mostDrop = tables.rules().otherDrop().value();
        SupplyFigures supply = figures.supply();
        for (RunFigures run : supply.runs()) {
            if (run.allowed().value().compareTo(run.carried().value()) < 0) {
                findings.addWithFit(
                        Severity.FORBIDS,
                        Check.CABLE_AMPACITY,
                        run.cable().place(),
                        least(run),
                        run.cable().id(),
                        run.rating().conductor(),
                        run.allowed().stated(),
                        run.carried().stated());
            }
            parallel(run, tables.rules(), findings);
            bundle(run, figures, tables.rules(), findings);
        }
        if (supply.decidingDrop().value().compareTo(supply.allowedDrop().value()) > 0) {
            findings.addWithFit(
                    supply.decidingShare().value().compareTo(mostDrop) > 0 ? Severity.FORBIDS : Severity.DECIDE,
                    Check.SUPPLY_DROP,
                    job.cables().get(0).place(),
                    leastOfAll(supply.runs()),
                    supply.decidingDrop().stated(),
                    supply.decidingShare().stated(),
                    supply.mostDrawn().stated(),
                    supply.allowedDrop().stated());
        }
        isolators(job, figures, findings);
        job.isolators().forEach(isolator -> rating(isolator, job, figures, findings));
    }

    /** What the inverter draws at most, and what passes the switch beside it, can flow at once. */
    private static void rating(Isolator isolator, Job job, Figures figures, Findings findings) {
        // The switch of a string bears its share alone.
        List<Fuse> mains = figures.fuses().stream()
                .filter(fuse -> fuse.role() == FuseRole.MAIN)
                .flatMap(fuse -> Stream.ofNullable(fuse.fuse()))
                .toList();
        if (!isolator.partsBattery(job.cables(), mains)) {
            return;
        }
        Figure<Current> most = figures.most(isolator).orElseThrow();
        Optional<Current> bears = Given.maybe(isolator.rating());
        if (bears.isEmpty()) {
            findings.add(Severity.NOTE, Check.ISOLATOR_RATING_UNKNOWN, isolator.place(), isolator.id(), most.stated());
        } else if (bears.get().compareTo(most.value()) < 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.ISOLATOR_RATING,
                    isolator.place(),
                    isolator.id(),
                    Stated.asGiven(bears.get()),
                    most.stated());
        }
    }

    /** The least conductor that does, and in brackets that of the other series of sizes. */
    private static Optional<String> least(RunFigures run) {
        return run.least()
                .map(least -> least
                        + run.leastElsewhere().map(other -> " (" + other + ")").orElse(""));
    }

    /** The least conductor of each run; empty unless there is one for each. */
    private static Optional<String> leastOfAll(List<RunFigures> runs) {
        List<String> named = runs.stream()
                .flatMap(run -> least(run).map(it -> run.cable().id() + ": " + it).stream())
                .toList();
        return named.size() < runs.size() ? Optional.empty() : Optional.of(String.join(", ", named));
    }

    /** Conductors in parallel lie together with their return as likely as not, and then they count as a bundle. */
    private static void bundle(RunFigures run, Figures figures, Rulebook rules, Findings findings) {
        Conductor conductor = run.rating().conductor();
        if (!run.fitted() || run.bundled().isEmpty()) {
            return;
        }
        Voltage system = figures.bank().system().value();
        Figure<Current> bundled = run.bundled().get();
        Current allowed = bundled.value();
        Current fuse = figures.fuses().stream()
                .filter(it -> it.fuse() != null
                        && it.fuse().protects().contains(run.cable().id()))
                .flatMap(it -> it.rating().stream())
                .map(Figure::value)
                .max(Comparator.naturalOrder())
                .orElse(new Current(0));
        Current most = allowed.times(rules.fuseOverAmpacity(system).value().fraction());
        boolean carries = allowed.compareTo(run.carried().value()) >= 0;
        if (carries && fuse.compareTo(most) <= 0) {
            return;
        }
        Current passes = Stream.of(fuse, run.carried().value())
                .max(Comparator.naturalOrder())
                .get();
        findings.add(
                Severity.DECIDE,
                Check.BUNDLE_UNWRITTEN,
                run.cable().place(),
                run.cable().id(),
                conductor,
                2 * conductor.parallel(),
                bundled.stated(),
                Stated.up(passes));
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
            findings.addWithFit(
                    Severity.DECIDE,
                    Check.PARALLEL_THIN,
                    run.cable().place(),
                    least(run),
                    run.cable().id(),
                    conductor,
                    rules.parallelLeast().value());
        }
    }

    /** In the positive, where the poles are known: with the minus open the plus stays live everywhere. */
    private static void isolators(Job job, Figures figures, Findings findings) {
        List<String> way = figures.supply().runs().stream()
                .filter(RunFigures::positive)
                .map(run -> run.cable().id())
                .toList();
        Optional<Isolator> battery = job.isolators().stream()
                .filter(isolator -> job.cables().stream()
                        .filter(cable -> way.isEmpty() || way.contains(cable.id()))
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
