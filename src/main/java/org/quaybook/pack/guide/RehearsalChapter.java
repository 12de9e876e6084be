package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.job.Given;
import org.quaybook.job.Outcome;
import org.quaybook.job.Rcd;
import org.quaybook.job.Rehearsal;
import org.quaybook.job.Socket;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.record.Rows;

/** Pulling the shore lead on purpose: each step, what must be seen, and what it means if not. */
final class RehearsalChapter {

    private final Briefing brief;
    private final Equipment has;

    RehearsalChapter(Briefing brief) {
        this.brief = brief;
        this.has = brief.has();
    }

    boolean isNeeded() {
        return has.shore();
    }

    Map<String, Object> facts() {
        List<Map<String, Object>> steps = new ArrayList<>();
        steps.add(step(say("ready.do"), say("ready.see"), say("ready.else")));
        steps.add(step(say("pull.do", brief.names().post()), seenWhenPulled(), say("pull.else." + behaviour())));
        if (!has.takesOver()) {
            String how = has.changeoverByHand() ? say("start.do.by-hand") : say("start.do");
            steps.add(step(how, say("start.see"), say("start.else")));
        }
        steps.add(step(say("drain.do"), say("drain.see"), say("drain.else")));
        List<String> rcds = inverterRcds();
        if (!rcds.isEmpty()) {
            steps.add(step(say("rcd.do", rcds), say("rcd.see"), say("rcd.else")));
        }
        steps.add(step(say("inverter.do"), say("inverter.see"), say("inverter.else")));
        steps.add(step(
                say(has.changeoverByHand() ? "back.do.by-hand" : "back.do"),
                say(has.polarityLamp() ? "back.see.lamp" : "back.see"),
                say("back.else", brief.names().post())));
        return new Rows().put("steps", steps).put("done", done()).map();
    }

    /** What the changeover is set to do, as part of a key. */
    private String behaviour() {
        return has.takesOver()
                ? "takes-over"
                : has.changeoverByHand() ? "by-hand" : has.staysOff() ? "stays-off" : "unknown";
    }

    /** The heart of it: by name what stays on and what goes dark, where the inverter takes over. */
    private String seenWhenPulled() {
        List<String> live = socketsFedBy(Source.INVERTER);
        if (!has.takesOver() || live.isEmpty()) {
            return say("pull.see." + behaviour());
        }
        List<String> dark = socketsFedBy(Source.NOTHING);
        return dark.isEmpty()
                ? say("pull.see.live", live)
                : say("pull.see.live", live) + " " + say("pull.see.dark", dark);
    }

    private List<String> socketsFedBy(Source source) {
        return brief.job().sockets().stream()
                .filter(socket ->
                        Given.maybe(socket.shoreOff()).filter(source::equals).isPresent())
                .map(Socket::name)
                .toList();
    }

    private List<String> inverterRcds() {
        return brief.job().rcds().stream()
                .filter(rcd -> Given.maybe(rcd.source())
                        .filter(Source.INVERTER::equals)
                        .isPresent())
                .map(Rcd::id)
                .toList();
    }

    private static Map<String, Object> step(String what, String see, String otherwise) {
        return new Rows()
                .put("do", what)
                .put("see", see)
                .put("otherwise", otherwise)
                .map();
    }

    /** When it was done before, by the job. */
    private String done() {
        Rehearsal rehearsal = brief.job().rehearsal();
        Optional<Object> on = rehearsal != null && Given.isYes(rehearsal.shoreLost())
                ? Optional.of(rehearsal.on())
                : brief.job().testsAtHandover().stream()
                        .filter(test -> test.test() == TestKind.SHORE_LOST
                                && test.outcome() == Outcome.PASSED
                                && test.on() != null)
                        .findFirst()
                        .map(test -> Objects.requireNonNull(test.on()));
        return on.map(day -> say("done", day)).orElseGet(() -> say("not-done"));
    }

    private String say(String key, Object... arguments) {
        return brief.words().say("guide.rehearsal." + key, arguments);
    }
}
