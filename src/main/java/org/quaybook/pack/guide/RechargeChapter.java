package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.quaybook.figures.ChargeFigures;
import org.quaybook.figures.DayFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.GeneratorFigures;
import org.quaybook.figures.RechargeFigures;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Given;
import org.quaybook.record.Rows;

/** Filling the battery up again: how long with what, and how often. */
final class RechargeChapter {

    /** Chargers that find room beside the names of the appliances. */
    private static final int MOST_COLUMNS = 3;

    private final Briefing brief;

    RechargeChapter(Briefing brief) {
        this.brief = brief;
    }

    boolean isNeeded() {
        return !brief.figures().charging().isEmpty();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("often", often())
                .put("times", times())
                .put("cold", coldest())
                .put("brings", brings())
                .put("sun", sun())
                .put("uses", uses())
                .put(
                        "generator",
                        brief.figures().generator().map(this::generator).orElse(List.of()))
                .map();
    }

    private String coldest() {
        return Given.maybe(brief.job().bank().temperature())
                .map(brief.words()::word)
                .orElse("");
    }

    private List<String> often() {
        boolean lead = brief.has().leadAcid();
        return brief.lines("recharge.often")
                .say(lead ? "lead" : "lithium")
                .say("last")
                .sayIf(lead, "soon")
                .list();
    }

    /** One row a charger whose current is known, and one for those that run together. */
    private List<Map<String, Object>> times() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (ChargeFigures charger : brief.figures().charging()) {
            charger.recharge()
                    .ifPresent(recharge -> rows.add(times(brief.names().nameOf(charger.charging()), recharge)));
        }
        brief.figures()
                .chargingTogether()
                .forEach(together -> rows.add(times(brief.words().term(together.way()), together.recharge())));
        return List.copyOf(rows);
    }

    private Map<String, Object> times(String name, RechargeFigures recharge) {
        return new Rows()
                .put("name", name)
                .put("current", brief.say(recharge.left()))
                .put("toKnee", maybe(recharge.toKnee()))
                .put("toFull", maybe(recharge.toFull()))
                .put("toFullCold", maybe(recharge.toFullCold()))
                .put("afterDay", maybe(recharge.afterDay()))
                .map();
    }

    /** What comes in on a usual day, where the job says how long a source works. */
    private List<Map<String, Object>> brings() {
        return brief.figures().charging().stream()
                .filter(charger ->
                        charger.summerDay().isPresent() || charger.winterDay().isPresent())
                .map(charger -> new Rows()
                        .put("name", brief.names().nameOf(charger.charging()))
                        .put("summer", maybe(charger.summerDay()))
                        .put("winter", maybe(charger.winterDay()))
                        .map())
                .toList();
    }

    private List<String> sun() {
        Lines lines = brief.lines("run.day.sun");
        if (brief.has().chargedBy(ChargeKind.SOLAR)) {
            DayFigures day = brief.figures().day();
            day.sunSummer()
                    .ifPresentOrElse(time -> lines.say("summer", brief.say(time)), () -> lines.say("summer.never"));
            day.sunWinter()
                    .ifPresentOrElse(time -> lines.say("winter", brief.say(time)), () -> lines.say("winter.never"));
        }
        return lines.list();
    }

    /** How long each charger takes to make good one use of an appliance. */
    private Map<String, Object> uses() {
        List<ChargeFigures> chargers = brief.figures().charging().stream()
                .filter(charger -> charger.recharge()
                        .filter(recharge -> !recharge.afterUses().isEmpty())
                        .isPresent())
                .limit(MOST_COLUMNS)
                .toList();
        List<Map<String, Object>> rows = brief.figures().appliances().stream()
                .filter(appliance -> appliance.runs()
                        && Given.maybe(appliance.appliance().perUse()).isPresent())
                .map(appliance -> new Rows()
                        .put("name", appliance.appliance().name())
                        .put(
                                "use",
                                Given.maybe(appliance.appliance().perUse())
                                        .map(brief.words()::word)
                                        .orElse(""))
                        .put(
                                "times",
                                chargers.stream()
                                        .map(charger -> charger.recharge().stream()
                                                .flatMap(recharge -> recharge.afterUses().stream())
                                                .filter(after ->
                                                        after.appliance().key().equals(appliance.key()))
                                                .findFirst()
                                                .map(after -> brief.say(after.time()))
                                                .orElse(""))
                                        .toList())
                        .map())
                .toList();
        return new Rows()
                .put(
                        "chargers",
                        chargers.stream()
                                .map(charger -> brief.names().nameOf(charger.charging()))
                                .toList())
                .put("rows", chargers.isEmpty() ? List.of() : rows)
                .map();
    }

    private List<String> generator(GeneratorFigures generator) {
        boolean charges = generator.charger().value().watts() > 0;
        Lines lines = brief.lines("recharge.generator").say("gives", brief.say(generator.power()));
        lines.sayIf(charges, "charger", brief.say(generator.charger()));
        // What it cannot run at all is not told how to share with the charger.
        if (charges && generator.beyond().isEmpty()) {
            boolean staying = generator.leftOn().value().watts() > 0;
            generator
                    .largest()
                    .ifPresentOrElse(
                            name -> lines.say(staying ? "with-staying" : "with", name, brief.say(generator.needed())),
                            () -> lines.sayIf(staying, "staying", brief.say(generator.needed())));
            lines.say(generator.carries() ? "enough" : "wait");
            if (generator.carries() && generator.startsTooHard()) {
                generator.starter().ifPresent(name -> lines.say("start", name, brief.say(generator.start())));
            }
        }
        generator.beyond().forEach(it -> lines.say("beyond", it.appliance().name(), brief.say(it.startPower())));
        return lines.list();
    }

    private String maybe(Optional<? extends Figure<?>> figure) {
        return figure.map(brief::say).orElse("");
    }
}
