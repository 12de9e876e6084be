package org.quaybook.checks;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SelectivityFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Stated;

/** The fuses on the DC path. */
final class FuseChecks {

    private final Figures figures;
    private final Bank bank;
    private final Findings findings;

    private FuseChecks(Job job, Figures figures, Findings findings) {
        this.figures = figures;
        this.bank = job.bank();
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Findings findings) {
        FuseChecks checks = new FuseChecks(job, figures, findings);
        for (FuseFigures fuse : figures.fuses()) {
            Fuse fitted = fuse.fuse();
            if (fitted == null) {
                findings.addWithFit(
                        Severity.FORBIDS,
                        Check.MAIN_FUSE_MISSING,
                        feed(figures).cable().place(),
                        fuse.proposal().map(Stated::asGiven),
                        fuse.mustInterrupt().stated());
            } else {
                checks.rating(fuse, fitted);
                checks.interrupting(fuse, fitted);
                if (checks.isFirst(fuse, fitted)) {
                    checks.distance(fuse, fitted);
                }
            }
        }
        figures.selectivity().forEach(checks::selectivity);
        checks.strings();
    }

    private void selectivity(SelectivityFigures pair) {
        Fuse upstream = pair.upstream().fuse();
        if (pair.downstreamFirst() || upstream == null) {
            return;
        }
        findings.add(
                Severity.NOTE,
                Check.FUSE_SELECTIVITY,
                upstream.place(),
                pair.upstream().id(),
                pair.downstream().id(),
                pair.ratio().stated(),
                pair.needed().stated());
    }

    /** A failed block is fed by all the other strings; a battery's own protection opens that way too. */
    private void strings() {
        boolean several = figures.bank().sharing().shares().size() > 1;
        boolean fused = figures.fuses().stream().anyMatch(fuse -> fuse.role() == FuseRole.STRING);
        if (several && !fused && bank.protection() == null) {
            findings.add(
                    Severity.NOTE,
                    Check.STRING_FUSES,
                    bank.parallel().place(),
                    figures.bank().sharing().shares().size(),
                    figures.bank().shortCircuit().stated());
        }
    }

    private static RunFigures feed(Figures figures) {
        List<RunFigures> runs = figures.supply().runs();
        return runs.stream().filter(RunFigures::positive).findFirst().orElse(runs.get(0));
    }

    private void rating(FuseFigures fuse, Fuse fitted) {
        Optional<Current> rating = fuse.rating().map(Figure::value);
        if (rating.isPresent() && rating.get().compareTo(fuse.most().value()) > 0) {
            findings.addWithFit(
                    Severity.FORBIDS,
                    Check.FUSE_OVER_CABLE,
                    fitted.place(),
                    fit(fuse),
                    fitted.id(),
                    Stated.asGiven(rating.get()),
                    fuse.most().stated());
        }
        if (rating.isPresent()
                && rating.get().compareTo(fuse.least().value()) < 0
                && !toldOfCharger(fitted, rating.get())) {
            findings.addWithFit(
                    Severity.DECIDE,
                    Check.FUSE_UNDER_LOAD,
                    fitted.place(),
                    fit(fuse),
                    fitted.id(),
                    Stated.asGiven(rating.get()),
                    fuse.load().stated(),
                    fuse.least().stated());
        }
    }

    /** A rating of its own family, else one of another that has it. */
    private static Optional<Object> fit(FuseFigures fuse) {
        return fuse.proposal()
                .<Object>map(Stated::asGiven)
                .or(() -> fuse.other()
                        .map(other ->
                                Message.of(FuseFit.OTHER_FAMILY, Stated.asGiven(other.rating()), other.family())));
    }

    /** Whether the check of the charger behind it says already that it is too small. */
    private boolean toldOfCharger(Fuse fitted, Current rating) {
        return figures.charging().stream()
                .filter(it -> it.charging().isFusedBy(fitted))
                .flatMap(it -> it.circuit().stream())
                .flatMap(circuit -> circuit.leastFuse().stream())
                .anyMatch(least -> rating.compareTo(least.value()) < 0);
    }

    private void interrupting(FuseFigures fuse, Fuse fitted) {
        boolean unknown =
                !fuse.familyFitted() && Given.maybe(fitted.interrupting()).isEmpty();
        if (unknown) {
            if (fuse.ratingFitted()) {
                findings.add(
                        Severity.DECIDE,
                        Check.FUSE_FAMILY_UNKNOWN,
                        fitted.place(),
                        fitted.id(),
                        fuse.mustInterrupt().stated(),
                        figures.fault().highestVoltage().stated());
            }
            return;
        }
        fuse.usualVoltage()
                .ifPresent(usual -> findings.add(
                        Severity.DECIDE,
                        Check.FUSE_VOLTAGE_UNWRITTEN,
                        fitted.place(),
                        fitted.id(),
                        fuse.family().orElseThrow(),
                        figures.fault().highestVoltage().stated(),
                        usual.stated()));
        if (fuse.interrupts().isEmpty() && fuse.family().isPresent()) {
            findings.add(
                    Severity.FORBIDS,
                    Check.FUSE_VOLTAGE,
                    fitted.place(),
                    fitted.id(),
                    fuse.family().get(),
                    figures.fault().highestVoltage().stated());
        } else if (fuse.interrupts()
                .filter(most -> most.value().compareTo(fuse.mustInterrupt().value()) < 0)
                .isPresent()) {
            findings.add(
                    Severity.FORBIDS,
                    Check.FUSE_INTERRUPTING,
                    fuse.canBeBroken(),
                    fitted.place(),
                    fitted.id(),
                    fuse.family().isPresent() ? fuse.family().get() : "—",
                    fuse.interrupts().get().stated(),
                    fuse.mustInterrupt().stated());
        }
    }

    /** Whether nothing protects the conductor up to it: only the nearest main fuse of a cable does that for the others. */
    private boolean isFirst(FuseFigures fuse, Fuse fitted) {
        return fuse.role() != FuseRole.MAIN
                || fitted.protects().isEmpty()
                || fitted.protects().stream().anyMatch(cable -> isNearest(fitted, cable));
    }

    private boolean isNearest(Fuse fitted, String cable) {
        return figures.fuses().stream()
                .filter(other -> other.role() == FuseRole.MAIN)
                .map(FuseFigures::fuse)
                .flatMap(Stream::ofNullable)
                .filter(other ->
                        !other.id().equals(fitted.id()) && other.protects().contains(cable))
                .noneMatch(other -> nearer(other.distance(), fitted.distance()));
    }

    private static boolean nearer(@Nullable Given<Length> one, @Nullable Given<Length> other) {
        Optional<Length> known = Given.maybe(one);
        return known.isPresent()
                && Given.maybe(other).map(far -> known.get().compareTo(far) < 0).orElse(true);
    }

    private void distance(FuseFigures fuse, Fuse fitted) {
        Given<Length> given = fitted.distance();
        if (given == null || given.value() == null) {
            findings.add(Severity.DECIDE, Check.FUSE_DISTANCE_UNKNOWN, fitted.place(), fitted.id());
            return;
        }
        Length length = given.value();
        fuse.mostDistance()
                .filter(longest -> length.compareTo(longest.value()) > 0)
                .ifPresent(longest -> findings.add(
                        Severity.FORBIDS,
                        Check.FUSE_DISTANCE,
                        given.place(),
                        fitted.id(),
                        Stated.up(length),
                        longest.stated()));
    }
}
