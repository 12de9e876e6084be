package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.FuseFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Bank;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;
import org.quaybook.record.EnergySource;
import org.quaybook.record.LeftOnBattery;

/** Labels on the battery's lid, at its switches, and under the lid. */
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
            List<Sign> acid = bank.battery().vented() ? List.of(Sign.W023, Sign.M004) : List.of(Sign.M004);
            hazards.add(new Hazard(SignalWord.WARNING, acid, "acid"));
            hazards.add(new Hazard(SignalWord.WARNING, List.of(Sign.P008), "current"));
        } else {
            hazards.add(new Hazard(SignalWord.WARNING, List.of(Sign.W001, Sign.P008, Sign.M002), "current"));
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

    private LabelDesign isolator(Isolator isolator) {
        List<LabelSource> live = facts.sources().stream()
                .filter(source -> !source.isolators().contains(isolator)
                        || (source.kind() == EnergySource.BATTERY && leavesStrings(isolator)))
                .toList();
        List<LabelPart> parts = new ArrayList<>();
        parts.add(LabelPart.plain(facts.say("isolator.off", facts.words().list(isolated(isolator)))));
        if (partsBattery(isolator) && !leavesStrings(isolator)) {
            parts.add(LabelPart.plain(facts.say("isolator.no-battery")));
        }
        if (!live.isEmpty()) {
            parts.add(LabelPart.strong(facts.say("isolator.live", facts.names(live))));
        }
        List<String> branches = uncut(isolator);
        if (!branches.isEmpty()) {
            parts.add(LabelPart.strong(facts.say("isolator.branches", facts.some(branches))));
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

    /** The branches that a battery switch leaves on the bank, and those of which nobody has written where they are connected. */
    private List<String> uncut(Isolator isolator) {
        if (!partsBattery(isolator)) {
            return List.of();
        }
        return LeftOnBattery.names(List.of(isolator), facts.figures().way());
    }

    /** Whether it switches strings alone, so that others still feed the inverter. */
    private boolean leavesStrings(Isolator isolator) {
        List<String> strings = facts.figures().fuses().stream()
                .filter(fuse -> fuse.role() == FuseRole.STRING)
                .map(FuseFigures::id)
                .toList();
        long cut = isolator.isolates().stream().filter(strings::contains).count();
        boolean moreThanStrings = isolator.partsBattery(
                facts.job().cables(),
                facts.job().fuses().stream()
                        .filter(fuse -> !strings.contains(fuse.id()))
                        .toList());
        return !moreThanStrings && cut < bank.sharing().shares().size();
    }

    private boolean partsBattery(Isolator isolator) {
        return facts.sources().stream()
                .filter(source -> source.kind() == EnergySource.BATTERY)
                .anyMatch(source -> source.isolators().contains(isolator));
    }

    /**
     * All that it cuts off; many circuits and cables by their ids alone, which stand on them, and of a whole board of circuits
     * how many.
     */
    private List<String> isolated(Isolator isolator) {
        boolean many = isolator.isolates().size() > LabelFacts.MOST_NAMED;
        List<String> circuits =
                facts.job().acCircuits().stream().map(AcCircuit::id).toList();
        List<String> cutOff =
                isolator.isolates().stream().filter(circuits::contains).toList();
        if (cutOff.size() <= LabelFacts.MOST_IDS) {
            return isolator.isolates().stream().map(id -> isolated(id, many)).toList();
        }
        String counted = cutOff.size() == circuits.size()
                ? facts.say("isolator.all-circuits", cutOff.size())
                : facts.say("isolator.some-circuits", cutOff.size(), circuits.size());
        return Stream.concat(
                        isolator.isolates().stream()
                                .filter(id -> !cutOff.contains(id))
                                .map(id -> isolated(id, many)),
                        Stream.of(counted))
                .toList();
    }

    private String isolated(String id, boolean briefly) {
        String key = "isolates." + id;
        if (facts.words().has("labels." + key)) {
            return facts.say(key);
        }
        return briefly
                ? id
                : facts.job().acCircuits().stream()
                        .filter(circuit -> circuit.id().equals(id))
                        .findFirst()
                        .map(circuit -> circuit.id() + " " + circuit.name())
                        .orElseGet(() -> facts.run(id));
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
