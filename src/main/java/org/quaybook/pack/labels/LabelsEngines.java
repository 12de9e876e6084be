package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.job.Generator;
import org.quaybook.job.Isolator;
import org.quaybook.record.EnergySource;

/** Labels for what runs on fuel: at the generator, and at the battery switch where an alternator charges. */
final class LabelsEngines {

    private final LabelFacts facts;

    LabelsEngines(LabelFacts facts) {
        this.facts = facts;
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        if (aboard(EnergySource.GENERATOR)) {
            designs.add(generator());
        }
        if (aboard(EnergySource.ALTERNATOR) && !facts.figures().bank().battery().leadAcid()) {
            batterySwitch().map(this::engine).ifPresent(designs::add);
        }
        return designs;
    }

    private boolean aboard(EnergySource kind) {
        return facts.sources().stream().anyMatch(source -> source.kind() == kind);
    }

    private LabelDesign generator() {
        Generator generator = facts.job().generator();
        return LabelDesign.of(
                        "generator",
                        LabelReason.GENERATOR,
                        LabelSpot.GENERATOR,
                        generator == null ? "" : LabelFacts.place(generator.where()),
                        LabelReading.PANEL,
                        facts.say("generator.title"))
                .warning(SignalWord.WARNING, Sign.W016)
                .with(
                        LabelPart.plain(facts.say("generator.consequence")),
                        LabelPart.strong(facts.say("generator.avoid"), facts.say("generator.alarm")),
                        LabelPart.plain(facts.say("generator.ill")));
    }

    /** Lithium takes the alternator's whole current for hours: when that is cut, the voltage leaps. */
    private LabelDesign engine(Isolator isolator) {
        return LabelDesign.of(
                        "engine",
                        LabelReason.ENGINE,
                        LabelSpot.ISOLATOR,
                        isolator.where(),
                        LabelReading.PANEL,
                        facts.say("engine.title"))
                .warning(SignalWord.NOTICE)
                .with(
                        LabelPart.plain(facts.say("engine.consequence", isolator.id())),
                        LabelPart.strong(facts.say("engine.avoid")));
    }

    private Optional<Isolator> batterySwitch() {
        return facts.sources().stream()
                .filter(source -> source.kind() == EnergySource.BATTERY)
                .flatMap(source -> source.isolators().stream())
                .findFirst();
    }
}
