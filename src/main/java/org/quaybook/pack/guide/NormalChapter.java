package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.BankFigures;
import org.quaybook.job.Given;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Voltage;
import org.quaybook.record.Rows;

/** What a sound installation of this craft shows, sounds and feels like. */
final class NormalChapter {

    private static final Ratio HALF = new Ratio(0.5);

    /** Tests whose result somebody without instruments of his own may compare. */
    private static final Set<TestKind> COMPARED =
            Set.of(TestKind.VOLTAGE_DROP, TestKind.REST_VOLTAGE, TestKind.INVERTER_VOLTAGE, TestKind.LEAKAGE);

    private final Briefing brief;
    private final Equipment has;

    NormalChapter(Briefing brief) {
        this.brief = brief;
        this.has = brief.has();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("numbers", numbers())
                .put("measured", measured())
                .put("signs", signs())
                .put("wrong", wrong())
                .map();
    }

    private List<Map<String, Object>> numbers() {
        BankFigures bank = brief.figures().bank();
        List<Map<String, Object>> rows = new ArrayList<>();
        rows.add(row(say("full"), brief.say(bank.restFull())));
        rows.add(row(say("reserve", brief.say(bank.reserve())), brief.say(bank.restAtReserve())));
        PartNames.largestOf(brief.figures().appliances()).ifPresent(heavy -> running(heavy, rows));
        rows.add(row(say("alarm"), brief.say(brief.figures().inverter().alarm())));
        if (!brief.job().charging().isEmpty()) {
            rows.add(row(say("charging"), strongCharging()));
        }
        rows.add(row(say("idle"), brief.say(brief.figures().inverter().idle())));
        return List.copyOf(rows);
    }

    /** As the chargers are set, where somebody has read that off them. */
    private String strongCharging() {
        return Given.maybe(brief.job().bank().chargeVoltage())
                .map(set -> brief.words().word(Stated.asGiven(set)))
                .orElseGet(() -> brief.say(brief.figures().bankCharging().voltage()));
    }

    private void running(ApplianceFigures heavy, List<Map<String, Object>> rows) {
        String name = heavy.appliance().name();
        heavy.runningVoltage().ifPresent(volts -> rows.add(row(say("running", name), volts(volts.value()))));
        heavy.running().from().stream()
                .filter(from -> from.stateOfCharge().equals(HALF))
                .flatMap(from -> from.voltage().stream())
                .forEach(volts -> rows.add(row(say("running-half", name), volts(volts.value()))));
    }

    /** To the hundredth, as everywhere that volts under load are told. */
    private String volts(Voltage volts) {
        return brief.words().numbers().fixed(volts, "V", 2, Rounding.DOWN);
    }

    private static Map<String, Object> row(String what, String value) {
        return new Rows().put("what", what).put("value", value).map();
    }

    private List<Map<String, Object>> measured() {
        return brief.job().testsAtHandover().stream()
                .filter(test -> COMPARED.contains(test.test()))
                .flatMap(test -> measured(test).stream())
                .toList();
    }

    private Optional<Map<String, Object>> measured(TestResult test) {
        if (test.result() == null || test.result().value() == null) {
            return Optional.empty();
        }
        String kind = brief.words().term(test.test());
        String what =
                Given.maybe(test.at()).map(at -> say("measured-at", kind, at)).orElseGet(() -> say("measured", kind));
        return Optional.of(row(what, brief.words().word(test.result().value())));
    }

    private List<String> signs() {
        return brief.lines("normal.sign")
                .say("warm")
                .say("fan")
                .sayIf(has.changeoverByItself() && has.shore(), "click")
                .sayIf(has.searchMode(), "search")
                .sayIf(!brief.job().charging().isEmpty(), "charger")
                .sayIf(has.vented(), "bubbles")
                .sayIf(has.lithium() && !brief.job().charging().isEmpty(), "cold")
                .sayIf(has.polarityLamp(), "lamp")
                .sayIf(has.rcds(), "rcd")
                .say("recovers")
                .list();
    }

    private List<String> wrong() {
        return brief.lines("normal.wrong")
                .say("hot")
                .sayIf(has.leadAcid(), "smell")
                .say("swollen")
                .say("sooner")
                .list();
    }

    private String say(String key, Object... arguments) {
        return brief.words().say("guide.normal." + key, arguments);
    }
}
