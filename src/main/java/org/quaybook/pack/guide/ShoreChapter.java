package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import org.quaybook.figures.ReturnFigures;
import org.quaybook.job.Given;
import org.quaybook.job.Rcd;
import org.quaybook.job.Shore;
import org.quaybook.job.TestKind;
import org.quaybook.job.TestResult;
import org.quaybook.record.Rows;

/** Shore power, sockets and RCDs. */
final class ShoreChapter {

    private final Briefing brief;

    ShoreChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        Shore shore = brief.job().shore();
        return new Rows()
                .put("connect", shore == null ? List.of() : connect(shore))
                .put("disconnect", shore == null ? List.of() : disconnect())
                .put("limit", shore == null ? List.of() : limit(shore))
                .put("fails", shore == null ? List.of() : fails())
                .put("generatorSockets", generatorSockets())
                .put("rcds", rcds())
                .map();
    }

    private List<String> connect(Shore shore) {
        PartNames names = brief.names();
        Lines steps = brief.lines("shore.connect")
                .say("look")
                .say(brief.has().boat() ? "uncoil" : "uncoil.land")
                .say("loads");
        names.shoreSwitches().forEach(one -> steps.say("off", one));
        steps.say("post-off", names.post());
        return (shore.where() == null ? steps.say("inlet") : steps.say("inlet-at", shore.where()))
                .say("post", names.post())
                .sayIf(brief.has().polarityLamp(), "lamp")
                .sayIf(!names.shoreSwitches().isEmpty(), "on", names.shoreSwitches())
                .say("slowly")
                .list();
    }

    private List<String> disconnect() {
        PartNames names = brief.names();
        Lines steps = brief.lines("shore.disconnect").say("loads");
        names.shoreSwitches().forEach(one -> steps.say("off", one));
        return steps.say("post", names.post()).say("inlet").say("dry").list();
    }

    private List<String> limit(Shore shore) {
        Lines lines = brief.lines("shore.limit");
        Given.maybe(shore.smallestPedestal()).ifPresent(least -> lines.say("smallest", least));
        Given.maybe(brief.job().inverter().inputLimit()).ifPresent(limit -> lines.say("set", limit));
        brief.figures()
                .shoreReturn()
                .filter(it -> !it.chargers().isEmpty())
                .ifPresent(it -> lines.sayIf(it.limited(), "held")
                        .sayIf(!it.limited(), "charger", brief.say(it.charger()), brief.say(it.supply()))
                        .sayIf(!it.limited(), "spare", brief.say(it.spare())));
        return lines.list().isEmpty() ? List.of() : lines.say("one").list();
    }

    private List<String> fails() {
        Equipment has = brief.has();
        return brief.lines("shore.fails")
                .sayIf(has.takesOver(), "takes-over")
                .sayIf(has.takesOver(), "drains")
                .sayIf(has.staysOff(), "stays-off")
                .sayIf(has.staysOff(), "away")
                .sayIf(has.changeoverByHand(), "by-hand")
                .sayIf(
                        brief.figures()
                                .shoreReturn()
                                .flatMap(ReturnFigures::heater)
                                .isPresent(),
                        "back")
                .sayIf(!brief.job().sockets().isEmpty(), "table")
                .list();
    }

    /** What feeds each socket while the generator runs; empty if no socket says so. */
    private List<String> generatorSockets() {
        boolean any = brief.job().sockets().stream().anyMatch(socket -> socket.generatorOn() != null);
        return any
                ? brief.job().sockets().stream()
                        .map(socket -> Given.maybe(socket.generatorOn())
                                .map(brief.words()::term)
                                .orElse(""))
                        .toList()
                : List.of();
    }

    private List<Map<String, Object>> rcds() {
        return brief.job().rcds().stream().map(this::rcd).toList();
    }

    private Map<String, Object> rcd(Rcd rcd) {
        return new Rows()
                .put("id", rcd.id())
                .put("where", rcd.where())
                .put(
                        "trips",
                        brief.job().tests().stream()
                                .filter(test -> test.test() == TestKind.RCD_TRIP
                                        && test.of().contains(rcd.id()))
                                .map(this::trip)
                                .toList())
                .map();
    }

    private Map<String, Object> trip(TestResult test) {
        return new Rows()
                .put(
                        "source",
                        Given.maybe(test.source()).map(brief.words()::term).orElse(""))
                .put(
                        "time",
                        test.result() == null
                                ? ""
                                : test.result().known().map(brief.words()::word).orElse(""))
                .map();
    }
}
