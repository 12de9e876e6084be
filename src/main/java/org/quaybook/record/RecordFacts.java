package org.quaybook.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.job.Appliance;
import org.quaybook.job.LoadKind;
import org.quaybook.job.ServiceEntry;
import org.quaybook.text.Words;

/**
 * The facts of a job in words, with those that whoever works on it needs: how it goes off, as fitted, tests against
 * limits. What of them the record shows, {@link Published} decides.
 */
public final class RecordFacts {

    private static final int HEAVIEST = 3;

    private final Assessment it;
    private final Words words;

    public RecordFacts(Assessment assessment, Words words) {
        this.it = assessment;
        this.words = words;
    }

    /** The facts of {@link FactSheet} and more, under one key a subject. */
    public Map<String, Object> all() {
        Map<String, Object> facts = new LinkedHashMap<>(new FactSheet(it, words).all());
        AllOff allOff = new AllOff(it.job(), words);
        facts.put("sources", allOff.sources());
        facts.put("steps", allOff.steps());
        facts.put("leftOnBattery", LeftOnBattery.names(it.job(), it.figures().way()));
        facts.put("heating", heating());
        facts.put("heaviest", heaviest());
        AsFitted asFitted = new AsFitted(it, words);
        facts.put("fittedBank", asFitted.bank());
        facts.put("fittedInverter", asFitted.inverter());
        facts.put("fittedCables", asFitted.cables());
        facts.put("charging", asFitted.charging());
        facts.put("generator", asFitted.generator());
        SettingSheet settings = new SettingSheet(it.job(), words);
        facts.put("settings", settings.rows());
        facts.put("tests", new TestSheet(it, words).rows());
        facts.put("service", service(settings));
        facts.put("baseline", new BaselineSheet(it, words).rows());
        return facts;
    }

    /** Visits after handing over, newest first. */
    private List<Map<String, Object>> service(SettingSheet settings) {
        List<ServiceEntry> newestFirst = new ArrayList<>(it.job().service());
        Collections.reverse(newestFirst);
        TestSheet tests = new TestSheet(it, words);
        return newestFirst.stream()
                .map(entry -> new Rows()
                        .put("revision", entry.revision().toString())
                        .put("date", words.date(entry.date()))
                        .put("firm", settings.who(entry.firm()))
                        .put("did", entry.did())
                        .put("tests", tests.rows(entry))
                        .put("settings", settings.rows(entry))
                        .map())
                .toList();
    }

    private List<String> heating() {
        return it.job().appliances().stream()
                .filter(appliance -> appliance.kind() == LoadKind.HEATING)
                .map(Appliance::name)
                .toList();
    }

    /** What to switch off first when the alarm sounds. */
    private List<Map<String, Object>> heaviest() {
        return it.figures().appliances().stream()
                .filter(appliance -> appliance.time().value().seconds() > 0)
                .sorted(Comparator.comparing((ApplianceFigures appliance) ->
                                appliance.power().value())
                        .reversed())
                .limit(HEAVIEST)
                .map(appliance -> new Rows()
                        .put("name", appliance.appliance().name())
                        .put("power", words.word(appliance.power().stated()))
                        .map())
                .toList();
    }
}
