package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.record.EnergySource;

/**
 * The instructions for the electricity supply of a motorhome, beside its main switch: how to connect, test and
 * disconnect, and when it is to be inspected (IEC 60364-7-721, from memory).
 */
final class LabelsMainSwitch {

    /** Longest time between inspections, years; one where the vehicle is used much (IEC 60364-7-721, from memory). */
    private static final int INSPECTED_WITHIN = 3;

    private final LabelFacts facts;
    private final String board;

    /** @param board where the AC board is, for a job without a switch on record */
    LabelsMainSwitch(LabelFacts facts, String board) {
        this.facts = facts;
        this.board = board;
    }

    List<LabelDesign> designs() {
        Shore shore = facts.job().shore();
        return shore == null || facts.job().craft().kind() != CraftKind.MOTORHOME
                ? List.of()
                : List.of(instructions(shore, mainSwitch()));
    }

    private Optional<Isolator> mainSwitch() {
        return facts.sources().stream()
                .filter(source -> source.kind() == EnergySource.SHORE)
                .flatMap(source -> source.isolators().stream())
                .findFirst();
    }

    private LabelDesign instructions(Shore shore, Optional<Isolator> at) {
        String name = at.map(facts::name).orElseGet(() -> facts.say("main-switch.unnamed"));
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.strong(facts.say("main-switch.connect")));
        parts.add(LabelPart.numbered(connect(shore, name)));
        parts.add(LabelPart.plain(facts.say("main-switch.doubt")));
        parts.add(LabelPart.strong(facts.say("main-switch.disconnect")));
        parts.add(LabelPart.numbered(List.of(
                facts.say("main-switch.off", name), facts.say("main-switch.unplug"), facts.say("inlet.cover"))));
        if (facts.takesOver()) {
            parts.add(LabelPart.strong(facts.say("live.takes-over")));
        }
        parts.add(LabelPart.plain(facts.say("main-switch.inspect", INSPECTED_WITHIN)));
        return LabelDesign.of(
                        "main-switch",
                        LabelReason.MAIN_SWITCH,
                        at.isPresent() ? LabelSpot.ISOLATOR : LabelSpot.BOARD,
                        at.map(Isolator::where).orElse(board),
                        LabelReading.PANEL,
                        facts.say("main-switch.title"))
                .with(parts);
    }

    private List<String> connect(Shore shore, String name) {
        List<String> steps = new ArrayList<>();
        steps.add(facts.say("main-switch.supply", facts.shoreRating(shore)));
        steps.add(facts.say("main-switch.unroll"));
        steps.add(facts.say("main-switch.off", name));
        steps.add(facts.say("main-switch.plug"));
        steps.add(facts.say("main-switch.on", name));
        if (Given.isYes(shore.polarityLamp())) {
            steps.add(facts.say("inlet.lamp"));
        }
        if (!facts.job().rcds().isEmpty()) {
            List<String> rcds = facts.job().rcds().stream().map(Rcd::id).toList();
            steps.add(
                    rcds.size() > LabelFacts.MOST_NAMED
                            ? facts.say("main-switch.test-all", rcds.size())
                            : facts.say("main-switch.test", facts.words().list(rcds)));
        }
        return steps;
    }
}
