package org.quaybook.pack.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.figures.AbsenceFigures;
import org.quaybook.figures.ReturnFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Given;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.record.Rows;
import org.quaybook.record.TestSheet;

/** For the office that supplies the power: what plugs in, is it tested, will it trip the post, what if it is unplugged. */
final class HarbourSheet {

    /** What an office asks for besides the trip times of RCDs. */
    private static final List<TestKind> ASKED = List.of(
            TestKind.LEAKAGE, TestKind.POLARITY, TestKind.EARTH_CONTINUITY, TestKind.INSULATION, TestKind.INLET_DEAD);

    private final SheetNotes notes;
    private final Shore shore;

    HarbourSheet(SheetNotes notes, Shore shore) {
        this.notes = notes;
        this.shore = shore;
    }

    /** With all tests; and, if some have been done again since, without those. */
    List<Map<String, Object>> facts() {
        List<TestResult> all =
                notes.job().tests().stream().filter(HarbourSheet::isAsked).toList();
        List<TestResult> lasting = all.stream()
                .filter(test -> all.stream().noneMatch(later -> later.replaces(test)))
                .toList();
        return all.equals(lasting)
                ? List.of(facts(all, 0))
                : List.of(facts(all, 0), facts(lasting, all.size() - lasting.size()));
    }

    private Map<String, Object> facts(List<TestResult> tested, int replaced) {
        return new Rows()
                .put("plugs", plugs())
                .put("rcds", rcds(tested))
                .put("tests", tests(tested))
                .put("replaced", replaced)
                .put("load", load())
                .put("starts", starts())
                .put("lost", lost())
                .put("here", here())
                .map();
    }

    private FormRows form() {
        return new FormRows(notes.words(), "sheets.harbour.");
    }

    private Optional<ReturnFigures> returning() {
        return notes.it().figures().shoreReturn();
    }

    private List<Map<String, Object>> plugs() {
        String volts = shore.voltage() == null
                ? returning()
                        .map(it -> notes.words().word(it.voltage().stated()))
                        .orElse("")
                : notes.known(shore.voltage());
        return form().row("inlet", notes.known(shore.inlet()))
                .row("volts", volts)
                .row("hertz", notes.known(notes.job().inverter().output().frequency()))
                .row("where", SheetNotes.text(shore.where()))
                .row("breaker", notes.known(shore.breaker()))
                .row("breaker-distance", notes.known(shore.breakerDistance()))
                .row("cable", notes.known(shore.cable()))
                .row("polarity-lamp", notes.known(shore.polarityLamp()))
                .row(
                        "galvanic",
                        shore.transformer() == null
                                ? notes.known(shore.galvanicIsolator())
                                : notes.words().say("term.transformer"))
                .list();
    }

    /** RCDs that shore power passes or ends at, each with its trip times on shore power. */
    private List<Map<String, Object>> rcds(List<TestResult> tested) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Rcd rcd : notes.job().rcds()) {
            List<TestResult> trips = tested.stream()
                    .filter(test ->
                            test.test() == TestKind.RCD_TRIP && test.of().contains(rcd.id()))
                    .toList();
            if (trips.isEmpty()) {
                rows.add(rcd(rcd, "", ""));
            }
            trips.forEach(trip -> rows.add(rcd(
                    rcd,
                    notes.result(trip),
                    trip.on() == null ? "" : notes.words().date(trip.on()))));
        }
        return rows;
    }

    private static boolean isAsked(TestResult test) {
        return ASKED.contains(test.test()) || (test.test() == TestKind.RCD_TRIP && onShore(test));
    }

    private static boolean onShore(TestResult test) {
        return Given.maybe(test.source()).filter(Source.SHORE::equals).isPresent();
    }

    private Map<String, Object> rcd(Rcd rcd, String result, String on) {
        return new Rows()
                .put("id", rcd.id())
                .put("kind", notes.say("harbour.rcd.kind", notes.known(rcd.rating()), notes.known(rcd.type())))
                .put("where", rcd.where())
                .put("feeds", feeds(rcd))
                .put("result", result)
                .put("limit", new TestSheet(notes.it(), notes.words()).limit(TestKind.RCD_TRIP))
                .put("on", on)
                .map();
    }

    /** The circuits behind it. */
    private String feeds(Rcd rcd) {
        return notes.words()
                .list(notes.job().acCircuits().stream()
                        .filter(circuit -> rcd.id().equals(circuit.rcd()))
                        .map(AcCircuit::name)
                        .toList());
    }

    private List<Map<String, Object>> tests(List<TestResult> tested) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (TestKind kind : ASKED) {
            List<TestResult> done =
                    tested.stream().filter(test -> test.test() == kind).toList();
            if (done.isEmpty()) {
                rows.add(notes.blank(kind, List.of(), "").map());
            }
            done.forEach(test -> rows.add(notes.row(test)));
        }
        return rows;
    }

    private List<Map<String, Object>> load() {
        FormRows rows = form();
        returning()
                .ifPresentOrElse(
                        it -> {
                            if (it.heldByItself()) {
                                rows.named(
                                        notes.say(
                                                "harbour.by-itself.held",
                                                it.byItself().stated()),
                                        notes.figure(it.mostByItself()));
                            } else {
                                rows.row("by-itself", notes.figure(it.mostByItself()));
                            }
                            it.heater()
                                    .ifPresent(heater -> rows.named(
                                            notes.say("harbour.with-heater", heater),
                                            notes.figure(it.mostWithHeater())));
                        },
                        () -> rows.row("by-itself", ""));
        boolean held = returning().filter(ReturnFigures::limited).isPresent();
        return rows.row(
                        held ? "limit.held" : "limit",
                        notes.known(notes.job().inverter().inputLimit()))
                .row("smallest", notes.known(shore.smallestPedestal()))
                .list();
    }

    private List<String> starts() {
        List<String> starts = new ArrayList<>();
        returning().ifPresent(it -> {
            it.chargers()
                    .forEach(charger -> starts.add(notes.say(
                            "harbour.starts.charger",
                            charger.charging().name() == null
                                    ? charger.charging().kind()
                                    : charger.charging().name(),
                            charger.input().stated())));
            if (!it.staying().isEmpty()) {
                starts.add(notes.say(
                        "harbour.starts.left-on", it.staying(), it.leftOn().stated()));
            }
        });
        if (changesBack()) {
            starts.add(notes.say("harbour.starts.changeover"));
        }
        return starts.isEmpty() ? List.of(notes.say("harbour.starts.none")) : starts;
    }

    private List<String> leftOn() {
        return notes.it().figures().absence().leftOn();
    }

    private boolean changesBack() {
        var changeover = notes.job().inverter().changeover();
        return changeover != null
                && changeover
                        .kind()
                        .known()
                        .filter(ChangeoverKind.AUTOMATIC::equals)
                        .isPresent();
    }

    /** What happens on board when the lead is pulled. */
    private List<String> lost() {
        List<String> lost = new ArrayList<>();
        AbsenceFigures absence = notes.it().figures().absence();
        Optional<WhenShoreFails> fails = Optional.ofNullable(
                        notes.job().inverter().changeover())
                .flatMap(it -> Given.maybe(it.whenShoreFails()));
        boolean takesOver = fails.filter(WhenShoreFails.TAKE_OVER::equals).isPresent();
        boolean staysOff = fails.filter(WhenShoreFails.STAY_OFF::equals).isPresent();
        if (takesOver) {
            lost.add(notes.say("harbour.lost.live"));
        }
        if (takesOver && !leftOn().isEmpty()) {
            lost.add(notes.say(
                    "harbour.lost.takes-over",
                    leftOn(),
                    absence.toReserve().stated(),
                    absence.toReserveWorn().stated()));
        }
        List<String> stopping = Stream.concat(
                        staysOff ? leftOn().stream() : Stream.empty(),
                        notes.it().figures().pastInverter().stream()
                                .filter(it -> it.isOn(Source.SHORE)
                                        && Given.isYes(it.appliance().leftOn()))
                                .map(it -> it.appliance().name()))
                .toList();
        if (!stopping.isEmpty()) {
            lost.add(notes.say("harbour.lost.stays-off", stopping));
        }
        lost.add(notes.say("harbour.lost.no-charge"));
        return lost;
    }

    /** What changes from stay to stay, and who is the owner: written in by hand. */
    private List<Map<String, Object>> here() {
        String kind = SingleSheets.kind(notes.job().craft().kind());
        return form().row("berth." + kind, "")
                .row("on-site", "")
                .row("stay", "")
                .list();
    }
}
