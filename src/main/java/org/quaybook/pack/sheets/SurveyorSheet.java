package org.quaybook.pack.sheets;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.checks.Alike;
import org.quaybook.diag.Severity;
import org.quaybook.figures.AcFigures.CircuitFigures;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Craft;
import org.quaybook.job.Given;
import org.quaybook.job.Rcd;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.job.Vent;
import org.quaybook.record.AlikeWords;
import org.quaybook.record.RcdSources;
import org.quaybook.record.Rows;
import org.quaybook.record.TestSheet;

/** For surveyor and insurer: what is fitted, against which limit, who tested it when, what was accepted, what not seen. */
final class SurveyorSheet {

    /** What a surveyor looks for first, besides the trip time of each RCD. */
    private static final List<TestKind> EXPECTED =
            List.of(TestKind.INSULATION, TestKind.EARTH_CONTINUITY, TestKind.POLARITY, TestKind.VOLTAGE_DROP);

    private final SheetNotes notes;

    SurveyorSheet(SheetNotes notes) {
        this.notes = notes;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("identity", identity())
                .put("bank", bank())
                .put("vent", vent())
                .put(
                        "fuses",
                        notes.it().figures().fuses().stream().map(this::fuse).toList())
                .put(
                        "cables",
                        notes.it().figures().supply().runs().stream()
                                .map(this::cable)
                                .toList())
                .put("drop", drop())
                .put(
                        "circuits",
                        notes.it().figures().ac().circuits().stream()
                                .map(this::circuit)
                                .toList())
                .put("rcds", notes.job().rcds().stream().map(this::rcd).toList())
                .put("tests", tests())
                .put("limits", limits())
                .put("accepted", accepted())
                .put("open", open())
                .put("notes", settled())
                .put("scope", notes.job().scope())
                .put("policy", notes.job().policyConditions())
                .map();
    }

    private FormRows form() {
        return new FormRows(notes.words(), "sheets.surveyor.");
    }

    private List<Map<String, Object>> identity() {
        Craft craft = notes.job().craft();
        var header = notes.job().job();
        return form().row("craft", notes.say("pair", craft.name(), craft.type() == null ? craft.kind() : craft.type()))
                .row("built", SheetNotes.text(craft.hull()))
                .row("rulebook", notes.it().tables().rules().title())
                .row("fitter", SheetNotes.text(header.fitter()))
                .row("registration", SheetNotes.text(notes.it().installer().registration()))
                .row("testers", notes.words().list(notes.testers()))
                .row("instruments", notes.words().list(instruments()))
                .list();
    }

    private List<String> instruments() {
        return notes.job().tests().stream()
                .map(TestResult::instrument)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .distinct()
                .toList();
    }

    private List<Map<String, Object>> bank() {
        Bank bank = notes.job().bank();
        BankFigures figures = notes.it().figures().bank();
        boolean lithium = !figures.battery().leadAcid();
        FormRows rows = form().row("chemistry", notes.known(bank.chemistry()))
                .row(
                        "block",
                        notes.say(
                                "surveyor.block.form",
                                notes.known(bank.block().voltage()),
                                notes.known(bank.block().capacity()),
                                notes.known(bank.series()),
                                notes.known(bank.parallel())))
                .row("energy", notes.figure(figures.energy()))
                .row("short", notes.figure(figures.shortCircuit()))
                .row("where", SheetNotes.text(bank.where()))
                .row(
                        "fitted",
                        bank.block().fitted() == null
                                ? ""
                                : notes.words().word(bank.block().fitted()))
                .row("serial", SheetNotes.text(bank.block().serial()))
                .row("torque", notes.known(bank.torque()));
        if (lithium) {
            var protection = bank.protection();
            rows.row("discharge", protection == null ? "" : notes.known(protection.discharge()))
                    .row("cut-out", protection == null ? "" : notes.known(protection.cutOut()));
        }
        return rows.list();
    }

    private List<Map<String, Object>> vent() {
        Vent vent = notes.job().bank().vent();
        var needed = notes.it().figures().vent();
        if (needed.isEmpty()) {
            return List.of();
        }
        return form().row("vent.flow", notes.figure(needed.get().boostFlow()))
                .row("vent.each", notes.figure(needed.get().boostOpening()))
                .row("vent.inlet", vent == null ? "" : notes.known(vent.inlet()))
                .row("vent.outlet", vent == null ? "" : notes.known(vent.outlet()))
                .row("vent.leads-to", vent == null ? "" : SheetNotes.text(vent.leadsTo()))
                .list();
    }

    private Map<String, Object> fuse(FuseFigures fuse) {
        boolean there = fuse.fuse() != null;
        return new Rows()
                .put("id", there ? fuse.id() : notes.say("surveyor.fuse.missing"))
                .put("kind", kind(fuse))
                .put("most", notes.bare(fuse.most()))
                .put("interrupts", notes.bare(fuse.interrupts()))
                .put("must", notes.bare(fuse.mustInterrupt()))
                .put(
                        "distance",
                        there ? notes.known(Objects.requireNonNull(fuse.fuse()).distance()) : "")
                .put("mostDistance", notes.bare(fuse.mostDistance()))
                .put(
                        "where",
                        there
                                ? SheetNotes.text(
                                        Objects.requireNonNull(fuse.fuse()).where())
                                : "")
                .map();
    }

    /** Family and rating as fitted; nothing is printed for what is only proposed. */
    private String kind(FuseFigures fuse) {
        List<String> parts = new ArrayList<>();
        if (fuse.familyFitted()) {
            fuse.family().ifPresent(family -> parts.add(notes.words().term(family)));
        }
        if (fuse.ratingFitted()) {
            fuse.rating().ifPresent(rating -> parts.add(notes.bare(rating)));
        }
        return String.join(", ", parts);
    }

    private Map<String, Object> cable(RunFigures run) {
        return new Rows()
                .put("id", run.cable().id())
                .put("run", notes.say("run", run.cable().from(), run.cable().to()))
                .put("conductor", run.fitted() ? run.rating().conductor().toString() : "")
                .put("length", notes.known(run.cable().length()))
                .put("insulation", notes.known(run.cable().insulation()))
                .put("allowed", run.fitted() ? notes.bare(run.allowed()) : "")
                .put("fuse", fuseOf(run))
                .map();
    }

    /** Ids and ratings of the fuses that protect a cable. */
    private String fuseOf(RunFigures run) {
        List<String> fuses = notes.it().figures().fuses().stream()
                .filter(fuse -> fuse.fuse() != null
                        && Objects.requireNonNull(fuse.fuse())
                                .protects()
                                .contains(run.cable().id())
                        && fuse.ratingFitted())
                .map(fuse -> notes.say("pair", fuse.id(), notes.bare(fuse.rating())))
                .toList();
        return fuses.isEmpty() ? notes.say("none") : notes.words().list(fuses);
    }

    private String drop() {
        SupplyFigures supply = notes.it().figures().supply();
        return notes.say(
                "surveyor.drop",
                notes.it().figures().inverter().worstCurrent().stated(),
                supply.decidingDrop().stated(),
                supply.allowedDrop().stated());
    }

    private Map<String, Object> circuit(CircuitFigures figures) {
        var circuit = figures.circuit();
        return new Rows()
                .put("id", circuit.id())
                .put("name", circuit.name())
                .put(
                        "breaker",
                        Stream.of(notes.known(circuit.curve()), notes.known(circuit.breaker()))
                                .filter(part -> !part.isEmpty())
                                .collect(Collectors.joining(" ")))
                .put("cable", notes.known(circuit.cable()))
                .put(
                        "allowed",
                        figures.cable().map(it -> notes.bare(it.allowed())).orElse(""))
                .put("rcd", circuit.rcd())
                .map();
    }

    private String rcd(Rcd rcd) {
        return notes.say(
                "surveyor.rcd",
                rcd.id(),
                notes.known(rcd.rating()),
                notes.known(rcd.type()),
                new RcdSources(notes.job(), notes.words()).of(rcd),
                SheetNotes.text(rcd.where()));
    }

    /** What is recorded, and a line for what should have been. */
    private List<Map<String, Object>> tests() {
        List<Map<String, Object>> rows =
                notes.job().tests().stream().map(notes::row).collect(Collectors.toCollection(ArrayList::new));
        for (Rcd rcd : notes.job().rcds()) {
            for (Source source : sources(rcd)) {
                if (notes.tests(TestKind.RCD_TRIP).stream().noneMatch(test -> covers(test, rcd, source))) {
                    rows.add(notes.blank(
                                    TestKind.RCD_TRIP,
                                    List.of(rcd.id()),
                                    notes.words().term(source))
                            .map());
                }
            }
        }
        List<TestKind> expected = new ArrayList<>(EXPECTED);
        if (notes.job().shore() != null) {
            expected.add(TestKind.LEAKAGE);
            expected.add(TestKind.INLET_DEAD);
        }
        expected.stream()
                .filter(kind -> notes.tests(kind).isEmpty())
                .forEach(kind -> rows.add(notes.blank(kind, List.of(), "").map()));
        return rows;
    }

    private static Set<Source> sources(Rcd rcd) {
        return Given.maybe(rcd.source()).map(Set::of).orElse(Set.of());
    }

    private static boolean covers(TestResult test, Rcd rcd, Source source) {
        return test.of().contains(rcd.id())
                && Given.maybe(test.source()).filter(source::equals).isPresent();
    }

    /** Where the limits come from, each kind of test once. */
    private List<String> limits() {
        TestSheet sheet = new TestSheet(notes.it(), notes.words());
        Set<TestKind> kinds =
                notes.job().tests().stream().map(TestResult::test).collect(Collectors.toCollection(LinkedHashSet::new));
        return kinds.stream()
                .filter(kind -> !sheet.limitSource(kind).isEmpty())
                .map(kind -> notes.say("surveyor.limit", kind, sheet.limitSource(kind)))
                .toList();
    }

    private List<String> accepted() {
        return Alike.of(notes.it().findings()).stream()
                .flatMap(alike -> alike.finding().accepted().stream()
                        .map(deviation -> notes.say(
                                "surveyor.accepted.point", alike.finding().message(), deviation.why(), deviation.on()))
                        .map(point -> AlikeWords.of(alike, point, notes.words())))
                .toList();
    }

    /** What an empty list of open points would hide: that points were accepted, and how many are only worth knowing. */
    private List<String> settled() {
        if (!open().isEmpty()) {
            return List.of();
        }
        List<String> settled = new ArrayList<>();
        if (!accepted().isEmpty()) {
            settled.add(notes.say("surveyor.open.accepted"));
        }
        long noted = notes.it().findings().stream()
                .filter(finding -> finding.severity() == Severity.NOTE)
                .count();
        if (noted > 0) {
            settled.add(notes.say("surveyor.open.noted", noted));
        }
        return settled;
    }

    private List<String> open() {
        return Alike.of(notes.it().findings()).stream()
                .filter(alike ->
                        alike.finding().accepted().isEmpty() && alike.finding().severity() != Severity.NOTE)
                .map(alike ->
                        AlikeWords.of(alike, notes.words().say(alike.finding().message()), notes.words()))
                .toList();
    }
}
