package org.quaybook.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Given;
import org.quaybook.job.Provenance;
import org.quaybook.job.ServiceEntry;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.reference.Citation;
import org.quaybook.reference.Citation.Standing;
import org.quaybook.reference.RcdLimits;
import org.quaybook.reference.TestLimit;
import org.quaybook.reference.TestLimits;
import org.quaybook.text.Words;

/** The tests done at handover beside the limits they are held against, without the names of those who tested. */
public final class TestSheet {

    private final Assessment it;
    private final Words words;

    public TestSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.words = words;
    }

    List<Map<String, Object>> rows() {
        return it.job().testsAtHandover().stream().map(this::row).toList();
    }

    /** What a visit after handing over read. */
    List<Map<String, Object>> rows(ServiceEntry entry) {
        return entry.readings().stream().map(this::row).toList();
    }

    private Map<String, Object> row(TestResult test) {
        return new Rows()
                .put("kind", test.test().name())
                .put("test", words.term(test.test()))
                .put("of", words.list(test.of()))
                .put("source", given(test.source()))
                .put("at", given(test.at()))
                .put("result", result(test))
                .put("limit", limit(test.test()))
                .put("limitSource", limitSource(test.test()))
                .put("on", test.on() == null ? "" : words.date(test.on()))
                .put("instrument", test.instrument())
                .map();
    }

    private String result(TestResult test) {
        List<String> parts = new ArrayList<>();
        if (test.result() != null) {
            parts.add(given(test.result()));
        }
        if (test.outcome() != null) {
            parts.add(words.term(test.outcome()));
        }
        return String.join(", ", parts);
    }

    /** The limit of a kind of test; says so where none is set. */
    public String limit(TestKind kind) {
        return limitOf(kind).orElseGet(() -> words.say("record.limit.none"));
    }

    /** Where that limit comes from, with its standing; empty where none is set. */
    public String limitSource(TestKind kind) {
        return source(kind).map(this::cited).orElse("");
    }

    private Optional<String> limitOf(TestKind kind) {
        return switch (kind) {
            case RCD_TRIP -> Optional.of(rcd(it.tables().rules().rcd()));
            case VOLTAGE_DROP ->
                Optional.of(words.say(
                        "record.limit.drop", it.figures().supply().allowedDrop().stated()));
            case JOINT_DROP -> joint("joint-drop", "record.limit.joint-drop");
            case JOINT_TEMPERATURE -> joint("joint-rise", "record.limit.joint-rise");
            case RCD_BUTTON -> Optional.of(words.say("record.limit.trips"));
            case POLARITY -> Optional.of(words.say("record.limit.polarity"));
            default -> row(kind).flatMap(this::range);
        };
    }

    private Optional<String> joint(String limit, String sentence) {
        return TestLimits.standard().of(limit).most().map(most -> words.say(sentence, most));
    }

    private Optional<Citation> source(TestKind kind) {
        return switch (kind) {
            case RCD_TRIP -> Optional.of(it.tables().rules().rcd().timeAtRated().citation());
            case VOLTAGE_DROP ->
                Optional.of(it.tables().rules().inverterFeedDrop().citation());
            default -> row(kind).map(TestLimit::citation);
        };
    }

    /** A source that nobody has read again says so. */
    private String cited(Citation citation) {
        return citation.standing() == Standing.FROM_MEMORY
                ? words.say("record.limit.source", words.cited(citation.source()), citation.standing())
                : words.cited(citation.source());
    }

    /** The clause of the rulebook that the job follows; none where its clause is not known. */
    private Optional<String> polarity() {
        return switch (it.tables().rules().name()) {
            case "iso-13297" -> Optional.of("ac-polarity");
            case "cabin", "caravan" -> Optional.of("ac-polarity-iec");
            default -> Optional.empty();
        };
    }

    private Optional<TestLimit> row(TestKind kind) {
        Optional<String> name = switch (kind) {
            case INSULATION -> Optional.of("insulation");
            case EARTH_CONTINUITY -> Optional.of("earth-continuity");
            case NEUTRAL_BOND -> Optional.of("bond-inverter");
            case INLET_DEAD -> Optional.of("inlet-dead");
            case RCD_BUTTON -> Optional.of("rcd-button");
            case POLARITY -> polarity();
            case JOINT_DROP -> Optional.of("joint-drop");
            case JOINT_TEMPERATURE -> Optional.of("joint-rise");
            case RCD_TRIP, VOLTAGE_DROP, BANK_DROP, INVERTER_VOLTAGE, SHORE_LOST, BYPASS, LEAKAGE, REST_VOLTAGE ->
                Optional.empty();
        };
        return name.map(TestLimits.standard()::of);
    }

    private String rcd(RcdLimits limits) {
        return limits.timeAtFiveTimes()
                .map(five ->
                        words.say("record.limit.rcd-both", limits.timeAtRated().value(), five.value()))
                .orElseGet(
                        () -> words.say("record.limit.rcd", limits.timeAtRated().value()));
    }

    private Optional<String> range(TestLimit limit) {
        return limit.least()
                .filter(least -> least > 0)
                .map(least -> words.say("record.limit.least", least, limit.unit()))
                .or(() -> limit.most().map(most -> words.say("record.limit.most", most, limit.unit())));
    }

    private String given(@Nullable Given<?> given) {
        if (given == null) {
            return "";
        }
        return given.provenance() == Provenance.NOT_SEEN
                ? words.term(Provenance.NOT_SEEN)
                : words.word(Objects.requireNonNull(given.value()));
    }
}
