package org.quaybook.checks;

import java.util.Optional;
import org.quaybook.diag.Severity;
import org.quaybook.figures.EarthFigures;
import org.quaybook.figures.Figures;
import org.quaybook.job.CraftKind;
import org.quaybook.job.EarthKind;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Stated;

/** Earth and bonding conductors. */
final class EarthChecks {

    private EarthChecks() {}

    static void run(Job job, Figures figures, Findings findings) {
        figures.earths().forEach(earth -> judge(earth, findings));
        if (none(job, EarthKind.CASE)) {
            findings.add(
                    Severity.DECIDE, Check.EARTH_CASE_UNKNOWN, job.inverter().place());
        }
        boolean metal = Given.isYes(job.craft().metalHull()) || job.craft().kind() == CraftKind.MOTORHOME;
        if (metal && none(job, EarthKind.BOND)) {
            findings.add(Severity.DECIDE, Check.EARTH_BOND_UNKNOWN, job.craft().place());
        }
        boolean perhapsMetal = job.craft().kind() == CraftKind.BOAT
                && Given.maybe(job.craft().metalHull()).isEmpty();
        if (perhapsMetal && none(job, EarthKind.BOND)) {
            findings.add(Severity.DECIDE, Check.METAL_HULL_UNKNOWN, job.craft().place());
        }
    }

    private static boolean none(Job job, EarthKind kind) {
        return job.earths().stream().noneMatch(earth -> earth.kind().value() == kind);
    }

    private static void judge(EarthFigures it, Findings findings) {
        Optional<Area> fitted = it.fitted();
        if (fitted.isEmpty() || it.least().isEmpty()) {
            findings.add(
                    Severity.DECIDE,
                    Check.EARTH_UNJUDGED,
                    it.earth().place(),
                    it.earth().id(),
                    it.earth().from(),
                    it.earth().to());
            return;
        }
        Area least = it.least().get().value();
        if (fitted.get().compareTo(least) < 0) {
            findings.addWithFit(
                    Severity.FORBIDS,
                    Check.EARTH_THIN,
                    it.earth().place(),
                    it.proposal(),
                    it.earth().id(),
                    it.earth().fitted().known().orElseThrow(),
                    it.least().get().stated());
        }
        it.heat()
                .filter(heat -> fitted.get().compareTo(heat.value()) < 0)
                .ifPresent(heat -> findings.add(
                        Severity.NOTE,
                        Check.EARTH_HOT,
                        it.earth().place(),
                        it.earth().id(),
                        Stated.asGiven(fitted.get()),
                        heat.stated()));
    }
}
