package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.checks.Check;
import org.quaybook.figures.Figure;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.NeutralBond;
import org.quaybook.job.Shore;
import org.quaybook.job.Transformer;
import org.quaybook.quantity.Voltage;

/** Labels at the inverter. */
final class LabelsInverter {

    private final LabelFacts facts;

    LabelsInverter(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        if (facts.keptApart()) {
            designs.add(live());
        }
        designs.add(cutOut());
        neutral().ifPresent(designs::add);
        return designs;
    }

    private LabelDesign atInverter(String id, LabelReason reason, LabelReading reading, String title) {
        return LabelDesign.of(
                id,
                reason,
                LabelSpot.INVERTER,
                LabelFacts.place(facts.job().inverter().where()),
                reading,
                title);
    }

    private LabelDesign live() {
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.plain(facts.say("live.consequence")));
        if (facts.takesOver()) {
            parts.add(LabelPart.plain(facts.sayByShore("live.takes-over")));
        }
        if (facts.searches()) {
            parts.add(LabelPart.plain(facts.say("live.searches")));
        }
        int sources = facts.sources().size();
        parts.add(LabelPart.strong(sources > 1 ? facts.say("live.avoid", sources) : facts.say("live.avoid-one")));
        return atInverter(
                        "inverter-live",
                        LabelReason.SOURCES,
                        LabelReading.PANEL,
                        facts.say("live.title", facts.mains()))
                .warning(SignalWord.WARNING, Sign.W012, Sign.M021)
                .with(parts);
    }

    private LabelDesign cutOut() {
        var inverter = facts.figures().inverter();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(facts.say(inverter.alarm()), facts.say("cut-out.alarm")));
        rows.add(List.of(
                facts.say(inverter.cutOut()),
                facts.given(facts.job().inverter().cutOutDelay())
                        .map(delay -> facts.say("cut-out.off-after", delay))
                        .orElseGet(() -> facts.say("cut-out.off"))));
        Figure<Voltage> restart = inverter.restart();
        if (restart != null) {
            rows.add(List.of(facts.say(restart), facts.say("cut-out.restart")));
        }
        return atInverter("cut-out", LabelReason.CUT_OUT, LabelReading.PANEL, facts.say("cut-out.title"))
                .with(
                        LabelPart.facts(rows),
                        LabelPart.plain(
                                restart == null
                                        ? facts.say("cut-out.do")
                                        : facts.say("cut-out.do-restart", facts.say(restart))));
    }

    /** Left out where the bond itself is what forbids handing over. */
    private Optional<LabelDesign> neutral() {
        if (facts.forbidden(Check.NEUTRAL_BOND_MISSING)
                || facts.forbidden(Check.NEUTRAL_BOND_ALWAYS)
                || facts.forbidden(Check.TRANSFORMER_BOND)
                || facts.forbidden(Check.NEUTRAL_BOND_UNKNOWN)) {
            return Optional.empty();
        }
        return Given.maybe(facts.job().inverter().neutralBond()).map(this::neutral);
    }

    private LabelDesign neutral(NeutralBond bond) {
        List<String> lines = new ArrayList<>();
        lines.add(
                switch (bond) {
                    case INVERTER_ONLY -> facts.sayByShore("neutral.inverter-only");
                    case ALWAYS -> facts.say("neutral.always");
                    case NONE -> facts.say("neutral.none");
                });
        Shore shore = facts.job().shore();
        Transformer transformer = shore == null ? null : shore.transformer();
        if (transformer != null && Given.isYes(transformer.neutralTied())) {
            lines.add(facts.say("neutral.transformer"));
        } else if (shore != null && transformer == null) {
            lines.add(facts.say("neutral.shore"));
        }
        Generator generator = facts.job().generator();
        if (generator != null
                && Given.maybe(generator.neutralBond())
                        .filter(NeutralBond.ALWAYS::equals)
                        .isPresent()) {
            lines.add(facts.say("neutral.generator"));
        }
        lines.add(facts.say("neutral.add-none"));
        return atInverter("neutral", LabelReason.NEUTRAL, LabelReading.HAND, facts.say("neutral.title"))
                .with(LabelPart.plain(lines.toArray(String[]::new)));
    }
}
