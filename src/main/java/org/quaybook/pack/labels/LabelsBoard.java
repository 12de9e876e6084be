package org.quaybook.pack.labels;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.figures.CircuitSources;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Expiry;
import org.quaybook.job.Rcd;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.record.EnergySource;
import org.quaybook.record.LeftOnBattery;

/** Labels on the AC board and beside its residual current devices. */
final class LabelsBoard {

    private final LabelFacts facts;

    LabelsBoard(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        LabelsSwitches switches = new LabelsSwitches(facts, place());
        if (facts.sources().size() > 1 && facts.keptApart()) {
            designs.add(sources(switches));
        }
        switches.list().ifPresent(designs::add);
        if (!facts.job().acCircuits().isEmpty()) {
            designs.add(circuits());
        }
        designs.addAll(new LabelsRuntime(facts, place()).designs());
        designs.add(dates());
        facts.job().rcds().stream().map(this::rcd).forEach(designs::add);
        return designs;
    }

    /** Where the board is, in the words of the job. */
    String place() {
        return facts.job().rcds().stream()
                .map(Rcd::where)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseGet(() -> facts.say("place.board"));
    }

    private LabelDesign onBoard(String id, LabelReason reason, LabelReading reading, String title) {
        return LabelDesign.of(id, reason, LabelSpot.BOARD, place(), reading, title);
    }

    private LabelDesign sources(LabelsSwitches switches) {
        List<String> steps = new ArrayList<>();
        steps.add(facts.say("sources.inverter", at(facts.job().inverter().where())));
        for (LabelSource source : facts.sources()) {
            steps.add(step(source, switches));
        }
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.plain(facts.say("sources.consequence")));
        if (facts.takesOver()) {
            parts.add(LabelPart.plain(facts.sayByShore("sources.takes-over")));
        }
        parts.add(LabelPart.strong(facts.say("sources.before-work")));
        parts.add(LabelPart.numbered(steps));
        switches.seeList().map(LabelPart::plain).ifPresent(parts::add);
        List<String> left = LeftOnBattery.names(facts.job(), facts.figures().way());
        if (!left.isEmpty()) {
            parts.add(LabelPart.strong(facts.say("isolator.branches", facts.some(left))));
        }
        parts.add(LabelPart.strong(facts.say("sources.prove")));
        return onBoard(
                        "sources",
                        LabelReason.SOURCES,
                        LabelReading.PANEL,
                        facts.say("sources.title", facts.sources().size()))
                .warning(SignalWord.WARNING, Sign.W012, Sign.M021)
                .with(parts);
    }

    /** A switch that parts the battery too waits for the last step, so that no charger loses the battery. */
    private String step(LabelSource source, LabelsSwitches switches) {
        String key = "source." + source.kind().id();
        String stop = facts.words().say("term.stop.generator-briefly");
        LabelSource before = source.withoutBatterySwitches(facts.job());
        if (!before.isolators().isEmpty()) {
            String off = switches.inStep(before);
            return source.kind() == EnergySource.GENERATOR
                    ? facts.say(key + ".off", off, stop)
                    : facts.say(key + ".off", off);
        }
        return switch (source.kind()) {
            case GENERATOR -> facts.say(key + ".no-switch", stop);
            case SOLAR, WIND ->
                source.isolators().isEmpty()
                        ? facts.say(key + ".no-switch")
                        : facts.say(key + ".with-battery", switches.inStep(source));
            case SHORE, ALTERNATOR, BATTERY -> facts.say(key + ".no-switch");
        };
    }

    private String at(@Nullable String where) {
        return where == null ? "" : facts.say("sources.at", where);
    }

    private LabelDesign circuits() {
        boolean cables = facts.job().acCircuits().stream().anyMatch(circuit -> circuit.cable() != null);
        List<String> head = new ArrayList<>(List.of(
                facts.say("circuits.id"),
                facts.say("circuits.feeds"),
                facts.say("circuits.breaker"),
                facts.say("circuits.rcd"),
                facts.say("circuits.from")));
        if (cables) {
            head.add(3, facts.say("circuits.cable"));
        }
        List<List<String>> rows = facts.job().acCircuits().stream()
                .map(circuit -> row(circuit, cables))
                .toList();
        return onBoard(
                        "circuits",
                        LabelReason.CIRCUITS,
                        LabelReading.HAND,
                        facts.say(
                                "circuits.title",
                                facts.mains(),
                                facts.given(facts.job().inverter().output().frequency())
                                        .orElse("")))
                .with(new LabelPart.Grid(head, rows, 1, true))
                .listing(bundles());
    }

    /** Circuits of one residual current device that stand below each other stay together: it switches them all off. */
    private List<Integer> bundles() {
        List<Integer> bundles = new ArrayList<>();
        String before = null;
        for (AcCircuit circuit : facts.job().acCircuits()) {
            String rcd = circuit.rcd();
            if (rcd != null && rcd.equals(before)) {
                int last = bundles.size() - 1;
                bundles.set(last, bundles.get(last) + 1);
            } else {
                bundles.add(1);
            }
            before = rcd;
        }
        return bundles;
    }

    private List<String> row(AcCircuit circuit, boolean cables) {
        List<String> cells = new ArrayList<>(List.of(
                circuit.id(),
                circuit.name(),
                facts.given(circuit.curve()).orElse("")
                        + facts.given(circuit.breaker()).orElse(""),
                circuit.rcd() == null ? "" : circuit.rcd(),
                source(circuit)));
        if (cables) {
            cells.add(3, facts.given(circuit.cable()).orElse(""));
        }
        return cells;
    }

    private String source(AcCircuit circuit) {
        return facts.words()
                .list(new CircuitSources(facts.job())
                        .of(circuit).stream().map(facts.words()::term).toList());
    }

    private LabelDesign dates() {
        List<List<String>> rows = new ArrayList<>();
        int revision = facts.job().job().revision();
        // A later revision has a date of its own; when the first was handed over is not in the job any more.
        rows.add(List.of(
                revision == 1 ? facts.say("dates.commissioned") : facts.say("dates.revision", revision),
                facts.words().date(facts.job().job().date())));
        lastTest()
                .ifPresent(date -> rows.add(
                        List.of(facts.say("dates.tested"), facts.words().date(date))));
        facts.job().expiries().stream().map(this::row).forEach(rows::add);
        return onBoard("dates", LabelReason.DATES, LabelReading.HAND, facts.say("dates.title"))
                .with(
                        new LabelPart.Grid(List.of(), rows, 0, true),
                        new LabelPart.Blank(facts.say("dates.next")),
                        LabelPart.plain(firm()))
                .listing();
    }

    private Optional<LocalDate> lastTest() {
        return facts.job().tests().stream()
                .map(TestResult::on)
                .filter(Objects::nonNull)
                .max(Comparator.naturalOrder());
    }

    private List<String> row(Expiry expiry) {
        return List.of(expiry.what(), facts.words().date(expiry.on()));
    }

    private String firm() {
        String phone = facts.it().installer().phone();
        return facts.it().installer().firm() + (phone == null ? "" : "\n" + phone);
    }

    private LabelDesign rcd(Rcd rcd) {
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.strong(facts.say(
                "rcd.what",
                facts.given(rcd.rating()).orElse(""),
                facts.given(rcd.type()).orElse(""))));
        parts.add(LabelPart.plain(facts.say(press()), facts.say("rcd.fails"), facts.say("rcd.proves")));
        List<List<String>> tested = lastTests(rcd).stream().map(this::tested).toList();
        if (!tested.isEmpty()) {
            parts.add(LabelPart.facts(tested));
        }
        return LabelDesign.of(
                        "rcd-" + rcd.id(),
                        LabelReason.RCD,
                        LabelSpot.RCD,
                        LabelFacts.place(rcd.where()),
                        LabelReading.HAND,
                        facts.say("rcd.title", rcd.id()))
                .with(parts);
    }

    /** In the order of the job; of very many only the latest, newest first. */
    private List<TestResult> lastTests(Rcd rcd) {
        List<TestResult> all = facts.job().tests().stream()
                .filter(test ->
                        test.test() == TestKind.RCD_TRIP && test.of().contains(rcd.id()) && test.result() != null)
                .toList();
        Comparator<TestResult> newest =
                Comparator.comparing(TestResult::on, Comparator.nullsLast(Comparator.reverseOrder()));
        return all.size() <= LabelFacts.MOST_NAMED
                ? all
                : all.stream().sorted(newest).limit(LabelFacts.MOST_NAMED).toList();
    }

    /** A cabin goes to no new berth. */
    private String press() {
        return facts.job().craft().kind() == CraftKind.CABIN ? "rcd.press.cabin" : "rcd.press";
    }

    private List<String> tested(TestResult test) {
        String on = test.on() == null ? "" : facts.words().date(test.on());
        return List.of(
                facts.say("rcd.on", facts.given(test.source()).orElse("")),
                facts.say("rcd.result", facts.given(test.result()).orElse(""), on));
    }
}
