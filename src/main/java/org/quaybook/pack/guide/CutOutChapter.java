package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.Figure;
import org.quaybook.figures.LargestDraw;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.record.Rows;

/** Why the inverter alarms and cuts out although the battery reads full, in this craft's own numbers. */
final class CutOutChapter {

    private final Briefing brief;

    CutOutChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("early", early())
                .put("steps", steps())
                .put("caption", caption())
                .put("alarmAt", at(brief.figures().inverter().alarmDelay()))
                .put("offAt", at(brief.figures().inverter().cutOutDelay()))
                .put("onAt", at(brief.figures().inverter().restartDelay()))
                .put("protectionCutOut", protectionCutOut())
                .map();
    }

    /** Where a threshold is met, and how long the volts must stay beyond it where the job says so. */
    private String at(Optional<Figure<TimeSpan>> delay) {
        return delay.map(time -> brief.words().say("guide.cutout.limits.at-after", brief.say(time)))
                .orElseGet(() -> brief.words().say("guide.cutout.limits.at"));
    }

    private String caption() {
        return brief.words()
                .say(
                        "guide.cutout.lost.caption",
                        brief.say(brief.figures().inverter().continuous()),
                        brief.say(brief.figures().inverter().worstCurrent()));
    }

    private Object protectionCutOut() {
        var protection = brief.job().bank().protection();
        return protection == null || protection.cutOut() == null
                ? ""
                : protection.cutOut().known().map(brief.words()::word).orElse("");
    }

    /** The appliances that set off the alarm above the reserve. */
    private List<String> early() {
        BankFigures bank = brief.figures().bank();
        Lines lines = brief.lines("cutout.full");
        boolean any = false;
        for (ApplianceFigures appliance : brief.figures().appliances()) {
            if (appliance.runs() && alarmsAbove(appliance, bank.reserve().value())) {
                any = true;
                tell(appliance, lines);
            }
        }
        for (LargestDraw draw : brief.figures().largestDraws()) {
            any |= tell(draw, bank.reserve().value(), lines);
        }
        return (any ? lines.say("reserve", brief.say(bank.reserve())).say("why") : lines.say("none"))
                .say("age")
                .list();
    }

    private static boolean alarmsAbove(ApplianceFigures appliance, Ratio reserve) {
        return appliance
                .alarmBelow()
                .map(below -> below.value().compareTo(reserve) > 0)
                .orElse(true);
    }

    /** What a branch does to the inverter above the reserve; whether it does anything. */
    private boolean tell(LargestDraw draw, Ratio reserve, Lines lines) {
        boolean alarms = draw.alarmsAbove(reserve);
        String name = draw.fuse().feedsOrId();
        if (alarms) {
            draw.alarmBelow()
                    .ifPresentOrElse(
                            below -> lines.say("branch", name, brief.say(below)),
                            () -> lines.say("branch-always", name));
        }
        if (draw.cutsOutAbove(reserve)) {
            draw.cutOutBelow()
                    .ifPresentOrElse(
                            below -> lines.say("branch-off", name, brief.say(below)),
                            () -> lines.say("branch-off-always", name));
        }
        return alarms;
    }

    private void tell(ApplianceFigures appliance, Lines lines) {
        String name = appliance.appliance().name();
        if (appliance.alarmBelow().isEmpty() || appliance.alarmRest().isEmpty()) {
            lines.say("always", name);
        } else {
            lines.say(
                    "named",
                    name,
                    brief.say(appliance.alarmBelow().get()),
                    brief.say(appliance.alarmRest().get()));
        }
    }

    private List<String> steps() {
        String rest = brief.say(brief.figures().bank().restAtReserve());
        return brief.lines("cutout.do")
                .say("off")
                .say("quiet")
                .say("rest")
                .say("above", rest)
                .say("below", rest)
                .list();
    }
}
