package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.quaybook.figures.InverterFigures;
import org.quaybook.job.ChargeKind;
import org.quaybook.record.Rows;

/** By symptom: likely cause, what to do, what if that does not help. Dangers first, then the most usual. */
final class TroubleChapter {

    /** What the chapter begins with and no row repeats. */
    private static final String USUAL = "else.call";

    private final Briefing brief;
    private final Equipment has;
    private final List<Map<String, Object>> rows = new ArrayList<>();

    TroubleChapter(Briefing brief) {
        this.brief = brief;
        this.has = brief.has();
    }

    List<Map<String, Object>> rows() {
        dangers();
        inverter();
        mains();
        battery();
        if (has.lithium()) {
            lithium();
        } else {
            leadAcid();
        }
        return List.copyOf(rows);
    }

    private void dangers() {
        String post = brief.names().post();
        // The call depends on no cure, so it is part of what to do.
        String call = " " + say("fire-service");
        danger("smoke", withShore("smoke.do", post) + call, USUAL);
        String checked = call + " " + say("co.then", burnsFuel());
        if (has.lithium()) {
            danger(
                    "co",
                    say("co.cause.lithium"),
                    say(has.boat() ? "co.do.lithium" : "co.do.lithium.land") + checked,
                    USUAL);
        } else {
            danger("co", say("co.cause"), withShore("co.do", post) + checked, USUAL);
            danger("egg", withShore("egg.do", post), USUAL);
        }
        if (has.shore()) {
            danger(
                    "tingle",
                    behindTransformer("tingle.cause"),
                    say(has.boat() ? "tingle.do.boat" : "tingle.do", post),
                    "else.electrician");
        }
        danger("hot", withSwitch("hot.do"), "else.electrician");
        if (has.boat()) {
            danger("wet", say("wet.do"), "else.electrician");
        }
    }

    /** What a carbon monoxide alarm gives reason to have checked. */
    private List<String> burnsFuel() {
        return brief.lines("trouble.co.of")
                .sayIf(has.engine(), "engine")
                .sayIf(has.generator(), "generator")
                .say("heaters")
                .say("battery")
                .list();
    }

    private String withShore(String key, String post) {
        return has.shore() ? say(key, post) : say(key + ".no-shore");
    }

    private String withSwitch(String key) {
        List<String> switches = brief.names().named(brief.names().batterySwitches());
        return switches.isEmpty() ? say(key + ".any") : say(key, switches);
    }

    private void inverter() {
        InverterFigures inverter = brief.figures().inverter();
        String cutOut = brief.say(inverter.cutOut());
        row(
                "alarm",
                say("alarm.cause"),
                say("alarm.do", brief.say(brief.figures().bank().restAtReserve())),
                USUAL);
        row("reads-full");
        row("heat");
        row(
                "off",
                inverter.restart() == null
                        ? say("off.cause.latched", cutOut)
                        : say("off.cause", cutOut, brief.say(inverter.restart())),
                say("off.do"),
                USUAL);
        if (has.motors()) {
            row("start");
        }
        if (has.microwave()) {
            row(
                    "microwave",
                    say("microwave.cause"),
                    say(has.shore() ? "microwave.do" : "microwave.do.no-shore"),
                    USUAL);
        }
        if (has.searchMode()) {
            row("search");
        }
        row("fuse", say("fuse.cause"), withSwitch("fuse.do"), "else.electrician");
    }

    private void mains() {
        row(
                "sockets",
                say(has.rcds() ? "sockets.cause" : "sockets.cause.no-rcd"),
                say(brief.job().sockets().isEmpty() ? "sockets.do.no-table" : "sockets.do"),
                "else.leave");
        if (has.rcds()) {
            row("rcd", say("rcd.cause"), say("rcd.do"), "else.leave");
            row("rcd-dead", say("rcd-dead.cause"), say("rcd-dead.do"), "else.leave");
        }
        if (has.shore() && has.rcds()) {
            row("plug-in", behindTransformer("plug-in.cause"), say("plug-in.do"), USUAL);
        }
        if (has.shore()) {
            row("post", say("post.cause"), say("post.do", brief.names().post()), USUAL);
        }
        if (has.polarityLamp()) {
            row("lamp", say("lamp.cause"), say("lamp.do"), "else.electrician");
        }
        if (brief.job().inverter().bypass() != null && has.shore()) {
            row(
                    "bypass",
                    say("bypass.cause"),
                    say("bypass.do", brief.job().inverter().bypass().where()),
                    USUAL);
        }
        if (has.changeover() && has.shore()) {
            row("clocks");
        }
        if (has.shore() && !brief.names().batterySwitches().isEmpty()) {
            row(
                    "still-live",
                    say("still-live.cause", brief.names().sources()),
                    say("still-live.do"),
                    "else.electrician");
        }
        if (has.generatorCharges()) {
            row(
                    "generator",
                    say("generator.cause"),
                    say(has.changeoverByItself() ? "generator.do.by-itself" : "generator.do"),
                    USUAL);
        }
        if (has.boat() && has.shore()) {
            row("anodes", say("anodes.cause"), say(anodes()), USUAL);
        }
    }

    /** Behind an isolating transformer nothing that leaks on board is felt or seen by the post. */
    private String behindTransformer(String key) {
        return say(has.transformer() ? key + ".transformer" : key);
    }

    private String anodes() {
        if (has.galvanicIsolator()) {
            return "anodes.do.isolator";
        }
        return has.transformer() ? "anodes.do.transformer" : "anodes.do";
    }

    private void battery() {
        row("flat", say("flat.cause", brief.say(brief.figures().absence().idlePerDay())), say("flat.do"), USUAL);
        if (has.takesOver()) {
            row("away");
        }
        row("percent");
        if (has.severalBlocks()) {
            row("one-dies");
        }
    }

    private void lithium() {
        row(
                "frost",
                has.chargeAbove().map(least -> say("frost.cause", least)).orElseGet(() -> say("frost.cause.any")),
                say("frost.do"),
                USUAL);
        row("zero", say("zero.cause"), say("zero.do"), "zero.else");
        row("dark");
        if (has.chargedBy(ChargeKind.ALTERNATOR)) {
            row("alternator");
        }
        if (!brief.job().charging().isEmpty()) {
            row("stops-early");
        }
    }

    private void leadAcid() {
        row("weak");
        if (has.chargedBy(ChargeKind.ALTERNATOR) || has.chargedBy(ChargeKind.SOLAR)) {
            neverFull();
        }
        if (has.vented()) {
            row("water");
        }
    }

    /** What fills the battery to the last: only what is there. */
    private void neverFull() {
        boolean night = has.shore() && has.chargedBy(ChargeKind.SHORE_CHARGER);
        boolean sun = has.chargedBy(ChargeKind.SOLAR);
        String key = "never-full.do";
        if (night && !sun) {
            key += ".night";
        } else if (sun && !night) {
            key += ".sun";
        } else if (!sun) {
            key += ".engine";
        }
        row(
                "never-full",
                say(has.chargedBy(ChargeKind.ALTERNATOR) ? "never-full.cause" : "never-full.cause.sun"),
                say(key),
                USUAL);
    }

    private void row(String key) {
        row(key, say(key + ".cause"), say(key + ".do"), USUAL);
    }

    private void row(String key, String cause, String what, String otherwise) {
        rows.add(cells(key, cause, what, otherwise).put("danger", false).map());
    }

    private void danger(String key, String what, String otherwise) {
        danger(key, say(key + ".cause"), what, otherwise);
    }

    private void danger(String key, String cause, String what, String otherwise) {
        rows.add(cells(key, cause, what, otherwise).put("danger", true).map());
    }

    private Rows cells(String key, String cause, String what, String otherwise) {
        return new Rows()
                .put("symptom", say(key))
                .put("cause", cause)
                .put("what", what)
                .put("otherwise", otherwise.equals(USUAL) ? "" : say(otherwise));
    }

    private String say(String key, Object... arguments) {
        return brief.words().say("guide.trouble." + key, arguments);
    }
}
