package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Cable;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;

/** Labels on the battery's lid, at its fuses and switches, and under the lid. */
final class LabelsBattery {

    private final LabelFacts facts;
    private final BankFigures bank;

    LabelsBattery(LabelFacts facts) {
        this.facts = facts;
        this.bank = facts.figures().bank();
    }

    List<LabelDesign> designs() {
        List<LabelDesign> designs = new ArrayList<>();
        facts.job().isolators().stream().map(this::isolator).forEach(designs::add);
        designs.add(lid());
        facts.figures().fuses().stream()
                .flatMap(figures -> Optional.ofNullable(figures.fuse()).map(fuse -> fuse(fuse, figures)).stream())
                .forEach(designs::add);
        designs.add(swap());
        return designs;
    }

    /** A danger of a battery: how grave, what signs, and the key of its three sentences. */
    private record Hazard(SignalWord word, List<Sign> signs, String key) {}

    private List<Hazard> hazards() {
        List<Hazard> hazards = new ArrayList<>();
        if (bank.battery().leadAcid()) {
            String gas = bank.battery().vented() ? "gas" : "gas-valve";
            hazards.add(new Hazard(SignalWord.WARNING, List.of(Sign.W026, Sign.W021, Sign.P003), gas));
            hazards.add(new Hazard(SignalWord.WARNING, List.of(Sign.M004), "acid"));
            hazards.add(new Hazard(SignalWord.WARNING, List.of(), "current"));
        } else {
            hazards.add(new Hazard(SignalWord.WARNING, List.of(Sign.W001, Sign.M002), "current"));
            hazards.add(new Hazard(SignalWord.WARNING, List.of(), "lithium"));
        }
        return hazards;
    }

    /** Outside, because who opens the lid with a spark in his hand has not read what stands inside. */
    private LabelDesign lid() {
        List<Hazard> hazards = hazards();
        Set<Sign> signs = new LinkedHashSet<>();
        hazards.forEach(hazard -> signs.addAll(hazard.signs()));
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.plain(texts(hazards, "consequence")));
        parts.add(LabelPart.strong(texts(hazards, "avoid")));
        chargeAbove().ifPresent(least -> parts.add(LabelPart.strong(facts.say("lid.cold", Stated.up(least)))));
        parts.add(LabelPart.facts(lidFacts()));
        return LabelDesign.of(
                        "battery-lid",
                        bank.battery().leadAcid() ? LabelReason.BATTERY_LEAD : LabelReason.BATTERY_LITHIUM,
                        LabelSpot.BATTERY_LID,
                        LabelFacts.place(facts.job().bank().where()),
                        LabelReading.PANEL,
                        facts.say("lid." + hazards.get(0).key() + ".title", facts.say(bank.shortCircuit())))
                .warning(SignalWord.gravest(hazards.stream().map(Hazard::word).toList()), signs.toArray(Sign[]::new))
                .with(parts);
    }

    private String[] texts(List<Hazard> hazards, String which) {
        return hazards.stream()
                .map(hazard -> "lid." + hazard.key() + "." + which)
                .filter(key -> facts.words().has("labels." + key))
                .map(key -> facts.say(key, facts.say(bank.shortCircuit())))
                .toArray(String[]::new);
    }

    private List<List<String>> lidFacts() {
        Bank job = facts.job().bank();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                facts.say("lid.kind"),
                facts.say(
                        "lid.bank",
                        facts.given(job.chemistry()).orElse(""),
                        facts.volts(bank.nominal().value()),
                        facts.say(bank.capacity()))));
        rows.add(List.of(
                facts.say("lid.rest"),
                facts.say(
                        "lid.volts",
                        facts.say(bank.restFull()),
                        facts.say(bank.restAtReserve()),
                        facts.say(bank.reserve()))));
        if (bank.battery().leadAcid()) {
            rows.add(List.of(facts.say("lid.short"), facts.say(bank.shortCircuit())));
        }
        return rows;
    }

    /** The temperature under which the cells must not be charged: the maker's, else the usual one of the chemistry. */
    private Optional<Temperature> chargeAbove() {
        if (bank.battery().leadAcid()) {
            return Optional.empty();
        }
        return Optional.ofNullable(facts.job().bank().protection())
                .flatMap(protection -> Given.maybe(protection.chargeAbove()))
                .or(() -> bank.battery().chargeableAbove());
    }

    private LabelDesign fuse(Fuse fuse, FuseFigures figures) {
        List<LabelPart> parts = new ArrayList<>();
        String family = figures.family().map(kind -> facts.words().term(kind)).orElse("");
        figures.rating()
                .ifPresent(rating -> parts.add(LabelPart.large(facts.say("fuse.rating", family, facts.say(rating)))));
        List<String> protectedRuns = fuse.protects().stream().map(this::run).toList();
        parts.add(LabelPart.plain(facts.say("fuse.protects", facts.words().list(protectedRuns))));
        figures.interrupts()
                .ifPresent(most -> parts.add(LabelPart.plain(
                        facts.say("fuse.interrupts", facts.say(most), facts.say(figures.mustInterrupt())))));
        parts.add(LabelPart.strong(facts.say("fuse.replace")));
        if (fuse.spare() != null) {
            parts.add(LabelPart.plain(facts.say("fuse.spare", fuse.spare())));
        }
        return LabelDesign.of(
                        "fuse-" + fuse.id(),
                        LabelReason.FUSE,
                        LabelSpot.FUSE,
                        LabelFacts.place(fuse.where()),
                        LabelReading.HAND,
                        facts.say(facts.job().fuses().size() == 1 ? "fuse.title-main" : "fuse.title", fuse.id()))
                .with(parts);
    }

    private String run(String id) {
        return facts.job().cables().stream()
                .filter(cable -> cable.id().equals(id))
                .findFirst()
                .map(this::run)
                .orElse(id);
    }

    private String run(Cable cable) {
        return facts.say("fuse.run", cable.id(), cable.from(), cable.to());
    }

    private LabelDesign isolator(Isolator isolator) {
        List<LabelSource> live = facts.sources().stream()
                .filter(source -> !source.isolators().contains(isolator))
                .toList();
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.plain(facts.say(
                "isolator.off",
                facts.words()
                        .list(isolator.isolates().stream().map(this::isolated).toList()))));
        if (partsBattery(isolator)) {
            parts.add(LabelPart.plain(facts.say("isolator.no-battery")));
        }
        if (!live.isEmpty()) {
            parts.add(LabelPart.strong(facts.say("isolator.live", facts.names(live))));
        }
        return LabelDesign.of(
                        "isolator-" + isolator.id(),
                        LabelReason.ISOLATOR,
                        LabelSpot.ISOLATOR,
                        isolator.where(),
                        LabelReading.PANEL,
                        facts.name(isolator))
                .with(parts);
    }

    private boolean partsBattery(Isolator isolator) {
        return facts.sources().stream()
                .filter(source -> source.kind() == LabelSource.Kind.BATTERY)
                .anyMatch(source -> source.isolators().contains(isolator));
    }

    private String isolated(String id) {
        String key = "isolates." + id;
        return facts.words().has("labels." + key)
                ? facts.say(key)
                : facts.job().acCircuits().stream()
                        .filter(circuit -> circuit.id().equals(id))
                        .findFirst()
                        .map(circuit -> circuit.id() + " " + circuit.name())
                        .orElseGet(() -> run(id));
    }

    private LabelDesign swap() {
        Bank job = facts.job().bank();
        return LabelDesign.of(
                        "swap",
                        LabelReason.SWAP,
                        LabelSpot.BATTERY,
                        LabelFacts.place(job.where()),
                        LabelReading.HAND,
                        facts.say("swap.title"))
                .warning(SignalWord.NOTICE)
                .with(
                        LabelPart.strong(facts.say(
                                "swap.type",
                                facts.given(job.chemistry()).orElse(""),
                                job.block().voltage().known().map(facts::volts).orElse(""),
                                facts.given(job.block().capacity()).orElse(""))),
                        LabelPart.plain(facts.say("swap.all"), facts.say("swap.other")));
    }
}
