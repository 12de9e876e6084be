package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.quaybook.figures.AbsenceFigures;
import org.quaybook.figures.AbsenceFigures.Setting;
import org.quaybook.job.ChargeKind;
import org.quaybook.record.DirectDraw;
import org.quaybook.record.Rows;

/** Leaving the craft and coming back. */
final class AwayChapter {

    private final Briefing brief;

    AwayChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("before", before())
                .put("lasting", lasting())
                .put("counts", direct().counts())
                .put("notes", notes())
                .put("back", back())
                .map();
    }

    private List<String> before() {
        Equipment has = brief.has();
        List<String> leftOn = brief.figures().absence().leftOn();
        Lines steps = brief.lines("away.before")
                .say(has.leadAcid() ? "charge.lead" : "charge.lithium")
                .say("unplug")
                .sayIf(has.heats(), "heat")
                .say("charging-things", brief.names().aboard())
                .sayIf(leftOn.isEmpty(), "inverter")
                .sayIf(!leftOn.isEmpty(), "left-on", leftOn)
                .sayIf(!direct().running().isEmpty(), "direct", direct().running());
        brief.names()
                .named(brief.names().batterySwitches())
                .forEach(one -> steps.say(leftOn.isEmpty() ? "isolators" : "isolators-then", one));
        boolean stops = has.leadAcid() || has.solarStopsInCold();
        return steps.sayIf(has.chargedBy(ChargeKind.SOLAR), stops ? "solar" : "solar-frost")
                .sayIf(has.leadAcid(), "gas")
                .list();
    }

    private DirectDraw direct() {
        return new DirectDraw(brief.figures().absence().draw(), brief.words());
    }

    /** How long it lasts, one row a case: what stays on, now, to plan on. */
    private List<Map<String, Object>> lasting() {
        AbsenceFigures absence = brief.figures().absence();
        Rows idle = new Rows()
                .put("what", brief.words().say("guide.away.long.idle"))
                .put("now", brief.say(absence.idleToReserve()))
                .put("plan", brief.say(absence.idleToReserveWorn()));
        // Without a reading of what else draws, self-discharge alone would promise years.
        List<Map<String, Object>> off = absence.draw().standing().isEmpty()
                ? List.of()
                : List.of(new Rows()
                        .put("what", brief.words().say("guide.away.long.off"))
                        .put("now", brief.say(absence.offToReserve()))
                        .put("plan", "")
                        .map());
        List<Map<String, Object>> rows = new ArrayList<>();
        if (brief.has().leftOn()) {
            rows.add(new Rows()
                    .put("what", brief.words().say("guide.away.long.left-on", absence.leftOn()))
                    .put("now", brief.say(absence.toReserve()))
                    .put("plan", brief.say(absence.toReserveWorn()))
                    .map());
        }
        rows.add(idle.map());
        rows.addAll(off);
        return List.copyOf(rows);
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>(ofTheInverter());
        DirectDraw direct = direct();
        notes.addAll(direct.lines());
        notes.addAll(brief.lines("away.long")
                .sayIf(!direct.drawing().isEmpty(), "as-there", brief.names().aboard())
                .sayIf(!direct.resting().isEmpty(), "at-rest", direct.resting())
                .list());
        return List.copyOf(notes);
    }

    private List<String> ofTheInverter() {
        AbsenceFigures absence = brief.figures().absence();
        return brief.lines("away.long")
                .say(brief.has().leadAcid() ? "charge.lead" : "charge.lithium")
                .sayIf(brief.has().shore(), "trust")
                .sayIf(absence.setting() == Setting.TAKES_OVER && brief.has().leftOn(), "takes-over", absence.leftOn())
                .sayIf(absence.setting() == Setting.STAYS_OFF, "stays-off")
                .sayIf(absence.setting() == Setting.BY_HAND, "by-hand")
                .sayIf(
                        absence.setting() == Setting.ALWAYS_ON_INVERTER
                                && brief.has().leftOn(),
                        "always-on-inverter",
                        absence.leftOn())
                .sayIf(absence.draw().standing().isEmpty(), "off-unknown")
                .list();
    }

    private List<String> back() {
        return brief.lines("away.back")
                .sayIf(brief.has().leadAcid(), "smell")
                .say("look")
                .say("rest")
                .sayIf(brief.has().rcds(), "rcd")
                .say("on")
                .list();
    }
}
