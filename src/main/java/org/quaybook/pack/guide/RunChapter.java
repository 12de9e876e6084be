package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.calc.DayRun;
import org.quaybook.calc.Ending;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.BankFigures;
import org.quaybook.figures.DayFigures;
import org.quaybook.figures.DayFigures.Season;
import org.quaybook.figures.Figure;
import org.quaybook.figures.GroupFigures;
import org.quaybook.figures.InverterFigures;
import org.quaybook.job.Appliance;
import org.quaybook.job.Given;
import org.quaybook.job.SearchMode;
import org.quaybook.job.Source;
import org.quaybook.quantity.ClockTime;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.record.DirectDraw;
import org.quaybook.record.Rows;

/** What can run, what ends it, what cannot run and why. */
final class RunChapter {

    /** Steps of two hours in a day, of which every second makes a column. */
    private static final int STEPS_OF_DAY = 24 / DayRun.EVERY;

    private static final int COLUMN = 2;

    private final Briefing brief;

    RunChapter(Briefing brief) {
        this.brief = brief;
    }

    Map<String, Object> facts() {
        return new Rows()
                .put(
                        "now",
                        brief.words()
                                .say(
                                        Given.maybe(brief.job().bank().health()).isPresent()
                                                ? "guide.run.now.long"
                                                : "guide.run.now.long.as-new"))
                .put(
                        "plan",
                        brief.words()
                                .say(
                                        "guide.run.plan.long",
                                        Given.maybe(brief.job().bank().temperature())
                                                .map(brief.words()::word)
                                                .orElse("")))
                .put("gives", gives())
                .put("ends", ends())
                .put("cannot", cannot())
                .put("cannotButOnShore", cannotButOnShore())
                .put("idle", idle())
                .put("day", day())
                .put("course", course())
                .put("mustNotFail", mustNotFail())
                .map();
    }

    private String gives() {
        InverterFigures inverter = brief.figures().inverter();
        return inverter.continuousHot()
                .map(hot -> brief.words()
                        .say("guide.run.together.gives.hot", brief.say(inverter.continuous()), brief.say(hot)))
                .orElseGet(() -> brief.words().say("guide.run.together.gives", brief.say(inverter.continuous())));
    }

    private List<String> ends() {
        BankFigures bank = brief.figures().bank();
        Lines lines = brief.lines("run.end")
                .say("reserve", brief.say(bank.reserve()), brief.say(bank.restAtReserve()))
                .say("self")
                .say("cut-out", brief.say(brief.figures().inverter().cutOut()));
        for (ApplianceFigures appliance : brief.figures().appliances()) {
            String name = appliance.appliance().name();
            boolean runs = appliance.runs();
            lines.sayIf(runs && appliance.ending() != Ending.RESERVE, "other", name, appliance.ending());
            lines.sayIf(
                    runs && appliance.ending() == Ending.RESERVE && appliance.wornEnding() != Ending.RESERVE,
                    "other-worn",
                    name,
                    appliance.wornEnding());
        }
        return lines.list();
    }

    private List<Map<String, Object>> cannot() {
        return Stream.concat(
                        brief.figures().appliances().stream()
                                .filter(appliance -> !appliance.runs())
                                .map(appliance -> cannot(appliance.appliance(), why(appliance))),
                        brief.figures().pastInverter().stream()
                                .map(it -> cannot(
                                        it.appliance(), brief.words().say("guide.run.cannot.past", it.sources()))))
                .toList();
    }

    private static Map<String, Object> cannot(Appliance appliance, String why) {
        return new Rows().put("name", appliance.name()).put("why", why).map();
    }

    /** Whether all that cannot run on battery runs on shore power. */
    private boolean cannotButOnShore() {
        return brief.has().shore() && brief.figures().pastInverter().stream().allMatch(it -> it.isOn(Source.SHORE));
    }

    private String why(ApplianceFigures appliance) {
        InverterFigures inverter = brief.figures().inverter();
        if (appliance.verdict() == Verdict.TOO_LARGE) {
            return brief.words()
                    .say("guide.run.cannot.too-large", brief.say(appliance.power()), brief.say(inverter.output()));
        }
        return appliance.verdict() == Verdict.START_TOO_LARGE
                ? brief.words()
                        .say(
                                "guide.run.cannot.start-too-large",
                                brief.say(appliance.startPower()),
                                brief.say(inverter.startOutput()))
                : brief.words().say("guide.run.cannot.cuts-out-when-full");
    }

    private List<String> idle() {
        var absence = brief.figures().absence();
        Lines lines = brief.lines("run.idle")
                .say("text", brief.say(brief.figures().inverter().idle()), brief.say(absence.idlePerDay()))
                .say(
                        new DirectDraw(absence.draw(), brief.words()).counts() ? "full-with" : "full",
                        brief.say(absence.idleToReserve()))
                .say("off");
        return lines.list();
    }

    private List<String> day() {
        DayFigures day = brief.figures().day();
        Lines lines = brief.lines("run.day")
                .say("use", brief.say(day.use()))
                .say("first")
                .say("dark", brief.say(day.darkDays()), brief.say(day.darkDaysWorn()));
        day.courses().stream()
                .filter(course -> course.season() == Season.DARK)
                .flatMap(course -> course.cutOut().stream())
                .forEach(end -> lines.say("cut-out", new ClockTime(end.at().value())));
        if (day.summer().value().wattHours() > 0) {
            season(lines, "summer", day.summer(), day.summerDays());
            season(lines, "winter", day.winter(), day.winterDays());
            day.winterDaysWorn().ifPresent(worn -> lines.say("winter.worn", brief.say(worn)));
        }
        return lines.list();
    }

    private void season(Lines lines, String season, Figure<Energy> yield, Optional<Figure<TimeSpan>> days) {
        String away = season.equals("summer") && brief.has().shore() ? ".no-mains" : "";
        days.ifPresentOrElse(
                left -> lines.say(season + ".falls-short" + away, brief.say(yield), brief.say(left)),
                () -> lines.say(season + ".covers" + away, brief.say(yield)));
    }

    /** Charge over a usual day: the hours, and a row for each season. */
    private Map<String, Object> course() {
        List<String> hours = new ArrayList<>();
        for (int i = 0; i <= STEPS_OF_DAY; i += COLUMN) {
            hours.add(brief.words().word(new ClockTime(TimeSpan.ofHours(hour(i)))));
        }
        return new Rows()
                .put("hours", hours)
                .put("ends", brief.figures().day().courses().stream().anyMatch(RunChapter::ends))
                .put(
                        "rows",
                        brief.figures().day().courses().stream()
                                .map(course -> new Rows()
                                        .put("season", brief.words().term(course.season()))
                                        .put("charge", charge(course))
                                        .map())
                                .toList())
                .map();
    }

    /** Whether the inverter cuts out before the day is over. */
    private static boolean ends(DayFigures.Course course) {
        return course.charge().size() <= STEPS_OF_DAY;
    }

    private static double hour(int step) {
        return (DayRun.BEGINS + step * (double) DayRun.EVERY) % 24;
    }

    /** Empty from where the inverter cuts out. */
    private List<String> charge(DayFigures.Course course) {
        List<String> charge = new ArrayList<>();
        for (int i = 0; i <= STEPS_OF_DAY; i += COLUMN) {
            charge.add(i < course.charge().size() ? brief.say(course.charge().get(i)) : "");
        }
        return charge;
    }

    /** What somebody depends on, and whether the battery grants the time wished for. */
    private List<String> mustNotFail() {
        Lines lines = brief.lines("run.must");
        for (ApplianceFigures it : brief.figures().appliances()) {
            if (it.appliance().isReliedOn()) {
                String name = it.appliance().name();
                Optional<GroupFigures> withLeftOn = brief.figures().withLeftOn(it);
                if (it.verdict() != Verdict.RUNS) {
                    lines.say("none", name);
                } else if (withLeftOn.isEmpty()) {
                    lines.say("plan", name, brief.say(it.wornTime()));
                } else {
                    GroupFigures all = withLeftOn.get();
                    List<String> others = all.names().subList(1, all.names().size());
                    if (all.verdict() == Verdict.RUNS) {
                        lines.say("plan.left-on", name, brief.say(all.running().wornTime()), others);
                    } else {
                        lines.say("none.left-on", name, others);
                    }
                }
                withLeftOn
                        .map(GroupFigures::running)
                        .orElse(it.running())
                        .wish()
                        .ifPresent(wish -> lines.say(
                                wish.granted() ? "granted" : wish.grantedNow() ? "granted-now" : "not-granted",
                                brief.say(wish.time())));
            }
        }
        return lines.list().isEmpty()
                ? List.of()
                : lines.say("alarm").say("second-way").list();
    }

    /** Empty unless load search is on. */
    String search() {
        SearchMode search = brief.job().inverter().searchMode();
        if (search == null || !brief.has().searchMode()) {
            return "";
        }
        Given<Power> threshold = search.threshold();
        return Given.maybe(threshold)
                .map(least -> brief.words().say("guide.run.search", least))
                .orElseGet(() -> brief.words().say("guide.run.search.any"));
    }
}
