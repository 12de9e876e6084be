package org.quaybook.pack.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Account;
import org.quaybook.job.Bank;
import org.quaybook.job.Cable;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Photo;
import org.quaybook.job.Rcd;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Torque;
import org.quaybook.record.Rows;
import org.quaybook.record.SettingSheet;
import org.quaybook.record.TransformerWords;

/** For the next electrician before he travels: how it goes dead, how it is set, what fits, what to bring. */
final class ElectricianSheet {

    /** Readings that say on arrival whether something has changed. */
    private static final List<TestKind> BASELINE = List.of(
            TestKind.REST_VOLTAGE,
            TestKind.VOLTAGE_DROP,
            TestKind.JOINT_DROP,
            TestKind.BANK_DROP,
            TestKind.INVERTER_VOLTAGE,
            TestKind.JOINT_TEMPERATURE,
            TestKind.RCD_TRIP,
            TestKind.INSULATION,
            TestKind.LEAKAGE);

    private final SheetNotes notes;

    ElectricianSheet(SheetNotes notes) {
        this.notes = notes;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("prove", prove())
                .put("settings", settings())
                .put("changed", changed())
                .put(
                        "fuses",
                        notes.it().figures().fuses().stream().map(this::fuse).toList())
                .put("joints", joints())
                .put(
                        "cables",
                        notes.it().figures().supply().runs().stream()
                                .map(this::cable)
                                .toList())
                .put("places", places())
                .put("bring", bring())
                .put("baseline", baseline())
                .put("photos", notes.job().photos().stream().map(Photo::shows).toList())
                .put(
                        "accounts",
                        notes.job().accounts().stream().map(Account::service).toList())
                .put("scope", notes.job().scope())
                .map();
    }

    private FormRows form() {
        return new FormRows(notes.words(), "sheets.electrician.");
    }

    /** The record's own steps: both say the same thing to whoever opens it. */
    private List<String> prove() {
        List<String> steps =
                new ArrayList<>(Stream.of(notes.job().shore() == null ? "lock" : "lock.shore", "wait", "prove", "back")
                        .map(step -> notes.words().say("record.dead." + step))
                        .toList());
        var search = notes.job().inverter().searchMode();
        if (search == null) {
            steps.add(notes.words().say("record.dead.search-unknown"));
        } else if (Given.isYes(search.on())) {
            steps.add(notes.words().say("record.dead.search"));
        }
        return steps;
    }

    private List<Map<String, Object>> settings() {
        Inverter inverter = notes.job().inverter();
        FormRows rows = form().row("alarm", delayed(inverter.alarm(), inverter.alarmDelay()))
                .row("cut-out", delayed(inverter.cutOut(), inverter.cutOutDelay()))
                .rowIf(inverter.cutOutAtOnce() != null, "cut-out-at-once", notes.known(inverter.cutOutAtOnce()))
                .row("restart", delayed(inverter.restart(), inverter.restartDelay()))
                .row(
                        "search",
                        inverter.searchMode() == null
                                ? ""
                                : notes.known(inverter.searchMode().on()))
                .row("bond", notes.known(inverter.neutralBond()));
        String behind = TransformerWords.neutral(notes.job().shore(), notes.words());
        rows.rowIf(!behind.isEmpty(), "transformer", behind);
        var changeover = inverter.changeover();
        if (changeover != null) {
            rows.row("changeover", notes.known(changeover.kind()));
        }
        if (changeover != null && notes.job().shore() != null) {
            rows.row("shore-fails", notes.known(changeover.whenShoreFails()))
                    .row("input-limit", notes.known(inverter.inputLimit()));
        }
        rows.rowIf(
                inverter.bypass() != null,
                "bypass",
                inverter.bypass() == null ? "" : inverter.bypass().where());
        return rows.row("firmware", SheetNotes.text(inverter.firmware())).list();
    }

    private String delayed(@Nullable Given<?> value, @Nullable Given<?> delay) {
        String said = notes.known(value);
        return said.isEmpty() || delay == null ? said : notes.say("after", said, notes.known(delay));
    }

    /** As left, with the device named first. */
    private List<Map<String, Object>> changed() {
        return new SettingSheet(notes.job(), notes.words())
                .rows().stream()
                        .map(row -> {
                            Map<String, Object> named = new LinkedHashMap<>(row);
                            named.put(
                                    "what",
                                    notes.say(
                                            "electrician.setting",
                                            String.valueOf(row.get("device")),
                                            String.valueOf(row.get("name"))));
                            return named;
                        })
                        .toList();
    }

    private Map<String, Object> fuse(FuseFigures fuse) {
        Fuse fitted = fuse.fuse();
        return new Rows()
                .put("id", fitted == null ? notes.say("surveyor.fuse.missing") : fuse.id())
                .put(
                        "family",
                        fuse.familyFitted()
                                ? fuse.family().map(notes.words()::term).orElse("")
                                : "")
                .put("rating", fuse.ratingFitted() ? notes.bare(fuse.rating()) : "")
                .put("where", fitted == null ? "" : fitted.where())
                .put("spare", fitted == null ? "" : fitted.spare())
                .map();
    }

    private List<Map<String, Object>> joints() {
        Bank bank = notes.job().bank();
        return form().row("lug-hole", notes.known(bank.lugHole()))
                .row("stack", notes.known(bank.stack()))
                .row("lugs", notes.known(bank.lugsPerStud()))
                .row("torque", notes.known(bank.torque()))
                .row("key", "")
                .list();
    }

    private Map<String, Object> cable(RunFigures run) {
        return new Rows()
                .put("id", run.cable().id())
                .put("run", notes.say("run", run.cable().from(), run.cable().to()))
                .put("conductor", run.fitted() ? run.rating().conductor().toString() : "")
                .put("length", notes.known(run.cable().length()))
                .put("torque", notes.known(run.cable().torque()))
                .map();
    }

    private List<Map<String, Object>> places() {
        FormRows rows = form().row(
                        "bank-place", SheetNotes.text(notes.job().bank().where()))
                .row("bank-access", "")
                .row("inverter-place", SheetNotes.text(notes.job().inverter().where()))
                .row("inverter-access", SheetNotes.text(notes.job().inverter().access()))
                .row("board-place", boards());
        if (notes.job().shore() != null) {
            rows.row("inlet-place", SheetNotes.text(notes.job().shore().where()));
        }
        if (notes.job().generator() != null) {
            rows.row("generator-place", SheetNotes.text(notes.job().generator().where()));
        }
        return rows.list();
    }

    private String boards() {
        return notes.words()
                .list(notes.job().rcds().stream()
                        .map(Rcd::where)
                        .filter(Objects::nonNull)
                        .map(Objects::requireNonNull)
                        .distinct()
                        .toList());
    }

    /** What the job itself makes one need; nothing that it does not say. */
    private List<String> bring() {
        List<String> bring = new ArrayList<>();
        Set<Torque> torques = torques();
        if (!torques.isEmpty()) {
            bring.add(notes.say("bring.torque", List.copyOf(torques)));
        }
        Given.maybe(notes.job().bank().lugHole())
                .ifPresent(hole -> sizes().forEach(size -> bring.add(notes.say("bring.lugs", size, hole))));
        bring.addAll(fuses());
        bring.add(notes.say(
                "bring.clamp", notes.it().figures().inverter().worstCurrent().stated()));
        Given.maybe(notes.job().inverter().output().voltage())
                .ifPresent(volts -> bring.add(notes.say("bring.tester", volts)));
        if (!notes.job().rcds().isEmpty()) {
            bring.add(notes.say("bring.rcd-tester"));
        }
        bring.add(notes.say("bring.insulation"));
        if (!notes.job().isolators().isEmpty()) {
            bring.add(notes.say("bring.locks", notes.job().isolators().size()));
        }
        bring.add(notes.say("bring.insulated"));
        if (notes.it().figures().bank().battery().leadAcid()) {
            bring.add(notes.say("bring.acid"));
        }
        return bring;
    }

    private Set<Torque> torques() {
        Set<Torque> torques = new LinkedHashSet<>();
        Given.maybe(notes.job().bank().torque()).ifPresent(torques::add);
        notes.job().cables().stream()
                .map(Cable::torque)
                .flatMap(torque -> Given.maybe(torque).stream())
                .forEach(torques::add);
        return torques;
    }

    /** Sizes of the conductors that end in lugs, each once. */
    private List<String> sizes() {
        return notes.it().figures().supply().runs().stream()
                .filter(RunFigures::fitted)
                .map(run -> notes.words().word(run.rating().conductor().size()))
                .distinct()
                .toList();
    }

    /** Those of one kind that lie in one place, or of which none is there, on a line. */
    private List<String> fuses() {
        Map<List<String>, List<String>> ids = new LinkedHashMap<>();
        for (FuseFigures fuse : notes.it().figures().fuses()) {
            if (fuse.familyFitted() && fuse.ratingFitted() && fuse.family().isPresent() && fuse.fuse() != null) {
                String kind =
                        notes.say("pair", notes.words().term(fuse.family().orElseThrow()), notes.bare(fuse.rating()));
                String spare =
                        SheetNotes.text(Objects.requireNonNull(fuse.fuse()).spare());
                ids.computeIfAbsent(List.of(kind, spare), none -> new ArrayList<>())
                        .add(fuse.id());
            }
        }
        List<String> fuses = new ArrayList<>();
        ids.forEach((kind, of) -> fuses.add(
                kind.get(1).isEmpty()
                        ? notes.say("bring.fuse", of, kind.get(0))
                        : notes.say("bring.fuse.aboard", of, kind.get(0), kind.get(1))));
        return fuses;
    }

    private List<Map<String, Object>> baseline() {
        return BASELINE.stream()
                .flatMap(kind -> notes.job().testsAtHandover().stream().filter(test -> test.test() == kind))
                .map(this::reading)
                .toList();
    }

    private Map<String, Object> reading(TestResult test) {
        return new Rows()
                .put(
                        "label",
                        notes.subject(
                                test.test(),
                                test.of(),
                                Given.maybe(test.source())
                                        .map(notes.words()::term)
                                        .orElse("")))
                .put("value", notes.resultAt(test))
                .map();
    }
}
