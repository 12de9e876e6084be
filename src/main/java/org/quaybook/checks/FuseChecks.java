package org.quaybook.checks;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Severity;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Cable;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Stated;
import org.quaybook.reference.Found;

/** The fuses on the DC path. */
final class FuseChecks {

    private final Figures figures;
    private final Tables tables;
    private final Findings findings;

    private FuseChecks(Figures figures, Tables tables, Findings findings) {
        this.figures = figures;
        this.tables = tables;
        this.findings = findings;
    }

    static void run(Figures figures, Tables tables, Findings findings) {
        FuseChecks checks = new FuseChecks(figures, tables, findings);
        for (FuseFigures fuse : figures.fuses()) {
            Fuse fitted = fuse.fuse();
            if (fitted == null) {
                findings.add(
                        Severity.FORBIDS,
                        Check.MAIN_FUSE_MISSING,
                        figures.supply().runs().get(0).cable().place(),
                        fuse.mustInterrupt().stated(),
                        proposal(fuse));
            } else {
                checks.rating(fuse, fitted);
                checks.interrupting(fuse, fitted);
                if (checks.isNearest(fitted)) {
                    checks.distance(fitted);
                }
            }
        }
    }

    private static Object proposal(FuseFigures fuse) {
        return fuse.proposal().<Object>map(Stated::asGiven).orElse("—");
    }

    private void rating(FuseFigures fuse, Fuse fitted) {
        Optional<Current> rating = fuse.rating().map(Figure::value);
        if (rating.isPresent() && rating.get().compareTo(fuse.most().value()) > 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.FUSE_OVER_CABLE,
                    fitted.place(),
                    fitted.id(),
                    Stated.asGiven(rating.get()),
                    fuse.most().stated(),
                    proposal(fuse));
        }
        if (rating.isPresent() && rating.get().compareTo(fuse.least().value()) < 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.FUSE_UNDER_LOAD,
                    fitted.place(),
                    fitted.id(),
                    Stated.asGiven(rating.get()),
                    figures.inverter().worstCurrent().stated(),
                    fuse.least().stated(),
                    proposal(fuse));
        }
    }

    private void interrupting(FuseFigures fuse, Fuse fitted) {
        if (fuse.family().isEmpty()) {
            return;
        }
        if (fuse.interrupts().isEmpty()) {
            findings.add(
                    Severity.FORBIDS,
                    Check.FUSE_VOLTAGE,
                    fitted.place(),
                    fitted.id(),
                    fuse.family().get(),
                    figures.bank().restFull().stated());
        } else if (fuse.interrupts()
                        .get()
                        .value()
                        .compareTo(fuse.mustInterrupt().value())
                < 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.FUSE_INTERRUPTING,
                    fitted.place(),
                    fitted.id(),
                    fuse.family().get(),
                    fuse.interrupts().get().stated(),
                    fuse.mustInterrupt().stated());
        }
    }

    /** Of fuses in one cable only the one nearest to the battery protects it from there on. */
    private boolean isNearest(Fuse fitted) {
        return figures.fuses().stream()
                .map(FuseFigures::fuse)
                .flatMap(Stream::ofNullable)
                .filter(other -> !other.id().equals(fitted.id()))
                .filter(other -> other.protects().stream().anyMatch(fitted.protects()::contains))
                .noneMatch(other -> nearer(other.distance(), fitted.distance()));
    }

    private static boolean nearer(@Nullable Given<Length> one, @Nullable Given<Length> other) {
        Optional<Length> known = Given.maybe(one);
        return known.isPresent()
                && Given.maybe(other).map(far -> known.get().compareTo(far) < 0).orElse(true);
    }

    private void distance(Fuse fitted) {
        Given<Length> given = fitted.distance();
        if (given == null || given.value() == null) {
            findings.add(Severity.DECIDE, Check.FUSE_DISTANCE_UNKNOWN, fitted.place(), fitted.id());
            return;
        }
        boolean sheathed = figures.supply().runs().stream()
                .map(run -> run.cable())
                .filter(cable -> fitted.protects().contains(cable.id()))
                .map(Cable::sheathed)
                .anyMatch(Given::isYes);
        Length length = given.value();
        tables.rules()
                .unfused()
                .longest(sheathed, true)
                .map(Found::value)
                .filter(longest -> length.compareTo(longest) > 0)
                .ifPresent(longest -> findings.add(
                        Severity.FORBIDS,
                        Check.FUSE_DISTANCE,
                        given.place(),
                        fitted.id(),
                        Stated.up(length),
                        Stated.down(longest)));
    }
}
