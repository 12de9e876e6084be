package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.AbsenceFigures;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.InverterFigures;
import org.quaybook.job.Given;
import org.quaybook.record.Rows;
import org.quaybook.text.Words;

/** The page that is read first, last and in the dark: numbered steps for six occasions. */
public final class QuickCard {

    private final Briefing brief;
    private final CardDetail detail;
    private final SwitchSteps switches;

    QuickCard(Briefing brief, CardDetail detail) {
        this.brief = brief;
        this.detail = detail;
        this.switches = new SwitchSteps(brief, detail);
    }

    /** The steps of a job's card, one list a box; what can run stands in the facts of the job. */
    public static Map<String, Object> of(Assessment assessment, Words words, CardDetail detail) {
        return new QuickCard(Briefing.of(assessment, words), detail).facts();
    }

    Map<String, Object> facts() {
        return new Rows()
                .put("on", on())
                .put("alarm", alarm())
                .put("dark", dark())
                .put("leave", leave())
                .put("danger", danger())
                .map();
    }

    private List<String> on() {
        String where = detail.whole() ? brief.job().inverter().where() : null;
        Lines steps = lines("on");
        switches.battery(steps, "isolators");
        return (where == null ? steps.say("inverter") : steps.say("inverter-at", where))
                .sayIf(brief.has().changeoverByHand(), "changeover")
                .say("one")
                .list();
    }

    private List<String> alarm() {
        String largest = PartNames.largest(brief.figures().appliances());
        Lines steps =
                lines("alarm").sayIf(!largest.isEmpty(), "biggest", largest).sayIf(largest.isEmpty(), "any");
        return steps.say("wait").say("charge").list();
    }

    private List<String> dark() {
        InverterFigures inverter = brief.figures().inverter();
        Lines steps = lines("dark")
                .say("off")
                .say(brief.has().rcds() ? "rcd" : "breaker")
                .say("again");
        return (inverter.restart() == null ? steps.say("charge") : steps.say("restart", brief.say(inverter.restart())))
                .list();
    }

    private List<String> leave() {
        AbsenceFigures absence = brief.figures().absence();
        boolean leftOn = brief.has().leftOn();
        Lines steps = lines("leave")
                .say("loads")
                .sayIf(!leftOn, "inverter", brief.say(absence.idlePerDay()))
                .sayIf(leftOn, "inverter-unless", brief.say(absence.idlePerDay()), leftOn())
                .sayIf(
                        leftOn && brief.has().takesOver(),
                        "left-on",
                        brief.words().list(leftOn()),
                        brief.say(absence.toReserve()),
                        brief.say(absence.toReserveWorn()));
        switches.battery(steps, leftOn ? "isolators-then" : "isolators");
        return steps.list();
    }

    /** Out, call, then switch off what can be reached: as the record has it. Common practice, no source. */
    private List<String> danger() {
        return lines("danger")
                .say("people")
                .say(brief.has().boat() ? "sea" : "call")
                .addAll(new EmergencyOff(brief, detail).steps())
                .list();
    }

    /** What stays on; in the end how much more, and where the guide lists it. */
    private List<String> leftOn() {
        List<String> all = brief.figures().absence().leftOn();
        if (all.size() - 1 <= detail.named()) {
            return all;
        }
        List<String> said = new ArrayList<>(brief.figures().appliances().stream()
                .filter(it -> Given.isYes(it.appliance().leftOn()))
                .sorted(Comparator.comparing((ApplianceFigures it) -> it.power().value(), Comparator.reverseOrder()))
                .limit(detail.named())
                .map(it -> it.appliance().name())
                .toList());
        said.add(brief.words()
                .say(
                        "guide.card.more",
                        all.size() - said.size(),
                        brief.words().say("guide.chapter.away", brief.names().craft())));
        return said;
    }

    private Lines lines(String part) {
        return brief.lines("card." + part);
    }
}
