package org.quaybook.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.ChargingAtOnce;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SharedWay;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.figures.Tables;
import org.quaybook.job.Charging;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;

/** Whether it matters where branches and chargers of which nobody has written it are connected. */
final class WayChecks {

    private final Job job;
    private final Figures figures;
    private final Tables tables;
    private final Findings findings;
    private final SharedWay unplaced;
    private final Current drawnToo;
    private final Current chargedToo;

    private WayChecks(Job job, Figures figures, Tables tables, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.tables = tables;
        this.findings = findings;
        this.unplaced = figures.way().unplaced();
        this.drawnToo = SharedWay.drawn(unplaced.branches());
        this.chargedToo =
                new ChargingAtOnce(unplaced.charging(), figures.bank().nominal().value()).most();
    }

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        WayChecks checks = new WayChecks(job, figures, tables, findings);
        checks.unplaced();
        checks.onePole();
        uncounted(figures.absence().draw().uncounted(), findings);
    }

    /** What nobody counts makes every running time too long. */
    private static void uncounted(List<Fuse> branches, Findings findings) {
        if (!branches.isEmpty()) {
            findings.add(
                    Severity.DECIDE,
                    Check.BRANCH_AVERAGE,
                    branches.get(0).place(),
                    branches.stream().map(WayChecks::named).toList());
        }
    }

    private static String named(Fuse branch) {
        return branch.feeds() == null ? branch.id() : branch.id() + " (" + branch.feeds() + ")";
    }

    /** Told only where a fuse, cable or switch that does now would not do with them. */
    private void unplaced() {
        List<String> tooSmall = Stream.of(
                        figures.fuses().stream().filter(this::fuseDoesNot).map(FuseFigures::id),
                        figures.supply().runs().stream()
                                .filter(this::runDoesNot)
                                .map(run -> run.cable().id()),
                        job.isolators().stream().filter(this::isolatorDoesNot).map(Isolator::id))
                .flatMap(ids -> ids)
                .toList();
        if (tooSmall.isEmpty()) {
            return;
        }
        List<Object> names = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (Fuse branch : unplaced.branches()) {
            names.add(named(branch));
            places.add(branch.place());
        }
        for (Charging charging : unplaced.charging()) {
            names.add(ChargeChecks.name(charging));
            places.add(charging.place());
        }
        findings.add(Severity.DECIDE, Check.WAY_UNKNOWN, places.get(0), names, tooSmall);
    }

    /** What comes through one pole goes back through the other, unless its return is run apart: easily forgotten. */
    private void onePole() {
        List<Object> names = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (Fuse branch : figures.way().branches()) {
            if (namesOnePole(branch.through())) {
                names.add(named(branch));
                places.add(branch.place());
            }
        }
        for (Charging charging : job.charging()) {
            if (namesOnePole(charging.through())) {
                names.add(ChargeChecks.name(charging));
                places.add(charging.place());
            }
        }
        if (!names.isEmpty()) {
            findings.add(Severity.NOTE, Check.WAY_ONE_POLE, places.get(0), names);
        }
    }

    private boolean namesOnePole(List<String> way) {
        List<RunFigures> runs = figures.supply().runs();
        List<Boolean> poles = runs.stream()
                .filter(run -> way.contains(run.cable().id()))
                .map(RunFigures::positive)
                .distinct()
                .toList();
        return poles.size() == 1 && runs.stream().anyMatch(run -> run.positive() != poles.get(0));
    }

    /** It would open, or no longer protect a cable that a charger feeds behind it. */
    private boolean fuseDoesNot(FuseFigures fuse) {
        if (fuse.role() != FuseRole.MAIN || fuse.rating().isEmpty()) {
            return false;
        }
        Current rating = fuse.rating().get().value();
        double load = tables.rules().fuseLoad().value().fraction();
        Current least = withAll(fuse.load().value()).dividedBy(load);
        boolean doesNow = rating.compareTo(fuse.least().value()) >= 0;
        double over = tables.rules()
                .fuseOverAmpacity(figures.bank().system().value())
                .value()
                .fraction();
        boolean protectsNow = rating.compareTo(fuse.most().value()) <= 0;
        Current left = chargedToo.times(over).plus(rating);
        return (doesNow && rating.compareTo(least) < 0)
                || (protectsNow && left.compareTo(fuse.most().value()) > 0);
    }

    private boolean runDoesNot(RunFigures run) {
        Current allowed = run.allowed().value();
        return allowed.compareTo(run.carried().value()) >= 0
                && allowed.compareTo(withAll(run.carried().value())) < 0;
    }

    /** What a switch of the whole bank carries counts them already. */
    private boolean isolatorDoesNot(Isolator isolator) {
        Optional<Current> bears = Given.maybe(isolator.rating());
        Optional<Current> most = figures.most(isolator).map(Figure::value);
        return bears.isPresent()
                && most.isPresent()
                && !isolator.isolates().contains("bank")
                && bears.get().compareTo(most.get()) >= 0
                && bears.get().compareTo(withAll(most.get())) < 0;
    }

    /** With all that draws, or all that charges where that is more. */
    private Current withAll(Current carried) {
        Current drawn = carried.plus(drawnToo);
        return chargedToo.compareTo(drawn) > 0 ? chargedToo : drawn;
    }
}
