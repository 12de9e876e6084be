package org.quaybook.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.diag.Severity;
import org.quaybook.figures.BaselineFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.OnGenerator;
import org.quaybook.figures.Tables;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Outcome;
import org.quaybook.job.Rcd;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.TestLimits;

/** Tests that are missing, failed or do not fit the figures. */
final class TestChecks {

    private static final double OHMS_PER_MEGOHM = 1e6;
    private static final Voltage JOINT_MOST = new Voltage(most("joint-drop") / 1000);
    private static final double JOINT_RISE_MOST = most("joint-rise");
    private static final double DROP_HIGH = 1.5;
    private static final double DROP_LOW = 0.5;

    private final Job job;
    private final Figures figures;
    private final Tables tables;
    private final Findings findings;
    private final Resistance leastInsulation;
    private final Voltage dead;

    private TestChecks(Job job, Figures figures, Tables tables, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.tables = tables;
        this.findings = findings;
        TestLimits limits = TestLimits.standard();
        this.leastInsulation = new Resistance(limits.of("insulation").least().orElseThrow() * OHMS_PER_MEGOHM);
        this.dead = new Voltage(limits.of("inlet-dead").most().orElseThrow());
    }

    private static double most(String measurement) {
        return TestLimits.standard().of(measurement).most().orElseThrow();
    }

    static void run(Job job, Figures figures, Tables tables, Findings findings) {
        TestChecks checks = new TestChecks(job, figures, tables, findings);
        job.rcds().forEach(checks::rcdTested);
        checks.inletTested();
        for (TestResult test : job.tests()) {
            // What was mended and tested again forbids nothing any more.
            if (job.tests().stream().noneMatch(later -> later.replaces(test))) {
                checks.judge(test);
            }
            checks.drop(test);
        }
        checks.dropTested();
        figures.baseline().items().forEach(checks::joint);
        figures.baseline().items().forEach(checks::moved);
    }

    private void dropTested() {
        if (job.tests().stream().noneMatch(test -> test.test() == TestKind.VOLTAGE_DROP)) {
            findings.add(
                    Severity.NOTE,
                    Check.DROP_NOT_TESTED,
                    job.inverter().place(),
                    figures.baseline().current().stated());
        }
    }

    /** A joint as it would be at full load, against what a sound one shows. */
    private void joint(BaselineFigures.Item item) {
        if (item.fullLoad().isEmpty() || item.last().isEmpty()) {
            return;
        }
        BaselineFigures.Reading last = item.last().get();
        Quantity full = item.fullLoad().get().value();
        if (full instanceof Voltage drop && drop.compareTo(JOINT_MOST) > 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.JOINT_HIGH,
                    last.test().place(),
                    item.of(),
                    Stated.asGiven(last.reading()),
                    item.fullLoad().get().stated(),
                    Stated.asGiven(JOINT_MOST));
        }
        if (full instanceof Temperature warm
                && Given.maybe(last.test().ambient())
                        .filter(air -> warm.kelvinAbove(air) > JOINT_RISE_MOST)
                        .isPresent()) {
            findings.add(
                    Severity.FORBIDS,
                    Check.JOINT_HOT,
                    last.test().place(),
                    item.of(),
                    Stated.asGiven(last.reading()),
                    item.fullLoad().get().stated(),
                    JOINT_RISE_MOST);
        }
    }

    private void moved(BaselineFigures.Item item) {
        if (!item.moved()) {
            return;
        }
        BaselineFigures.Reading first = item.first().orElseThrow();
        BaselineFigures.Reading latest = item.latest().orElseThrow();
        findings.add(
                Severity.DECIDE,
                Check.BASELINE_MOVED,
                latest.test().place(),
                item.subject(),
                first.compared().orElseThrow().stated(),
                day(first),
                latest.compared().orElseThrow().stated(),
                day(latest));
    }

    private LocalDate day(BaselineFigures.Reading reading) {
        LocalDate on = reading.test().on();
        return on == null ? job.job().date() : on;
    }

    private boolean tested(TestKind kind, String of, Source source) {
        return job.tests().stream()
                .anyMatch(test -> test.test() == kind
                        && (of.isEmpty() || test.of().contains(of))
                        && Given.maybe(test.source()).map(source::equals).orElse(false));
    }

    private void rcdTested(Rcd rcd) {
        boolean inverterFed = rcd.source().value() == Source.INVERTER;
        boolean generatorOnly = rcd.source().value() == Source.GENERATOR;
        List<Source> sources = new ArrayList<>();
        if (!inverterFed) {
            sources.add(generatorOnly ? Source.GENERATOR : Source.SHORE);
        } else {
            sources.add(Source.INVERTER);
            if (job.shore() != null && job.inverter().changeover() != null && !protectedAshore(rcd)) {
                sources.add(Source.SHORE);
            }
            if (onGenerator(rcd) && !protectedAtGenerator(rcd)) {
                sources.add(Source.GENERATOR);
            }
        }
        for (Source source : sources) {
            if (!tested(TestKind.RCD_TRIP, rcd.id(), source)) {
                findings.add(Severity.DECIDE, Check.RCD_NOT_TESTED, rcd.place(), rcd.id(), source);
            }
        }
    }

    private boolean onGenerator(Rcd rcd) {
        OnGenerator onGenerator = new OnGenerator(job);
        return job.generator() != null
                && job.acCircuits().stream()
                        .filter(circuit -> rcd.id().equals(circuit.rcd()))
                        .anyMatch(circuit -> onGenerator.feeds(circuit).equals(Optional.of(Source.GENERATOR)));
    }

    /** As ashore, a separate, tested RCD at the generator covers what it feeds. */
    private boolean protectedAtGenerator(Rcd rcd) {
        String own = job.generator() == null ? null : job.generator().rcd();
        return own != null && !own.equals(rcd.id()) && tested(TestKind.RCD_TRIP, own, Source.GENERATOR);
    }

    /** A separate, tested RCD after the inlet covers operation on shore power. */
    private boolean protectedAshore(Rcd rcd) {
        String inletRcd = job.shore() == null ? null : job.shore().rcd();
        return inletRcd != null && !inletRcd.equals(rcd.id()) && tested(TestKind.RCD_TRIP, inletRcd, Source.SHORE);
    }

    private void inletTested() {
        if (job.shore() != null && job.tests().stream().noneMatch(test -> test.test() == TestKind.INLET_DEAD)) {
            findings.add(Severity.DECIDE, Check.INLET_NOT_TESTED, job.shore().place());
        }
    }

    private void judge(TestResult test) {
        if (test.outcome() == Outcome.FAILED) {
            findings.add(Severity.FORBIDS, Check.TEST_FAILED, test.place(), test.test());
        }
        Quantity result = Given.maybe(test.result()).orElse(null);
        if (result instanceof TimeSpan time && test.test() == TestKind.RCD_TRIP) {
            rcdTime(test, time);
        }
        if (result instanceof Voltage volts && test.test() == TestKind.INLET_DEAD && volts.compareTo(dead) > 0) {
            findings.add(Severity.FORBIDS, Check.INLET_LIVE, test.place(), Stated.up(volts), Stated.asGiven(dead));
        }
        if (result instanceof Resistance ohms
                && test.test() == TestKind.INSULATION
                && ohms.compareTo(leastInsulation) < 0) {
            findings.add(
                    Severity.FORBIDS,
                    Check.INSULATION_LOW,
                    test.place(),
                    Stated.down(ohms),
                    Stated.asGiven(leastInsulation));
        }
    }

    private void rcdTime(TestResult test, TimeSpan time) {
        TimeSpan most = TripTime.most(test, job, tables);
        if (time.compareTo(most) > 0) {
            findings.add(
                    Severity.FORBIDS, Check.RCD_SLOW, test.place(), test.of(), Stated.up(time), Stated.asGiven(most));
        }
    }

    /** A first reading against what is expected of copper at 20 °C and every joint; later ones are held against the first. */
    private void drop(TestResult test) {
        if (test.test() != TestKind.VOLTAGE_DROP
                || !(Given.maybe(test.result()).orElse(null) instanceof Voltage measured)) {
            return;
        }
        Optional<Figure<?>> expected = figures.baseline().startedBy(test).flatMap(BaselineFigures.Item::predicted);
        if (expected.isEmpty()
                || !(expected.get().value() instanceof Voltage predicted)
                || !(Given.maybe(test.at()).orElse(null) instanceof Current current)
                || predicted.volts() == 0) {
            return;
        }
        double ratio = measured.ratioTo(predicted);
        if (ratio > DROP_HIGH || ratio < DROP_LOW) {
            findings.add(
                    Severity.DECIDE,
                    Check.DROP_UNEXPECTED,
                    test.place(),
                    test.of(),
                    Stated.asGiven(current),
                    Stated.asGiven(measured),
                    expected.get().stated());
        }
    }
}
