package org.quaybook.pack.guide;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.figures.ReturnFigures;
import org.quaybook.job.Changeover;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.record.EnergySource;
import org.quaybook.record.Rows;

/** Shore power, the changeover and the generator. */
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
                .put("trips", shore == null || !brief.has().rcds() ? List.of() : trips())
                .put("changeover", changeover())
                .put("generator", brief.has().generator() ? generator() : List.of())
                .put("leakage", leakage())
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
                .sayIf(has.staysOff(), has.changeoverByHand() ? "stays-off-by-hand" : "stays-off")
                .sayIf(has.staysOff(), "away")
                .sayIf(has.changeoverByHand() && !has.staysOff(), "by-hand")
                .sayIf(
                        brief.figures()
                                .shoreReturn()
                                .flatMap(ReturnFigures::heater)
                                .isPresent(),
                        "back")
                .sayIf(!stopping().isEmpty(), "past", stopping())
                .list();
    }

    /** What the battery never takes over, whatever it holds. */
    private List<String> stopping() {
        return brief.figures().pastInverter().stream()
                .filter(it -> it.isOn(Source.SHORE))
                .map(it -> it.appliance().name())
                .toList();
    }

    /** Plugging in trips the post: one by one shows what leaks. */
    private List<String> trips() {
        return brief.lines("shore.trips")
                .say("off")
                .say("plug")
                .say("one")
                .say("leaves")
                .list();
    }

    /** What leaked when nothing was wrong; empty where nobody has measured it. */
    private String leakage() {
        return brief.job().testsAtHandover().stream()
                .filter(test -> test.test() == TestKind.LEAKAGE && test.result() != null)
                .flatMap(test -> Objects.requireNonNull(test.result()).known().stream())
                .findFirst()
                .map(leaks -> brief.words().say("guide.shore.trips.leakage", leaks))
                .orElse("");
    }

    private List<String> changeover() {
        Changeover changeover = brief.job().inverter().changeover();
        if (changeover == null || changeover.kind().value() == null) {
            return List.of();
        }
        Lines lines = brief.lines("shore.changeover");
        return switch (Objects.requireNonNull(changeover.kind().value())) {
            case AUTOMATIC ->
                Given.maybe(changeover.time())
                        .map(time -> lines.say("automatic", time))
                        .orElseGet(() -> lines.say("automatic.any"))
                        .list();
            case MANUAL -> lines.say("manual").list();
            case NONE -> lines.say("none").list();
        };
    }

    private List<String> generator() {
        String where =
                brief.job().generator() == null ? null : brief.job().generator().where();
        String chosenBy = Optional.ofNullable(brief.job().generator())
                .map(Generator::chosenBy)
                .orElse("");
        List<String> switches = brief.names().named(brief.names().switchesOnlyOf(EnergySource.GENERATOR));
        Lines steps = brief.lines("shore.generator");
        if (where != null) {
            steps.say("where", where);
        }
        steps.say(brief.has().boat() ? "air.boat" : "air")
                .say("loads")
                .sayIf(brief.has().shore(), "shore-off", brief.names().post())
                .sayIf(!switches.isEmpty(), "off", switches)
                .say("start")
                .sayIf(!switches.isEmpty(), "on", switches)
                .sayIf(chosenBy.isEmpty() && brief.has().shore(), "choose")
                .sayIf(!chosenBy.isEmpty(), "choose-by", chosenBy)
                .say("one");
        brief.figures().generator().stream()
                .flatMap(it -> it.beyond().stream())
                .forEach(it -> steps.say("beyond", it.appliance().name()));
        return steps.say("stop").list();
    }
}
