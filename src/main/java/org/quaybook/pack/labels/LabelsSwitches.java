package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.job.Isolator;

/**
 * How labels name the switches that part the sources. A warning cannot be parted, so one that names very many switches
 * says how many there are and their ids, which stand beside each of them; a list at the board says where they are. A step
 * never names some of its switches: whoever counts on it would leave the rest on.
 */
final class LabelsSwitches {

    /** Places that are found at a glance; common practice, no source. */
    private static final int MOST_PLACES = 4;

    private final LabelFacts facts;
    private final String board;

    /** @param board where the AC board is */
    LabelsSwitches(LabelFacts facts, String board) {
        this.facts = facts;
        this.board = board;
    }

    /** Whether a warning has no room for names and places of all. */
    boolean listed() {
        return facts.sources().stream()
                        .mapToInt(source -> source.isolators().size())
                        .sum()
                > LabelFacts.MOST_NAMED;
    }

    private boolean brief(LabelSource source) {
        return listed() && source.isolators().size() > 1;
    }

    /** The list that the warnings point to; empty if they say all themselves. */
    Optional<LabelDesign> list() {
        if (!listed()) {
            return Optional.empty();
        }
        List<List<String>> rows = new ArrayList<>();
        for (LabelSource source : facts.sources()) {
            for (Isolator isolator : source.isolators()) {
                rows.add(List.of(
                        isolator.id(),
                        facts.say("sources.switch", isolator.name(), isolator.where()),
                        facts.name(source)));
            }
        }
        List<String> head = List.of(facts.say("switches.id"), facts.say("switches.where"), facts.say("switches.parts"));
        return Optional.of(
                LabelDesign.of("switches", LabelReason.SOURCES, LabelSpot.BOARD, board, LabelReading.HAND, title())
                        .with(new LabelPart.Grid(head, rows, 1, true))
                        .listing());
    }

    private String title() {
        return facts.say("switches.title");
    }

    /** Where the places stand that a step leaves out. */
    Optional<String> seeList() {
        return listed() ? Optional.of(facts.say("switches.see", title())) : Optional.empty();
    }

    /** All switches of a source in a step, for whoever works on the installation. */
    String inStep(LabelSource source) {
        if (!brief(source)) {
            return facts.words()
                    .list(source.isolators().stream().map(this::withPlace).toList());
        }
        List<String> ids = source.isolators().stream().map(Isolator::id).toList();
        return ids.size() > LabelFacts.MOST_IDS
                ? facts.say("switches.all-listed", ids.size())
                : facts.say("switches.all", ids.size(), facts.words().list(ids));
    }

    private String withPlace(Isolator isolator) {
        return facts.say("sources.switch", facts.name(isolator), isolator.where());
    }

    /** Where a source is switched off, for a fire crew: places tell them more than ids. */
    String forRescuers(LabelSource source) {
        if (!brief(source)) {
            return facts.words()
                    .list(source.isolators().stream()
                            .map(isolator -> facts.say("responder.isolator", isolator.id(), isolator.where()))
                            .toList());
        }
        int count = source.isolators().size();
        List<String> places =
                source.isolators().stream().map(Isolator::where).distinct().toList();
        return places.size() > MOST_PLACES
                ? facts.say("responder.switches-listed", count, board)
                : facts.say("responder.switches", count, facts.words().list(places));
    }
}
