package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import org.quaybook.figures.InverterFigures;
import org.quaybook.record.Rows;

/** The page for when nothing works: first calm, then what to tell on the telephone, then the way back in order. */
final class RecoveryChapter {

    private final Briefing brief;
    private final Equipment has;

    RecoveryChapter(Briefing brief) {
        this.brief = brief;
        this.has = brief.has();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("blanks", List.of("time", "code", "volts", "percent", "running", "changed"))
                .put("steps", steps())
                .map();
    }

    private List<String> steps() {
        InverterFigures inverter = brief.figures().inverter();
        String reserve = brief.say(brief.figures().bank().restAtReserve());
        Lines steps = brief.lines("recovery.step").say("volts", reserve);
        if (has.lithium()) {
            steps.say("zero");
        }
        steps.say(has.rcds() ? "rcd" : "breaker");
        brief.names().named(brief.names().batterySwitches()).forEach(one -> steps.say("isolators", one));
        steps.sayIf(has.changeoverByHand(), "changeover").say("inverter");
        if (inverter.restart() != null) {
            steps.say("restart", brief.say(inverter.restart()));
        }
        return steps.sayIf(brief.job().inverter().bypass() != null && has.shore(), "bypass", bypass())
                .say("lamp")
                .say("one")
                .say("again")
                .list();
    }

    private String bypass() {
        var bypass = brief.job().inverter().bypass();
        return bypass == null ? "" : bypass.where();
    }
}
