package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import org.quaybook.figures.BankCharging;
import org.quaybook.figures.ChargingAtOnce;
import org.quaybook.figures.Figure;
import org.quaybook.figures.InverterFigures;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.record.Rows;

/** What frost and heat ask for, and how the installation is laid up and woken. */
final class SeasonsChapter {

    private final Briefing brief;
    private final Equipment has;

    SeasonsChapter(Briefing brief) {
        this.brief = brief;
        this.has = brief.has();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("winter", winter())
                .put("summer", summer())
                .put("settings", settings())
                .put("layUp", layUp())
                .put("spring", spring())
                .map();
    }

    private List<String> winter() {
        Lines lines = brief.lines("away.cold");
        if (has.leadAcid()) {
            lines.say("lead");
        } else {
            lithium(lines);
        }
        return brings(lines.say("less"), "winter", brief.figures().day().winter());
    }

    private void lithium(Lines lines) {
        has.chargeAbove()
                .ifPresentOrElse(least -> lines.say("lithium.charge", least), () -> lines.say("lithium.charge.any"));
        slowly(lines);
        List<String> stop = brief.names().chargers(true);
        List<String> noStop = brief.names().chargers(false);
        lines.sayIf(!stop.isEmpty(), "lithium.stop", stop).sayIf(!noStop.isEmpty(), "lithium.no-stop", noStop);
    }

    /** An owner cannot set a current, but can leave off what makes it too much. */
    private void slowly(Lines lines) {
        BankCharging charging = brief.figures().bankCharging();
        Current cold = charging.coldLimit().value();
        if (cold.amperes() <= 0 || cold.compareTo(charging.limit().value()) >= 0) {
            return;
        }
        List<Charging> off = new ChargingAtOnce(
                        brief.job().charging(), brief.figures().bank().nominal().value())
                .tooMuchFor(cold);
        List<String> parts = off.stream()
                .filter(source -> source.kind() != ChargeKind.ALTERNATOR)
                .flatMap(source -> brief.names().offBy(source).stream())
                .distinct()
                .toList();
        String temperature = Given.maybe(brief.job().bank().temperature())
                .map(brief.words()::word)
                .orElse("");
        lines.sayIf(!parts.isEmpty(), "lithium.slowly", temperature, parts)
                .sayIf(
                        off.stream().anyMatch(source -> source.kind() == ChargeKind.ALTERNATOR),
                        "lithium.slowly-engine");
    }

    private List<String> summer() {
        InverterFigures inverter = brief.figures().inverter();
        Lines lines = brief.lines("seasons.summer");
        inverter.continuousHot()
                .ifPresentOrElse(
                        hot -> lines.say(
                                "hot",
                                Given.maybe(brief.job().inverter().locker())
                                        .map(brief.words()::word)
                                        .orElse(""),
                                brief.say(hot),
                                brief.say(inverter.continuous())),
                        () -> lines.say("hot.any"));
        lines.say("air").sayIf(has.vented(), "water").say("ages");
        return brings(lines, "summer", brief.figures().day().summer());
    }

    /** And what comes in without the mains on a day of the season, where anything does. */
    private List<String> brings(Lines lines, String season, Figure<Energy> yield) {
        return yield.value().wattHours() > 0
                ? lines.add(brief.words()
                                .say(
                                        "guide.seasons." + season + ".brings" + (has.shore() ? ".no-mains" : ""),
                                        brief.say(yield)))
                        .list()
                : lines.list();
    }

    /** Settings that belong to a season. */
    private List<Map<String, Object>> settings() {
        return brief.job().settings().stream()
                .filter(setting -> setting.season() != null)
                .map(setting -> new Rows()
                        .put("season", setting.season())
                        .put("device", setting.device())
                        .put("name", setting.name())
                        .put("value", setting.value())
                        .map())
                .toList();
    }

    private List<String> layUp() {
        return brief.lines("seasons.lay-up")
                .say(has.leadAcid() ? "charge.lead" : "charge.lithium")
                .sayIf(has.vented(), "water")
                .say("leave")
                .sayIf(has.shore(), "shore")
                .say(has.leadAcid() ? "again.lead" : "again.lithium")
                .say("write")
                .list();
    }

    private List<String> spring() {
        return brief.lines("seasons.spring")
                .say("look")
                .sayIf(has.chargedBy(ChargeKind.SOLAR), "panels")
                .say("rest")
                .say("full")
                .sayIf(has.rcds(), "rcd")
                .sayIf(brief.job().inverter().bypass() != null, "bypass")
                .sayIf(has.shore(), "rehearse")
                .list();
    }
}
