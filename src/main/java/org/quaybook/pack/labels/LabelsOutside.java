package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.job.CraftKind;
import org.quaybook.job.Given;
import org.quaybook.job.Shore;
import org.quaybook.record.EnergySource;
import org.quaybook.record.LeftOnBattery;

/** Labels on the outside of the craft, at the shore inlet and on the lead. */
final class LabelsOutside {

    private final LabelFacts facts;
    private final LabelsSwitches switches;

    /** @param board where the AC board is */
    LabelsOutside(LabelFacts facts, String board) {
        this.facts = facts;
        this.switches = new LabelsSwitches(facts, board);
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>(List.of(responder()));
        Shore shore = facts.job().shore();
        if (shore != null) {
            if (facts.job().craft().kind() == CraftKind.BOAT) {
                designs.add(swim());
            }
            designs.add(inlet(shore));
            if (staysOn()) {
                designs.add(lead());
            }
        }
        return designs;
    }

    /** For a fire crew or a second electrician: what can feed this craft and how each is stopped. */
    private LabelDesign responder() {
        List<LabelSource> sources = facts.sources();
        List<List<String>> rows = new ArrayList<>();
        for (LabelSource source : sources) {
            rows.add(List.of(facts.say("responder." + source.kind().id()), stop(source)));
        }
        rows.add(List.of(
                facts.say("responder.what"),
                facts.say(
                        "responder.bank",
                        facts.given(facts.job().bank().chemistry()).orElse(""),
                        facts.volts(facts.figures().bank().system().value()),
                        facts.say(facts.figures().bank().energy()),
                        LabelFacts.place(facts.job().bank().where()))));
        List<LabelPart> parts = new ArrayList<>(List.of(LabelPart.facts(rows)));
        List<String> left = LeftOnBattery.names(facts.job(), facts.figures().way());
        if (!left.isEmpty()) {
            parts.add(LabelPart.plain(facts.say("isolator.branches", facts.some(left))));
        }
        return LabelDesign.of(
                        "responder",
                        LabelReason.RESPONDER,
                        LabelSpot.OUTSIDE,
                        "",
                        LabelReading.APPROACH,
                        sources.size() == 1
                                ? facts.say("responder.title-one")
                                : facts.say("responder.title", sources.size()))
                .with(parts);
    }

    private String stop(LabelSource source) {
        if (!source.isolators().isEmpty()) {
            return switches.forRescuers(source);
        }
        if (source.kind() == EnergySource.GENERATOR) {
            return facts.words().say("term.stop.generator-briefly");
        }
        Shore shore = facts.job().shore();
        return source.kind() == EnergySource.SHORE && shore != null && shore.where() != null
                ? facts.say("responder.inlet", shore.where())
                : facts.say("responder." + source.kind().id() + ".stop");
    }

    /** Leaking current spreads in fresh water and is not seen: who swims there and who jumps in to help are in danger. */
    private LabelDesign swim() {
        return LabelDesign.of(
                        "swim",
                        LabelReason.SWIM,
                        LabelSpot.BOARDING,
                        "",
                        LabelReading.APPROACH,
                        facts.say("swim.title"))
                .warning(SignalWord.WARNING, Sign.W012, Sign.P049)
                .with(
                        LabelPart.plain(facts.say("swim.consequence")),
                        LabelPart.strong(facts.say("swim.avoid")),
                        LabelPart.plain(facts.say("swim.rescue")));
    }

    /** The order of plugging: the item about the polarity lamp only where one is fitted. */
    private LabelDesign inlet(Shore shore) {
        boolean lamp = Given.isYes(shore.polarityLamp());
        List<String> steps = new ArrayList<>();
        steps.add(facts.say("inlet.off"));
        steps.add(facts.say("inlet.craft-end", facts.craft()));
        if (lamp) {
            steps.add(facts.say("inlet.lamp"));
        }
        steps.add(facts.say("inlet.shore-end"));
        steps.add(facts.say("inlet.cover"));
        return LabelDesign.of(
                        "inlet",
                        facts.job().craft().kind() == CraftKind.MOTORHOME
                                ? LabelReason.INLET_CARAVAN
                                : LabelReason.INLET,
                        LabelSpot.INLET,
                        LabelFacts.place(shore.where()),
                        LabelReading.PANEL,
                        facts.say("inlet.title"))
                .warning(SignalWord.WARNING, Sign.W012)
                .with(LabelPart.numbered(steps), LabelPart.strong(facts.shoreRating(shore)));
    }

    private boolean staysOn() {
        return !facts.figures().absence().leftOn().isEmpty();
    }

    /** The owner's number is never printed: a line is left for it. */
    private LabelDesign lead() {
        return LabelDesign.of("lead", LabelReason.LEAD, LabelSpot.LEAD, "", LabelReading.PANEL, facts.say("lead.title"))
                .warning(SignalWord.NOTICE)
                .with(
                        LabelPart.plain(facts.say(
                                "lead.why", facts.some(facts.figures().absence().leftOn()))),
                        LabelPart.strong(
                                facts.say("lead.craft", facts.job().craft().name())),
                        new LabelPart.Blank(facts.say("lead.call")),
                        new LabelPart.Blank(facts.say("lead.until")));
    }
}
