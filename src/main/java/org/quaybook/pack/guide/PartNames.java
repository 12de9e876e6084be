package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.record.ChargerName;
import org.quaybook.record.EnergySource;
import org.quaybook.text.Words;

/** How sentences call the craft and the parts of its installation. */
final class PartNames {

    private final Job job;
    private final Equipment has;
    private final Words words;

    PartNames(Job job, Equipment has, Words words) {
        this.job = job;
        this.has = has;
        this.words = words;
    }

    private String byKind(String key) {
        return words.say(key + job.craft().kind().name().toLowerCase(Locale.ROOT));
    }

    /** "boat", "motorhome" or "cabin". */
    String craft() {
        return words.term(job.craft().kind());
    }

    /** "on board", "in the cabin". */
    String aboard() {
        return byKind("guide.aboard.");
    }

    /** What the far end of the shore lead plugs into. */
    String post() {
        return byKind("guide.post.");
    }

    /** Switches between battery and inverter. */
    List<Isolator> batterySwitches() {
        return job.isolators().stream().filter(this::cutsBattery).toList();
    }

    /** Switches of a source that leave the battery on. */
    List<Isolator> switchesOnlyOf(EnergySource source) {
        return job.isolators().stream()
                .filter(isolator -> isolator.isolates().contains(source.id()) && !cutsBattery(isolator))
                .toList();
    }

    /** Switches of the shore side, with their places. */
    List<String> shoreSwitches() {
        return named(job.isolators().stream()
                .filter(isolator -> isolator.isolates().contains("shore"))
                .toList());
    }

    private boolean cutsBattery(Isolator isolator) {
        return isolator.partsBattery(job.cables(), job.fuses());
    }

    /** Switches with their tags and places. */
    List<String> named(List<Isolator> switches) {
        return switches.stream().map(this::named).toList();
    }

    /** A switch with its tag and place. */
    String named(Isolator isolator) {
        return words.say("guide.named", isolator.id(), isolator.name(), isolator.where());
    }

    /** Everything that can make some part live, battery first. */
    List<String> sources() {
        List<String> sources = new ArrayList<>(List.of(words.say("guide.sheet.source.bank")));
        if (has.shore()) {
            sources.add(words.say("guide.sheet.source.shore"));
        }
        if (has.generator()) {
            sources.add(words.say("guide.sheet.source.generator"));
        }
        for (ChargeKind kind : List.of(ChargeKind.ALTERNATOR, ChargeKind.SOLAR, ChargeKind.WIND)) {
            if (has.chargedBy(kind)) {
                sources.add(words.say("guide.sheet.source." + kind.name().toLowerCase(Locale.ROOT)));
            }
        }
        return sources;
    }

    /** Chargers that are known to stop, or not known to stop, when the battery is too cold. */
    List<String> chargers(boolean stopInCold) {
        return job.charging().stream()
                .filter(charging -> Given.isYes(charging.coldStop()) == stopInCold)
                .map(this::nameOf)
                .toList();
    }

    /** What turns a charging source off: the switches of a source of its own, else the charger itself. */
    List<String> offBy(Charging charging) {
        List<Isolator> switches = switch (charging.kind()) {
            case SOLAR -> switchesOnlyOf(EnergySource.SOLAR);
            case WIND -> switchesOnlyOf(EnergySource.WIND);
            case SHORE_CHARGER, GENERATOR, ALTERNATOR -> List.of();
        };
        return switches.isEmpty() ? List.of(nameOf(charging)) : named(switches);
    }

    /** The name that the job gives a charger, or what it is. */
    String nameOf(Charging charging) {
        return ChargerName.of(charging, words);
    }

    /** Of those that run, the appliance that takes most; empty if none runs. */
    static String largest(List<ApplianceFigures> appliances) {
        return largestOf(appliances)
                .map(appliance -> appliance.appliance().name())
                .orElse("");
    }

    /** The appliance that takes most, of those that run. */
    static Optional<ApplianceFigures> largestOf(List<ApplianceFigures> appliances) {
        return appliances.stream()
                .filter(ApplianceFigures::runs)
                .max((a, b) -> a.power().value().compareTo(b.power().value()));
    }
}
