package org.quaybook.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.AcFigures.RcdFigures;
import org.quaybook.figures.Figures;
import org.quaybook.job.Cable;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Provenance;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Stated;

/** What must be measured, tried or written down before anybody can rely on it. */
final class EvidenceChecks {

    private static final Set<TestKind> WITH_BATTERY =
            EnumSet.of(TestKind.VOLTAGE_DROP, TestKind.REST_VOLTAGE, TestKind.INLET_DEAD);

    private static final Set<TestKind> WITHOUT_POWER = EnumSet.of(TestKind.INSULATION, TestKind.EARTH_CONTINUITY);

    private final Job job;
    private final Figures figures;
    private final Findings findings;

    private EvidenceChecks(Job job, Figures figures, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Findings findings) {
        EvidenceChecks checks = new EvidenceChecks(job, figures, findings);
        checks.tests();
        checks.order();
        checks.leakage();
        checks.measured();
        checks.fitted();
        if (job.inverter().serial() == null) {
            findings.add(Severity.NOTE, Check.SERIAL_MISSING, job.inverter().place());
        }
    }

    /** A job may leave sizes to be proposed while it is planned; handed over is what is there. */
    private void fitted() {
        List<String> ids = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (Cable cable : job.cables()) {
            if (Given.maybe(cable.fitted()).isEmpty()) {
                ids.add(cable.id());
                places.add(cable.place());
            }
        }
        for (Fuse fuse : job.fuses()) {
            if (Given.maybe(fuse.rating()).isEmpty()) {
                ids.add(fuse.id());
                places.add(fuse.place());
            }
        }
        if (!ids.isEmpty()) {
            findings.add(Severity.DECIDE, Check.FITTED_UNKNOWN, places.get(0), ids);
        }
    }

    private boolean none(TestKind kind) {
        return job.tests().stream().noneMatch(test -> test.test() == kind);
    }

    private void tests() {
        if (!job.acCircuits().isEmpty()) {
            Place circuits = job.acCircuits().get(0).place();
            if (none(TestKind.EARTH_CONTINUITY)) {
                findings.add(Severity.DECIDE, Check.EARTH_NOT_TESTED, circuits);
            }
            if (none(TestKind.INSULATION)) {
                findings.add(Severity.DECIDE, Check.INSULATION_NOT_TESTED, circuits);
            }
            if (none(TestKind.POLARITY)) {
                findings.add(Severity.DECIDE, Check.POLARITY_NOT_TESTED, circuits);
            }
        }
        boolean automatic = job.inverter().changeover() != null
                && job.inverter().changeover().kind().value() == ChangeoverKind.AUTOMATIC;
        if (job.shore() != null && automatic && none(TestKind.SHORE_LOST)) {
            findings.add(
                    Severity.DECIDE,
                    Check.SHORE_LOSS_NOT_REHEARSED,
                    job.inverter().place());
        }
        if (job.inverter().bypass() != null
                && !Given.isYes(job.inverter().bypass().tested())
                && none(TestKind.BYPASS)) {
            findings.add(
                    Severity.DECIDE, Check.BYPASS_NOT_OPERATED, job.inverter().place());
        }
    }

    /** The AC side is proved before the battery makes anything live. */
    private void order() {
        Optional<TestResult> battery = job.tests().stream()
                .filter(test -> test.on() != null && WITH_BATTERY.contains(test.test()))
                .min(Comparator.comparing(EvidenceChecks::day));
        Optional<TestResult> ac = job.tests().stream()
                .filter(test -> test.on() != null && WITHOUT_POWER.contains(test.test()))
                .min(Comparator.comparing(EvidenceChecks::day));
        if (battery.isPresent() && ac.isPresent() && day(battery.get()).isBefore(day(ac.get()))) {
            findings.add(Severity.DECIDE, Check.AC_AFTER_DC, ac.get().place(), day(ac.get()), day(battery.get()));
        }
    }

    private static LocalDate day(TestResult test) {
        return Objects.requireNonNull(test.on());
    }

    /** The whole craft's leakage passes the most sensitive RCD on board or ashore. */
    private void leakage() {
        Optional<RcdFigures> least = figures.ac().rcds().stream()
                .filter(rcd -> rcd.budget().isPresent())
                .min(Comparator.comparing(rcd -> rcd.budget().orElseThrow().value()));
        for (TestResult test : job.tests()) {
            // What was found and read again leaks no more.
            if (test.test() == TestKind.LEAKAGE
                    && job.tests().stream().noneMatch(later -> later.replaces(test))
                    && Given.maybe(test.result()).orElse(null) instanceof Current leakage
                    && least.isPresent()
                    && leakage.compareTo(least.get().budget().orElseThrow().value()) > 0) {
                findings.add(
                        Severity.DECIDE,
                        Check.LEAKAGE_MEASURED,
                        test.place(),
                        Stated.up(leakage),
                        least.get().budget().orElseThrow().stated(),
                        Stated.asGiven(least.get().rcd().rating().known().orElseThrow()));
            }
        }
    }

    /** What drop, placement, air and tightness hang on. */
    private void measured() {
        for (Cable cable : job.cables()) {
            measured(cable.id(), ReliedOn.LENGTH, cable.length());
        }
        for (Fuse fuse : job.fuses()) {
            measured(fuse.id(), ReliedOn.DISTANCE, fuse.distance());
        }
        Message bank = Message.of(ReliedOn.BANK);
        if (job.bank().vent() != null) {
            measured(bank, ReliedOn.AIR_INLET, job.bank().vent().inlet());
            measured(bank, ReliedOn.AIR_OUTLET, job.bank().vent().outlet());
        }
        measured(bank, ReliedOn.TORQUE, job.bank().torque());
    }

    private void measured(Object whose, ReliedOn what, @Nullable Given<?> given) {
        if (given != null && (given.provenance() == Provenance.TOLD || given.provenance() == Provenance.ASSUMED)) {
            findings.add(
                    Severity.NOTE, Check.MEASUREMENT_DUE, given.place(), whose, given.provenance(), Message.of(what));
        }
    }
}
