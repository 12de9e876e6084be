package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Given;
import org.quaybook.quantity.Rounding;
import org.quaybook.record.Rows;

/** What never to do, and what to do when somebody is hurt. */
final class SafetyChapter {

    private final Briefing brief;

    SafetyChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("mains", mains())
                .put("never", never())
                .put("exhaust", exhaust())
                .put("shock", shock())
                .put("acid", brief.has().leadAcid() ? acid() : List.of())
                .put("fire", fire())
                .map();
    }

    private String mains() {
        return Given.maybe(brief.job().inverter().output().voltage())
                .map(volts -> brief.words()
                        .say("guide.safety.mains", brief.words().numbers().fixed(volts, "V", 0, Rounding.NEAREST)))
                .orElseGet(() -> brief.words().say("guide.safety.mains.any"));
    }

    private List<String> never() {
        Equipment has = brief.has();
        Lines lines = brief.lines("safety.never")
                .say("live")
                .say("change")
                .say("ratings")
                .say("overload")
                .say(has.boat() ? "unattended" : "unattended.land", runAlone())
                .sayIf(has.shore(), "leads")
                .sayIf(has.boat() && has.shore(), "swim")
                .say("battery", brief.say(brief.figures().bank().shortCircuit()))
                .sayIf(has.leadAcid(), "flame")
                .say(has.leadAcid() ? "cover" : "cover.inverter")
                .sayIf(has.chargedBy(ChargeKind.ALTERNATOR), "engine")
                .say("mix");
        has.chargeAbove().ifPresent(least -> lines.sayIf(has.lithium(), "cold", least));
        String exhaust = exhaust();
        return (exhaust.isEmpty() ? lines : lines.add(exhaust)).say("mute").list();
    }

    /** What may stay on with nobody there, so that the warning means all the rest. */
    private List<String> runAlone() {
        Equipment has = brief.has();
        return brief.lines("safety.alone")
                .sayIf(has.boat(), "pumps")
                .say("alarms")
                .sayIf(!brief.job().charging().isEmpty(), "charging")
                .addAll(brief.figures().absence().leftOn())
                .list();
    }

    /** About the exhaust of what there is; empty where nothing burns fuel. */
    String exhaust() {
        Equipment has = brief.has();
        if (!has.generator() && !has.engine()) {
            return "";
        }
        return brief.words()
                .say("guide.safety.never.exhaust" + (has.generator() ? has.engine() ? "" : ".generator" : ".engine"));
    }

    /** Of more steps than these, help is on its way before the last of them is done (common practice, no source). */
    private static final int MOST_BEFORE_CALL = 6;

    private List<String> shock() {
        List<String> off = new EmergencyOff(brief).steps();
        return brief.lines("safety.hurt.shock")
                .say("touch")
                .sayIf(off.size() > MOST_BEFORE_CALL, "send")
                .addAll(off)
                .say("call")
                .say("doctor")
                .list();
    }

    private List<String> acid() {
        return brief.lines("safety.hurt.acid")
                .say("rinse")
                .say("clothes")
                .say("doctor")
                .list();
    }

    private List<String> fire() {
        String where = brief.job().bank().where();
        String energy = brief.say(brief.figures().bank().energy());
        return brief.lines("safety.hurt.fire")
                .say("out")
                .say("closed")
                .sayIf(where != null, brief.has().lithium() ? "lithium" : "lead", energy, where == null ? "" : where)
                .sayIf(brief.has().lithium(), "again")
                .list();
    }
}
