package org.quaybook.pack.sheets;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figure;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Owner;
import org.quaybook.job.Shore;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Stated;
import org.quaybook.record.Known;
import org.quaybook.record.Rows;
import org.quaybook.record.TestSheet;
import org.quaybook.text.Words;

/**
 * How single sheets write a value, a figure, a test.
 *
 * @param it the job with figures and findings
 * @param words the reader's language
 */
record SheetNotes(Assessment it, Words words) {

    /** What the owner did or saw himself; whoever is named there is of his crew. */
    private static final Set<TestKind> WATCHED = Set.of(TestKind.SHORE_LOST);

    Job job() {
        return it.job();
    }

    String say(String key, Object... arguments) {
        return words.say("sheets." + key, arguments);
    }

    /** A value of the job and how it is known; empty when the job leaves it out. */
    String known(@Nullable Given<?> given) {
        return new Known(words).say(given);
    }

    /** A figure, marked as calculated. */
    String figure(Figure<?> figure) {
        return say("calculated", figure.stated());
    }

    /** A value that is no figure of its own. */
    String figure(Stated calculated) {
        return say("calculated", calculated);
    }

    /** A figure in a column whose heading says that it is calculated. */
    String bare(Figure<?> figure) {
        return words.word(figure.stated());
    }

    String bare(Optional<? extends Figure<?>> figure) {
        return figure.map(this::bare).orElse("");
    }

    /** A text of the job; empty when it is left out. */
    static String text(@Nullable String text) {
        return text == null ? "" : text;
    }

    /** A test in words: what was tested, where, fed by what. */
    String subject(TestKind kind, List<String> of, String source) {
        String what = of.isEmpty() ? words.term(kind) : say("test.of", kind, of);
        return source.isEmpty() ? what : say("test.fed", what, source);
    }

    /** A row of a table of tests; everything that the job does not say is empty, to be written in. */
    Map<String, Object> row(TestResult test) {
        return blank(test.test(), test.of(), fed(test))
                .put("result", resultAt(test))
                .put("on", test.on() == null ? "" : words.date(test.on()))
                .put("instrument", test.instrument())
                .put("by", tester(test))
                .map();
    }

    /** A test that nobody recorded. */
    Rows blank(TestKind kind, List<String> of, String source) {
        return new Rows()
                .put("what", subject(kind, of, source))
                .put("result", "")
                .put("limit", limit(kind))
                .put("on", "")
                .put("instrument", "")
                .put("by", "");
    }

    /** For leakage, what the RCD behind the inlet should see at rest. */
    private String limit(TestKind kind) {
        Optional<String> budget = kind == TestKind.LEAKAGE ? budget() : Optional.empty();
        return budget.orElseGet(() -> new TestSheet(it, words).limit(kind));
    }

    private Optional<String> budget() {
        Shore shore = job().shore();
        return shore == null
                ? Optional.empty()
                : it.figures().ac().rcds().stream()
                        .filter(rcd -> rcd.rcd().id().equals(shore.rcd()))
                        .flatMap(rcd -> rcd.budget().stream())
                        .map(most -> say("test.leakage", most.stated()))
                        .findFirst();
    }

    /** The result and the load or current that it was read at. */
    String resultAt(TestResult test) {
        String at = known(test.at());
        return at.isEmpty() ? result(test) : say("at", result(test), at);
    }

    private String fed(TestResult test) {
        return Given.maybe(test.source()).map(words::term).orElse("");
    }

    String result(TestResult test) {
        String outcome = test.outcome() == null ? "" : words.term(test.outcome());
        String reading = test.result() == null ? "" : reading(test.result());
        return reading.isEmpty() || outcome.isEmpty() ? reading + outcome : say("both", reading, outcome);
    }

    /** Every reading of a test is measured: only who says otherwise is marked. */
    private String reading(Given<?> result) {
        return result.value() == null ? known(result) : words.word(Objects.requireNonNull(result.value()));
    }

    /** Who tested; the owner's side is not named. */
    private String tester(TestResult test) {
        String by = text(test.by());
        boolean owners = !by.isEmpty() && (WATCHED.contains(test.test()) || isOwners(by));
        return owners ? say("by-owner") : by;
    }

    private boolean isOwners(String by) {
        Owner owner = job().owner();
        return owner != null && lastWord(owner.name()).equals(lastWord(by));
    }

    private static String lastWord(String name) {
        String stripped = name.strip().toLowerCase(Locale.ROOT);
        return stripped.substring(stripped.lastIndexOf(' ') + 1);
    }

    /** Those who tested, in the order of the tests, the owner's side left out. */
    List<String> testers() {
        return job().tests().stream()
                .map(this::tester)
                .filter(by -> !by.isEmpty() && !by.equals(say("by-owner")))
                .distinct()
                .toList();
    }

    List<TestResult> tests(TestKind kind) {
        return job().tests().stream().filter(test -> test.test() == kind).toList();
    }
}
