package org.quaybook.record;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Block;
import org.quaybook.job.Changeover;
import org.quaybook.job.Charging;
import org.quaybook.job.Fuse;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Job;
import org.quaybook.job.Link;
import org.quaybook.job.Protection;
import org.quaybook.job.SearchMode;
import org.quaybook.job.Vent;
import org.quaybook.text.Words;

/**
 * The installation for the next electrician: values as fitted, each with how it is known (measured, plate, told,
 * assumed, not seen) but never by whom.
 */
final class AsFitted {

    private final Assessment it;
    private final Job job;
    private final Words words;
    private final Known known;

    AsFitted(Assessment assessment, Words words) {
        this.it = assessment;
        this.job = assessment.job();
        this.words = words;
        this.known = new Known(words);
    }

    Map<String, Object> bank() {
        Bank bank = job.bank();
        Block block = bank.block();
        return new Rows()
                .put("chemistry", known(bank.chemistry()))
                .put("voltage", known(block.voltage()))
                .put("capacity", known(block.capacity()))
                .put("resistance", known(block.resistance()))
                .put("shortCircuit", known(block.shortCircuit()))
                .put("takeOff", known(bank.takeOff()))
                .put("links", links(bank.links()))
                .put("health", known(bank.health()))
                .put("temperature", known(bank.temperature()))
                .put("chargeLimit", known(bank.chargeLimit()))
                .put("torque", known(bank.torque()))
                .put("stack", known(bank.stack()))
                .put("lugsPerStud", known(bank.lugsPerStud()))
                .put("lugHole", known(bank.lugHole()))
                .put("protection", protection(bank.protection()))
                .put("vent", vent(bank.vent()))
                .map();
    }

    private String links(@Nullable Link links) {
        return links == null ? "" : words.say("record.pair", known(links.size()), known(links.length()));
    }

    private Object protection(@Nullable Protection protection) {
        return protection == null
                ? ""
                : new Rows()
                        .put("discharge", known(protection.discharge()))
                        .put("peak", known(protection.peak()))
                        .put("cutOut", known(protection.cutOut()))
                        .put("chargeAbove", known(protection.chargeAbove()))
                        .put("alarmBefore", known(protection.alarmBefore()))
                        .map();
    }

    private Object vent(@Nullable Vent vent) {
        return vent == null
                ? ""
                : new Rows()
                        .put("inlet", known(vent.inlet()))
                        .put("outlet", known(vent.outlet()))
                        .put("leadsTo", vent.leadsTo())
                        .map();
    }

    Map<String, Object> inverter() {
        Inverter inverter = job.inverter();
        return new Rows()
                .put("continuous", known(inverter.continuous()))
                .put(
                        "shortTime",
                        inverter.shortTime() == null
                                ? ""
                                : words.say(
                                        "record.for-time",
                                        known(inverter.shortTime().power()),
                                        known(inverter.shortTime().time())))
                .put("idle", known(inverter.idle()))
                .put(
                        "output",
                        words.say(
                                "record.output",
                                known(inverter.output().voltage()),
                                known(inverter.output().frequency()),
                                known(inverter.output().wave())))
                .put("alarm", known(inverter.alarm()))
                .put("alarmDelay", known(inverter.alarmDelay()))
                .put("cutOut", known(inverter.cutOut()))
                .put("cutOutDelay", known(inverter.cutOutDelay()))
                .put("cutOutAtOnce", known(inverter.cutOutAtOnce()))
                .put("restart", known(inverter.restart()))
                .put("restartDelay", known(inverter.restartDelay()))
                .put(
                        "hot",
                        it.figures()
                                .inverter()
                                .continuousHot()
                                .map(hot -> words.word(hot.stated()))
                                .orElse(""))
                .put("neutralBond", known(inverter.neutralBond()))
                .put("changeover", changeover(inverter.changeover()))
                .put("passThrough", known(inverter.passThrough()))
                .put("inputLimit", known(inverter.inputLimit()))
                .put("search", search(inverter.searchMode()))
                .put(
                        "searchOn",
                        inverter.searchMode() != null
                                && Given.isYes(inverter.searchMode().on()))
                .put(
                        "bypass",
                        inverter.bypass() == null ? "" : inverter.bypass().where())
                .put(
                        "bypassTested",
                        inverter.bypass() == null ? "" : known(inverter.bypass().tested()))
                .map();
    }

    private Object changeover(@Nullable Changeover changeover) {
        return changeover == null
                ? ""
                : new Rows()
                        .put("kind", known(changeover.kind()))
                        .put("time", known(changeover.time()))
                        .put("whenShoreFails", known(changeover.whenShoreFails()))
                        .put("interlocked", known(changeover.interlocked()))
                        .put("switchesNeutral", known(changeover.switchesNeutral()))
                        .map();
    }

    private String search(@Nullable SearchMode search) {
        if (search == null) {
            return "";
        }
        return search.threshold() == null
                ? known(search.on())
                : words.say("record.search", known(search.on()), known(search.threshold()));
    }

    List<Map<String, Object>> cables() {
        return it.figures().supply().runs().stream().map(this::cable).toList();
    }

    private Map<String, Object> cable(RunFigures run) {
        return new Rows()
                .put("id", run.cable().id())
                .put("from", run.cable().from())
                .put("to", run.cable().to())
                .put("conductor", words.word(run.rating().conductor()))
                .put("fitted", run.fitted())
                .put("length", known(run.cable().length()))
                .put("insulation", known(run.cable().insulation()))
                .put("route", known(run.cable().route()))
                .put("bundled", known(run.cable().bundled()))
                .put("joints", known(run.cable().joints()))
                .put("torque", known(run.cable().torque()))
                .put("allowed", words.word(run.allowed().stated()))
                .map();
    }

    List<Map<String, Object>> charging() {
        return job.charging().stream().map(this::charging).toList();
    }

    private Map<String, Object> charging(Charging charging) {
        return new Rows()
                .put("name", ChargerName.of(charging, words))
                .put("through", Fuse.parts(charging.through()))
                .put("current", known(charging.current()))
                .put("peak", known(charging.peak()))
                .put("rated", known(charging.rated()))
                .put("currentLimited", known(charging.currentLimited()))
                .put("fedBy", known(charging.fedBy()))
                .put("coldStop", known(charging.coldStop()))
                .put("temperatureSensor", known(charging.temperatureSensor()))
                .map();
    }

    Object generator() {
        Generator generator = job.generator();
        return generator == null
                ? ""
                : new Rows()
                        .put("power", known(generator.power()))
                        .put("neutralBond", known(generator.neutralBond()))
                        .put("where", generator.where())
                        .map();
    }

    private String known(@Nullable Given<?> given) {
        return known.say(given);
    }
}
