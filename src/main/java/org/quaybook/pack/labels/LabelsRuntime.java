package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.TogetherFigures;
import org.quaybook.record.DirectDraw;

/** The board's card of running times, and the notice of what empties the bank while nobody is there. */
final class LabelsRuntime {

    /** As many as are found at a glance; common practice, no source. */
    private static final int MOST_APPLIANCES = 8;

    private final LabelFacts facts;
    private final String board;

    LabelsRuntime(LabelFacts facts, String board) {
        this.facts = facts;
        this.board = board;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        if (!runnable().isEmpty()) {
            designs.add(runtime());
            if (listed()) {
                designs.add(together());
            }
        }
        if ((facts.takesOver() || facts.job().shore() == null)
                && !facts.figures().absence().leftOn().isEmpty()) {
            designs.add(leftOn());
        }
        return designs;
    }

    private LabelDesign onBoard(String id, LabelReason reason, LabelReading reading, String title) {
        return LabelDesign.of(id, reason, LabelSpot.BOARD, board, reading, title);
    }

    private List<ApplianceFigures> runnable() {
        return facts.figures().appliances().stream()
                .filter(ApplianceFigures::runs)
                .toList();
    }

    /** What takes most comes first: it is what empties the bank and sounds the alarm. */
    private LabelDesign runtime() {
        List<List<String>> rows = runnable().stream()
                .sorted(Comparator.comparing(
                                (ApplianceFigures appliance) -> appliance.load().value())
                        .reversed())
                .limit(MOST_APPLIANCES)
                .map(this::row)
                .toList();
        List<LabelPart> parts = new ArrayList<>();
        parts.add(new LabelPart.Grid(
                List.of(
                        facts.say("runtime.appliance"),
                        facts.say("runtime.now"),
                        facts.say("runtime.worn"),
                        facts.say("runtime.use")),
                rows,
                0,
                true));
        List<String> uncounted = new DirectDraw(facts.figures().absence().draw(), facts.words()).uncounted();
        if (!uncounted.isEmpty()) {
            parts.add(LabelPart.strong(facts.say("runtime.direct", facts.some(uncounted))));
        }
        List<String> never = Stream.concat(
                        names(Predicate.not(ApplianceFigures::runs)).stream(),
                        facts.figures().pastInverter().stream()
                                .map(it -> it.appliance().name()))
                .toList();
        if (!never.isEmpty()) {
            parts.add(LabelPart.strong(facts.say("runtime.never", facts.some(never))));
        }
        if (listed()) {
            parts.add(LabelPart.strong(facts.say("runtime.see", facts.say("together.title"))));
        } else {
            for (TogetherFigures pair : never()) {
                parts.add(LabelPart.strong(facts.say("runtime.not-together", first(pair), second(pair))));
            }
        }
        facts.figures().room().filter(room -> !room.isEnoughForAnyTwo()).ifPresent(room -> {
            List<String> apart = room.apart().stream()
                    .map(it -> it.appliance().appliance().name())
                    .toList();
            if (!apart.isEmpty()) {
                parts.add(LabelPart.strong(facts.say("runtime.apart", facts.some(apart))));
            }
            parts.add(LabelPart.strong(facts.say("runtime.others")));
        });
        parts.add(LabelPart.plain(
                facts.say("runtime.note", facts.say(facts.figures().inverter().output()))));
        return onBoard("runtime", LabelReason.RUNTIME, LabelReading.HAND, facts.say("runtime.title"))
                .with(parts);
    }

    private List<TogetherFigures> never() {
        return facts.figures().pairs().stream()
                .filter(pair -> pair.order() == TogetherFigures.Order.NEVER)
                .toList();
    }

    private static String first(TogetherFigures pair) {
        return pair.first().appliance().name();
    }

    private static String second(TogetherFigures pair) {
        return pair.second().appliance().name();
    }

    /** Whether so many pairs never run together that they are a list of their own. */
    private boolean listed() {
        return never().size() > LabelFacts.MOST_NAMED;
    }

    /** Each pair once, beside the one that stands first in the job; a row names so many that it stays readable. */
    private LabelDesign together() {
        Map<String, List<String>> never = new LinkedHashMap<>();
        never().forEach(pair ->
                never.computeIfAbsent(first(pair), name -> new ArrayList<>()).add(second(pair)));
        List<List<String>> rows = new ArrayList<>();
        List<Integer> bundles = new ArrayList<>();
        never.forEach((name, others) -> {
            int before = rows.size();
            for (int from = 0; from < others.size(); from += LabelFacts.MOST_NAMED) {
                int to = Math.min(from + LabelFacts.MOST_NAMED, others.size());
                rows.add(List.of(name, facts.words().list(others.subList(from, to))));
            }
            bundles.add(rows.size() - before);
        });
        List<String> head = List.of(facts.say("together.first"), facts.say("together.with"));
        return onBoard("together", LabelReason.RUNTIME, LabelReading.HAND, facts.say("together.title"))
                .with(new LabelPart.Grid(head, rows, 1, true))
                .listing(bundles);
    }

    private List<String> names(Predicate<ApplianceFigures> which) {
        return facts.figures().appliances().stream()
                .filter(which)
                .map(appliance -> appliance.appliance().name())
                .toList();
    }

    private List<String> row(ApplianceFigures appliance) {
        String worn = appliance.verdict() == Verdict.NOT_WHEN_WORN
                ? facts.say("runtime.not-worn")
                : facts.say(appliance.wornTime());
        String use = appliance
                .sharePerUse()
                .map(share -> facts.say(
                        "runtime.per-use",
                        facts.given(appliance.appliance().perUse()).orElse(""),
                        facts.say(share)))
                .orElse("");
        return List.of(appliance.appliance().name(), facts.say(appliance.time()), worn, use);
    }

    private LabelDesign leftOn() {
        var absence = facts.figures().absence();
        return onBoard("left-on", LabelReason.LEFT_ON, LabelReading.PANEL, facts.say("left-on.title"))
                .warning(SignalWord.NOTICE)
                .with(
                        LabelPart.plain(facts.sayByShore("left-on.hazard", facts.some(absence.leftOn()))),
                        LabelPart.facts(List.of(
                                List.of(facts.say(absence.toReserve()), facts.say("left-on.now")),
                                List.of(facts.say(absence.toReserveWorn()), facts.say("left-on.worn")))),
                        LabelPart.strong(facts.say("left-on.avoid")));
    }
}
