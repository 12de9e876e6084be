package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Check;
import org.quaybook.checks.Finding;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.job.Shore;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.quantity.Voltage;
import org.quaybook.text.Words;

/** What the designs of labels ask of a job, in the words of one language. */
record LabelFacts(Assessment it, Words words) {

    /** As many things as one sentence names in full; common practice, no source. */
    static final int MOST_NAMED = 8;

    /** More ids than this in one step cannot be ticked off while working; common practice, no source. */
    static final int MOST_IDS = 60;

    Job job() {
        return it.job();
    }

    Figures figures() {
        return it.figures();
    }

    String say(String key, Object... arguments) {
        return words.say("labels." + key, arguments);
    }

    /** The same sentence for a job without shore power has a key of its own. */
    String sayByShore(String key, Object... arguments) {
        return say(job().shore() == null ? key + ".no-shore" : key, arguments);
    }

    String say(Figure<?> figure) {
        return words.word(figure.stated());
    }

    /** A nominal voltage: without decimals that nobody speaks. */
    String volts(Voltage nominal) {
        return say("volts", nominal.volts());
    }

    /** The inverter's output voltage; empty if nobody has seen it. */
    String mains() {
        return job().inverter().output().voltage().known().map(this::volts).orElse("");
    }

    /** What the shore inlet is made for: "230 V · 50 Hz · 16 A at most". */
    String shoreRating(Shore shore) {
        List<String> known = Stream.of(
                        Given.maybe(shore.voltage()).map(this::volts).orElseGet(this::mains),
                        given(job().inverter().output().frequency()).orElse(""),
                        given(shore.inlet())
                                .map(inlet -> say("inlet.most", inlet))
                                .orElse(""))
                .filter(value -> !value.isEmpty())
                .toList();
        return String.join(" · ", known);
    }

    /** A value of the job in words; empty if it is left out or nobody has seen it. */
    Optional<String> given(@Nullable Given<?> given) {
        return Given.maybe(given).map(words::word);
    }

    /** Boat, motorhome or cabin. */
    String craft() {
        return words.term(job().craft().kind());
    }

    /** The small line of a label that tells job, revision and label. */
    String stamp(String label) {
        return say("stamp", job().job().number(), job().job().revision(), label);
    }

    /** A cable by its id, with where it runs: "B1 (battery + to inverter +)"; the id alone if the job has no such cable. */
    String run(String cable) {
        return job().cables().stream()
                .filter(one -> one.id().equals(cable))
                .findFirst()
                .map(one -> say("fuse.run", one.id(), one.from(), one.to()))
                .orElse(cable);
    }

    /** Cables with where they run; very many by their ids alone, which stand on their tags. */
    String runs(List<String> cables) {
        return words.list(
                cables.size() > MOST_NAMED
                        ? cables
                        : cables.stream().map(this::run).toList());
    }

    /** Names in a row; of very many the first, and how many more. */
    String some(List<String> names) {
        if (names.size() <= MOST_NAMED) {
            return words.list(names);
        }
        List<String> shown = new ArrayList<>(names.subList(0, MOST_NAMED - 1));
        shown.add(say("more", names.size() - shown.size()));
        return words.list(shown);
    }

    static String place(@Nullable String where) {
        return where == null ? "" : where;
    }

    /** "S1 Battery switch". */
    String name(Isolator isolator) {
        return isolator.id() + " " + isolator.name();
    }

    List<LabelSource> sources() {
        return LabelSource.of(job());
    }

    String name(LabelSource source) {
        return say("source." + source.kind().id());
    }

    String names(List<LabelSource> sources) {
        return words.list(sources.stream().map(this::name).toList());
    }

    /** Whether the inverter starts by itself when shore power fails or the generator stops. */
    boolean takesOver() {
        return (job().shore() != null || job().generator() != null)
                && job().inverter().changeover() != null
                && Given.maybe(job().inverter().changeover().whenShoreFails())
                        .map(WhenShoreFails.TAKE_OVER::equals)
                        .orElse(false);
    }

    boolean searches() {
        return job().inverter().searchMode() != null
                && Given.isYes(job().inverter().searchMode().on());
    }

    /**
     * Whether the sources are known to be kept apart. A label that tells the sources must never stand for a missing
     * lock between them.
     */
    boolean keptApart() {
        return !forbidden(Check.CHANGEOVER_INTERLOCK)
                && !forbidden(Check.CHANGEOVER_UNKNOWN)
                && !forbidden(Check.INLET_LIVE);
    }

    /** Whether a check found something that forbids handing over. */
    boolean forbidden(Check check) {
        return it.findings().stream()
                .filter(Finding::forbids)
                .map(Finding::check)
                .anyMatch(check::equals);
    }
}
