package org.quaybook.pack.worksheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Check;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.figures.BaselineFigures.Reading;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Rcd;
import org.quaybook.job.Rehearsal;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.record.Rows;
import org.quaybook.record.TestSheet;
import org.quaybook.text.Words;

/** The commissioning sheet: each test with method, limit, expected value and result or blank. */
final class TestsSheet {

    private final Assessment it;
    private final Job job;
    private final Words words;
    private final TestSheet limits;

    TestsSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.job = assessment.job();
        this.words = words;
        this.limits = new TestSheet(assessment, words);
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("groups", List.of(group("dead", dead()), group("load", load()), group("live", live())))
                .put("load", words.word(it.figures().baseline().current().stated()))
                .put("rehearsal", rehearsal())
                .put(
                        "bondRule",
                        words.say(
                                "worksheet.tests.bond.intro",
                                words.cited(
                                        Check.NEUTRAL_BOND_MISSING.citation().source())))
                .put("modes", modes())
                .put("faults", faults())
                .map();
    }

    /** Where neutral and earth must be tied in each mode, and what the job says. */
    private List<Map<String, Object>> modes() {
        return it.figures().ac().bonds().modes().stream()
                .map(mode -> new Rows()
                        .put("mode", words.term(mode.mode()))
                        .put("must", words.term(mode.must()))
                        .put("verdict", words.term(mode.verdict()))
                        .map())
                .toList();
    }

    /** What ends a fault on each circuit while the inverter feeds. */
    private List<Map<String, Object>> faults() {
        return it.figures().ac().circuits().stream()
                .filter(one -> one.onShort().isPresent() || one.onEarthFault().isPresent())
                .map(one -> new Rows()
                        .put("circuit", one.circuit().id() + " " + one.circuit().name())
                        .put("short", one.onShort().map(words::term).orElse(""))
                        .put("earth", one.onEarthFault().map(words::term).orElse(""))
                        .map())
                .toList();
    }

    private Map<String, Object> group(String id, List<Map<String, Object>> rows) {
        return new Rows()
                .put("title", words.say("worksheet.tests.group." + id))
                .put("rows", rows)
                .map();
    }

    /** Everything dead and unplugged. */
    private List<Map<String, Object>> dead() {
        List<Map<String, Object>> rows = new ArrayList<>();
        rows.addAll(compared(TestKind.EARTH_CONTINUITY, true));
        rows.addAll(compared(TestKind.INSULATION, false));
        return rows;
    }

    /** On the battery, with a load. */
    private List<Map<String, Object>> load() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (TestKind kind :
                List.of(TestKind.REST_VOLTAGE, TestKind.BANK_DROP, TestKind.VOLTAGE_DROP, TestKind.INVERTER_VOLTAGE)) {
            rows.addAll(compared(kind, false));
        }
        rows.addAll(compared(TestKind.JOINT_DROP, true));
        rows.addAll(compared(TestKind.JOINT_TEMPERATURE, true));
        return rows;
    }

    /** With mains from each source: for licensed people. */
    private List<Map<String, Object>> live() {
        List<Map<String, Object>> rows = new ArrayList<>(compared(TestKind.NEUTRAL_BOND, true));
        rows.addAll(compared(TestKind.RCD_TRIP, false));
        boolean shore = job.shore() != null;
        for (Rcd rcd : job.rcds()) {
            rows.addAll(simple(TestKind.RCD_BUTTON, List.of(rcd.id()), Optional.empty()));
        }
        rows.addAll(simple(TestKind.POLARITY, List.of(), Optional.of(Source.INVERTER)));
        if (shore) {
            rows.addAll(simple(TestKind.POLARITY, List.of(), Optional.of(Source.SHORE)));
            rows.addAll(simple(TestKind.INLET_DEAD, List.of(), Optional.of(Source.INVERTER)));
        }
        rows.addAll(compared(TestKind.LEAKAGE, false));
        if (shore) {
            rows.addAll(simple(TestKind.SHORE_LOST, List.of(), Optional.empty()));
        }
        if (job.inverter().bypass() != null) {
            rows.addAll(simple(TestKind.BYPASS, List.of(), Optional.empty()));
        }
        return rows;
    }

    /**
     * The numbers of a kind that a later visit compares.
     *
     * @param always whether a line stands there even if the job names nothing to test
     */
    private List<Map<String, Object>> compared(TestKind kind, boolean always) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Item item : it.figures().baseline().items()) {
            if (item.kind() == kind) {
                rows.add(row(
                        kind,
                        words.list(item.of()),
                        item.source().map(words::term).orElse(""),
                        item.predicted()
                                .map(figure -> words.word(figure.stated()))
                                .orElse(""),
                        item.first().map(Reading::test)));
            }
        }
        if (rows.isEmpty() && always) {
            rows.add(row(kind, "", "", "", Optional.empty()));
        }
        return rows;
    }

    /** A test that a later visit does not compare: those of the job, or a line to write on. */
    private List<Map<String, Object>> simple(TestKind kind, List<String> of, Optional<Source> source) {
        List<Map<String, Object>> done = job.tests().stream()
                .filter(test -> test.test() == kind
                        && (of.isEmpty() || test.of().containsAll(of))
                        && (source.isEmpty() || source.equals(Given.maybe(test.source()))))
                .map(test -> row(
                        kind,
                        words.list(test.of()),
                        Given.maybe(test.source()).map(words::term).orElse(""),
                        "",
                        Optional.of(test)))
                .toList();
        return done.isEmpty()
                ? List.of(row(kind, words.list(of), source.map(words::term).orElse(""), "", Optional.empty()))
                : done;
    }

    private Map<String, Object> row(
            TestKind kind, String of, String source, String expected, Optional<TestResult> test) {
        return new Rows()
                .put("test", words.term(kind))
                .put("of", of)
                .put("source", source)
                .put("method", words.say("worksheet.method." + kebab(kind)))
                .put("limit", limits.limit(kind))
                .put("limitSource", limits.limitSource(kind))
                .put("expected", expected)
                .put("at", test.map(it -> Answers.given(it.at(), words)).orElse(""))
                .put("result", test.map(this::result).orElse(""))
                .put("instrument", test.map(it -> said(it.instrument())).orElse(""))
                .put("by", test.map(it -> said(it.by())).orElse(""))
                .put(
                        "on",
                        test.map(it -> it.on() == null ? "" : words.date(it.on()))
                                .orElse(""))
                .map();
    }

    private String result(TestResult test) {
        return test.outcome() == null
                ? Answers.given(test.result(), words)
                : test.result() == null
                        ? words.term(test.outcome())
                        : words.say(
                                "worksheet.tests.both",
                                Answers.given(test.result(), words),
                                words.term(test.outcome()));
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static String kebab(TestKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What the owner does himself before he signs. */
    private List<Map<String, Object>> rehearsal() {
        Rehearsal done = job.rehearsal();
        List<Map<String, Object>> rows = new ArrayList<>();
        rows.add(shown("started", done != null && Given.isYes(done.started()), done));
        rows.add(shown("all-off", done != null && Given.isYes(done.allOff()), done));
        if (job.shore() != null) {
            rows.add(shown("shore-lost", done != null && Given.isYes(done.shoreLost()), done));
        }
        return rows;
    }

    private Map<String, Object> shown(String what, boolean yes, @Nullable Rehearsal done) {
        return new Rows()
                .put("what", words.say("worksheet.tests.shown." + what))
                .put("done", yes && done != null ? words.date(done.on()) : "")
                .map();
    }
}
