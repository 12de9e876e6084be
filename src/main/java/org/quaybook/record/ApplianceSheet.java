package org.quaybook.record;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.Ending;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.Figure;
import org.quaybook.figures.GroupFigures;
import org.quaybook.figures.PastInverterFigures;
import org.quaybook.figures.RunningFigures;
import org.quaybook.figures.RunningFigures.Warning;
import org.quaybook.figures.TogetherFigures;
import org.quaybook.figures.TogetherFigures.Order;
import org.quaybook.job.Given;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.text.Words;

/** What can run and for how long, in words: one row an appliance, and the pairs that cannot run at once. */
final class ApplianceSheet {

    private static final Ratio THREE_QUARTERS = new Ratio(0.75);
    private static final Ratio HALF = new Ratio(0.5);

    private final Assessment it;
    private final Words words;

    ApplianceSheet(Assessment assessment, Words words) {
        this.it = assessment;
        this.words = words;
    }

    List<Map<String, Object>> rows() {
        return it.figures().appliances().stream().map(this::row).toList();
    }

    /** What no battery runs, in one sentence; no words if there is nothing. */
    String past() {
        List<PastInverterFigures> past = it.figures().pastInverter();
        return past.isEmpty()
                ? ""
                : words.say(
                        "record.runs.past",
                        past.stream()
                                .map(one -> words.say(
                                        "record.runs.past.one", one.appliance().name(), one.sources()))
                                .toList());
    }

    private Map<String, Object> row(ApplianceFigures appliance) {
        Ratio reserve = it.figures().bank().reserve().value();
        return new Rows()
                .put("name", appliance.appliance().name())
                .put(
                        "verdict",
                        appliance.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .put("verdictWords", words.term(appliance.verdict()))
                .put("runs", appliance.runs())
                .put("power", say(appliance.power()))
                .put("average", say(appliance.average()))
                .put("startPower", say(appliance.startPower()))
                .put(
                        "pulsing",
                        appliance.average().value().compareTo(appliance.power().value()) < 0)
                .put("time", say(appliance.time()))
                .put("wornTime", say(appliance.wornTime()))
                .put("range", range(appliance.running()))
                .put("threeQuarters", from(appliance.running(), THREE_QUARTERS))
                .put("half", from(appliance.running(), HALF))
                .put("warning", maybe(appliance.running().warning().map(Warning::time)))
                .put("warningToPlanOn", maybe(appliance.running().warning().flatMap(Warning::toPlanOn)))
                .put("bar", bar(appliance.time()))
                .put("wornBar", bar(appliance.wornTime()))
                .put(
                        "perUse",
                        Given.maybe(appliance.appliance().perUse())
                                .map(words::word)
                                .orElse(""))
                .put("uses", maybe(appliance.uses()))
                .put("wornUses", maybe(appliance.wornUses()))
                .put("sharePerUse", maybe(appliance.sharePerUse()))
                .put("startAbove", startAbove(appliance, reserve))
                .put("alarmBelow", above(appliance.alarmBelow(), reserve))
                .put("alarmRest", above(appliance.alarmBelow(), reserve).isEmpty() ? "" : maybe(appliance.alarmRest()))
                .put("alwaysAlarms", appliance.alarmBelow().isEmpty())
                .put(
                        "neverAlarms",
                        appliance
                                .alarmBelow()
                                .map(below -> below.value().equals(Ratio.NONE))
                                .orElse(false))
                .put(
                        "runningVoltage",
                        appliance
                                .runningVoltage()
                                .map(volts -> words.numbers().fixed(volts.value(), "V", 2, Rounding.DOWN))
                                .orElse(""))
                .put("ending", words.term(appliance.ending()))
                .put("endsAtReserve", appliance.ending() == Ending.RESERVE)
                .put("wornEnding", words.term(appliance.wornEnding()))
                .put("wornEndsAtReserve", appliance.wornEnding() == Ending.RESERVE)
                .put("leftOn", Given.isYes(appliance.appliance().leftOn()))
                .map();
    }

    /** Shortest and longest time to reckon with; no words if it cannot run. */
    private String range(RunningFigures running) {
        return running.range()
                .map(range -> range.least().value().seconds() == 0
                        ? words.say("record.range.from-nothing", say(range.most()))
                        : words.say("record.range", say(range.least()), say(range.most())))
                .orElse("");
    }

    /** The running time from a state of charge; no words at or below the reserve. */
    private String from(RunningFigures running, Ratio stateOfCharge) {
        return running.from().stream()
                .filter(row -> row.stateOfCharge().equals(stateOfCharge))
                .findFirst()
                .map(row -> say(row.time()))
                .orElse("");
    }

    /**
     * Length of a bar in per cent of the longest that is drawn, on a scale of the square root: minutes and days are both
     * to be seen beside each other.
     */
    private long bar(Figure<TimeSpan> time) {
        double longest = it.figures().appliances().stream()
                .mapToDouble(appliance -> appliance.time().value().seconds())
                .max()
                .orElse(1);
        return longest == 0 ? 0 : Math.round(100 * Math.sqrt(time.value().seconds() / longest));
    }

    /**
     * The charge from which one use neither starts in vain nor sets off the alarm nor ends below the reserve; no words if
     * not even a full bank has it. Without a length of use, what its start and the alarm ask for.
     */
    private String startAbove(ApplianceFigures appliance, Ratio reserve) {
        if (appliance.startsDownTo().isEmpty() || appliance.alarmBelow().isEmpty()) {
            return "";
        }
        double use =
                appliance.sharePerUse().map(share -> share.value().fraction()).orElse(0.0);
        double least = DoubleStream.of(
                        reserve.fraction() + use,
                        appliance.startsDownTo().get().value().fraction(),
                        appliance.alarmBelow().get().value().fraction())
                .max()
                .getAsDouble();
        return least >= 1 ? "" : words.word(Stated.up(new Ratio(least)));
    }

    /** A state of charge only if it lies above the reserve, where the owner will meet it. */
    private String above(Optional<Figure<Ratio>> figure, Ratio reserve) {
        return figure.filter(ratio -> ratio.value().compareTo(reserve) > 0)
                .map(this::say)
                .orElse("");
    }

    /** The groups that the owner wants to run at once, those that can. */
    List<Map<String, Object>> together() {
        return it.figures().groups().stream()
                .filter(GroupFigures::runs)
                .map(this::group)
                .toList();
    }

    private Map<String, Object> group(GroupFigures group) {
        return new Rows()
                .put("names", words.list(group.names()))
                .put("power", say(group.power()))
                .put("time", say(group.running().time()))
                .put(
                        "wornTime",
                        group.verdict() == Verdict.RUNS ? say(group.running().wornTime()) : "")
                .map();
    }

    /** Pairs that cannot run at once, or only if one of them, named first, starts before the other. */
    List<Map<String, Object>> notTogether() {
        return it.figures().pairs().stream()
                .filter(pair -> pair.order() != Order.ANY)
                .map(this::pair)
                .toList();
    }

    /** Of so many appliances that pairs are not gone through: those of which no two run at once; null if any two do. */
    @Nullable List<String> apart() {
        return it.figures()
                .room()
                .filter(room -> !room.isEnoughForAnyTwo())
                .map(room -> room.apart().stream()
                        .map(one -> one.appliance().appliance().name())
                        .toList())
                .orElse(null);
    }

    private Map<String, Object> pair(TogetherFigures pair) {
        boolean turned = pair.order() == Order.SECOND;
        ApplianceFigures first = turned ? pair.second() : pair.first();
        ApplianceFigures second = turned ? pair.first() : pair.second();
        return new Rows()
                .put("first", first.appliance().name())
                .put("second", second.appliance().name())
                .put("power", say(pair.power()))
                .put("onlyStart", pair.order() != Order.NEVER)
                .map();
    }

    private String maybe(Optional<? extends Figure<? extends Quantity>> figure) {
        return figure.map(this::say).orElse("");
    }

    private String say(Figure<?> figure) {
        return words.word(figure.stated());
    }
}
