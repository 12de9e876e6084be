package org.quaybook.checks;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.calc.Ending;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.figures.ApplianceFigures;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.figures.GroupFigures;
import org.quaybook.figures.InverterFigures;
import org.quaybook.figures.LargestDraw;
import org.quaybook.figures.PastInverterFigures;
import org.quaybook.figures.RunningFigures;
import org.quaybook.job.Appliance;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Job;
import org.quaybook.job.LoadKind;
import org.quaybook.job.Wave;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** The appliances against inverter, bank and supply. */
final class LoadChecks {

    private static final double HEATING_SHARE_PER_HOUR = 0.10;

    /** What household microwave ovens give at most; a plate's figure below it is probably that (common practice). */
    private static final Power LARGEST_COOKING = new Power(1000);

    /** Share of the usable charge that an idle inverter may take in a day before it is worth a word (common practice). */
    private static final double MUCH_A_DAY = 0.1;

    /** Share of the bank for one use of a heater from which shore power or gas serves better (common practice). */
    private static final double MUCH_FOR_ONE_USE = 0.25;

    private final Job job;
    private final Figures figures;
    private final Findings findings;

    private LoadChecks(Job job, Figures figures, Findings findings) {
        this.job = job;
        this.figures = figures;
        this.findings = findings;
    }

    static void run(Job job, Figures figures, Findings findings) {
        LoadChecks checks = new LoadChecks(job, figures, findings);
        for (ApplianceFigures appliance : figures.appliances()) {
            checks.size(appliance);
            checks.startTime(appliance);
            checks.startCurrent(appliance);
            checks.early(appliance);
            checks.mains(appliance.appliance());
            checks.microwave(appliance.appliance());
            checks.heating(appliance);
            checks.neutralToCase(appliance.appliance());
            checks.mustNotFail(appliance);
            Optional<GroupFigures> withLeftOn = figures.withLeftOn(appliance);
            withLeftOn.filter(it -> appliance.runs()).ifPresent(checks::together);
            checks.wish(
                    appliance.appliance().place(),
                    withLeftOn
                            .<Object>map(GroupFigures::names)
                            .orElse(appliance.appliance().name()),
                    withLeftOn.map(GroupFigures::verdict).orElse(appliance.verdict()),
                    withLeftOn.map(GroupFigures::running).orElse(appliance.running()));
        }
        for (PastInverterFigures appliance : figures.pastInverter()) {
            checks.reliedOn(appliance);
            checks.neutralToCase(appliance.appliance());
        }
        for (GroupFigures group : figures.groups()) {
            checks.together(group);
            Optional<GroupFigures> withLeftOn = figures.withLeftOn(group);
            withLeftOn.filter(it -> group.runs()).ifPresent(checks::together);
            GroupFigures whole = withLeftOn.orElse(group);
            checks.wish(group.group().place(), whole.names(), whole.verdict(), whole.running());
        }
        figures.largestDraws().forEach(checks::largestDraw);
        checks.derating();
        checks.absence();
        checks.drain();
        checks.efficiencies();
    }

    private void efficiencies() {
        InverterFigures inverter = figures.inverter();
        if (!inverter.losses().agreesWith(inverter.bestEfficiency().value())) {
            findings.add(
                    Severity.NOTE,
                    Check.EFFICIENCIES_DISAGREE,
                    job.inverter().place(),
                    inverter.idle().stated(),
                    inverter.bestEfficiency().stated(),
                    inverter.fullEfficiency().stated(),
                    inverter.reached().stated());
        }
    }

    private void size(ApplianceFigures it) {
        Appliance appliance = it.appliance();
        if (it.verdict() == Verdict.TOO_LARGE) {
            findings.add(
                    Severity.DECIDE,
                    Check.APPLIANCE_TOO_LARGE,
                    appliance.place(),
                    appliance.name(),
                    it.power().stated(),
                    figures.inverter().output().stated());
        }
        if (it.verdict() == Verdict.START_TOO_LARGE) {
            findings.add(
                    Severity.DECIDE,
                    Check.START_TOO_LARGE,
                    appliance.place(),
                    appliance.name(),
                    it.startPower().stated(),
                    figures.inverter().startOutput().stated());
        }
        if (it.verdict() == Verdict.CUTS_OUT_WHEN_FULL) {
            findings.add(
                    Severity.DECIDE,
                    Check.CUTS_OUT_WHEN_FULL,
                    appliance.place(),
                    appliance.name(),
                    it.startLoad().stated(),
                    it.ending() == Ending.PROTECTION
                            ? protectionCutOut()
                            : figures.inverter().cutOut().stated());
        }
    }

    private Stated protectionCutOut() {
        return Optional.ofNullable(job.bank().protection())
                .flatMap(protection -> Given.maybe(protection.cutOut()))
                .map(Stated::asGiven)
                .orElseThrow();
    }

    private void startTime(ApplianceFigures it) {
        Optional<TimeSpan> allowed =
                Optional.ofNullable(job.inverter().shortTime()).flatMap(shortTime -> Given.maybe(shortTime.time()));
        Optional<TimeSpan> start = Given.maybe(it.appliance().startTime());
        boolean needsShortTime =
                it.startPower().value().compareTo(figures.inverter().output().value()) > 0;
        if (needsShortTime
                && allowed.isPresent()
                && start.isPresent()
                && start.get().compareTo(allowed.get()) > 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.START_TOO_LONG,
                    it.appliance().place(),
                    it.appliance().name(),
                    Stated.up(start.get()),
                    Stated.asGiven(allowed.get()));
        }
    }

    /** A start that the inverter bears for as long as it likes, but not beside what else runs then. */
    private void startTimeTogether(GroupFigures it) {
        Power output = figures.inverter().output().value();
        Optional<TimeSpan> allowed =
                Optional.ofNullable(job.inverter().shortTime()).flatMap(shortTime -> Given.maybe(shortTime.time()));
        if (allowed.isEmpty() || !it.runs()) {
            return;
        }
        for (ApplianceFigures member : it.members()) {
            Power others = it.power().value().minus(member.power().value());
            Power atStart = others.plus(member.startPower().value());
            Optional<TimeSpan> start = Given.maybe(member.appliance().startTime());
            boolean alone = member.startPower().value().compareTo(output) > 0;
            if (!alone
                    && atStart.compareTo(output) > 0
                    && start.isPresent()
                    && start.get().compareTo(allowed.get()) > 0) {
                findings.add(
                        Severity.DECIDE,
                        Check.TOGETHER_START_LONG,
                        it.group().place(),
                        it.names(),
                        member.appliance().name(),
                        Stated.up(start.get()),
                        Stated.up(atStart),
                        Stated.asGiven(allowed.get()));
            }
        }
    }

    private void early(ApplianceFigures it) {
        if (!it.runs()) {
            return;
        }
        Ratio reserve = figures.bank().reserve().value();
        if (it.cutOutBelow().isPresent() && it.cutOutBelow().get().value().compareTo(reserve) > 0) {
            Figure<Resistance> most = it.running().mostForCutOut().orElseThrow();
            findings.addWithLimit(
                    Severity.DECIDE,
                    Check.CUT_OUT_EARLY,
                    it.appliance().place(),
                    most,
                    it.appliance().name(),
                    it.cutOutBelow().get().stated(),
                    figures.bank().reserve().stated(),
                    most.stated(),
                    figures.supply().resistance().stated());
        } else if (it.alarmBelow().isEmpty() || it.alarmBelow().get().value().compareTo(reserve) > 0) {
            Figure<Resistance> most = it.running().mostForAlarm().orElseThrow();
            findings.addWithLimit(
                    Severity.DECIDE,
                    Check.ALARM_EARLY,
                    it.appliance().place(),
                    most,
                    it.appliance().name(),
                    it.alarmBelow().<Object>map(figure -> figure.stated()).orElse(Stated.asGiven(Ratio.WHOLE)),
                    figures.bank().reserve().stated(),
                    most.stated(),
                    figures.supply().resistance().stated());
        }
    }

    /** Nothing on the inverter changes, and yet it alarms or goes dark. */
    private void largestDraw(LargestDraw it) {
        Ratio reserve = figures.bank().reserve().value();
        boolean cutsOut = it.cutsOutAbove(reserve);
        if (cutsOut || it.alarmsAbove(reserve)) {
            Optional<Figure<Ratio>> below = cutsOut ? it.cutOutBelow() : it.alarmBelow();
            Figure<Current> most = cutsOut ? it.mostHolding() : it.mostQuiet();
            findings.addWithLimit(
                    cutsOut ? Severity.DECIDE : Severity.NOTE,
                    cutsOut ? Check.BRANCH_CUTS_OUT : Check.BRANCH_ALARMS,
                    it.fuse().place(),
                    most,
                    it.fuse().feedsOrId(),
                    Stated.asGiven(it.current().known().orElseThrow()),
                    below.<Object>map(Figure::stated).orElse(Stated.asGiven(Ratio.WHOLE)),
                    figures.bank().reserve().stated(),
                    most.stated());
        }
    }

    private void mains(Appliance appliance) {
        Inverter inverter = job.inverter();
        boolean frequency = differs(appliance.frequency(), inverter.output().frequency());
        boolean voltage = Given.maybe(appliance.voltage())
                .flatMap(wanted -> inverter.output().voltage().known().map(has -> far(wanted, has)))
                .orElse(false);
        if (frequency || voltage) {
            findings.add(Severity.DECIDE, Check.MAINS_MISMATCH, appliance.place(), appliance.name());
        }
        boolean sensitive = appliance.kind() == LoadKind.MOTOR
                || appliance.kind() == LoadKind.MICROWAVE
                || appliance.kind() == LoadKind.MEDICAL;
        if (sensitive && inverter.output().wave().value() == Wave.MODIFIED) {
            findings.add(Severity.DECIDE, Check.WAVE_MODIFIED, appliance.place(), appliance.name());
        }
    }

    private static <T> boolean differs(@org.jspecify.annotations.Nullable Given<T> wanted, Given<T> has) {
        Optional<T> known = Given.maybe(wanted);
        return known.isPresent() && has.value() != null && !Objects.equals(known.get(), has.value());
    }

    private static boolean far(Voltage wanted, Voltage has) {
        return Math.abs(wanted.ratioTo(has) - 1) > 0.1;
    }

    private void microwave(Appliance appliance) {
        Optional<Power> output = Given.maybe(appliance.outputPower());
        Optional<Power> input = appliance.power().known();
        if (appliance.kind() == LoadKind.MICROWAVE
                && output.isEmpty()
                && input.filter(power -> power.compareTo(LARGEST_COOKING) <= 0).isPresent()) {
            findings.add(
                    Severity.DECIDE,
                    Check.MICROWAVE_INPUT,
                    appliance.place(),
                    appliance.name(),
                    Stated.asGiven(input.get()),
                    Stated.up(input.get().dividedBy(0.6)));
        }
        if (output.isPresent() && input.isPresent() && input.get().compareTo(output.get()) <= 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.MICROWAVE_POWER,
                    appliance.place(),
                    appliance.name(),
                    Stated.asGiven(input.get()),
                    Stated.asGiven(output.get()),
                    Stated.up(output.get().dividedBy(0.6)));
        }
    }

    private void neutralToCase(Appliance appliance) {
        if (Given.isYes(appliance.neutralToCase())) {
            findings.add(Severity.FORBIDS, Check.NEUTRAL_TO_CASE, appliance.place(), appliance.name());
        }
    }

    /** One use of what somebody depends on against the time to plan on, with all that stays on beside it. */
    private void mustNotFail(ApplianceFigures it) {
        Appliance appliance = it.appliance();
        Optional<TimeSpan> use = Given.maybe(appliance.perUse());
        RunningFigures running =
                figures.withLeftOn(it).map(GroupFigures::running).orElse(it.running());
        if (appliance.isReliedOn()
                && it.runs()
                && use.isPresent()
                && running.wornTime().value().compareTo(use.get()) < 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.MUST_NOT_FAIL,
                    appliance.place(),
                    appliance.name(),
                    Stated.asGiven(use.get()),
                    running.wornTime().stated());
        }
    }

    private void together(GroupFigures it) {
        startTimeTogether(it);
        if (it.verdict() == Verdict.TOO_LARGE || it.verdict() == Verdict.START_TOO_LARGE) {
            findings.add(
                    Severity.DECIDE,
                    Check.TOGETHER_TOO_LARGE,
                    it.group().place(),
                    it.names(),
                    it.power().stated(),
                    figures.inverter().output().stated(),
                    it.startPower().stated(),
                    figures.inverter().startOutput().stated());
        }
        if (it.verdict() == Verdict.CUTS_OUT_WHEN_FULL) {
            findings.add(
                    Severity.DECIDE,
                    Check.TOGETHER_CUTS_OUT,
                    it.group().place(),
                    it.names(),
                    it.startLoad().stated(),
                    it.running().ending() == Ending.PROTECTION
                            ? protectionCutOut()
                            : figures.inverter().cutOut().stated());
        }
    }

    /** A start against the battery's own short-time limit. */
    private void startCurrent(ApplianceFigures it) {
        if (it.startCurrent().isPresent()
                && figures.protectionPeak().isPresent()
                && it.startCurrent()
                                .get()
                                .value()
                                .compareTo(figures.protectionPeak().get().value())
                        > 0) {
            findings.add(
                    Severity.DECIDE,
                    Check.PROTECTION_PEAK,
                    it.appliance().place(),
                    it.appliance().name(),
                    it.startCurrent().get().stated(),
                    figures.protectionPeak().get().stated(),
                    it.startOfBlock().orElseThrow().stated());
        }
    }

    /** A wish that only a bank still new grants is worth knowing; one that not even that grants is to be decided. */
    private void wish(Place place, Object name, Verdict verdict, RunningFigures it) {
        boolean saidElsewhere = verdict == Verdict.TOO_LARGE || verdict == Verdict.START_TOO_LARGE;
        it.wish()
                .filter(wish -> !wish.granted() && !saidElsewhere)
                .ifPresent(wish -> findings.add(
                        wish.grantedNow() ? Severity.NOTE : Severity.DECIDE,
                        Check.WISHED_TIME,
                        place,
                        name,
                        wish.time().stated(),
                        it.wornTime().stated(),
                        it.time().stated(),
                        WouldDo.of(wish, it.wornEnding() != Ending.RESERVE)));
    }

    private void derating() {
        Given<Temperature> locker = job.inverter().locker();
        if (locker != null
                && locker.value() != null
                && figures.inverter().continuousHot().isPresent()) {
            findings.add(
                    Severity.NOTE,
                    Check.INVERTER_DERATED,
                    locker.place(),
                    Stated.asGiven(locker.value()),
                    figures.inverter().output().stated(),
                    figures.inverter().continuous().stated());
        }
    }

    private void reliedOn(PastInverterFigures it) {
        if (it.appliance().isReliedOn()) {
            findings.add(
                    Severity.DECIDE,
                    Check.RELIED_ON_PAST,
                    it.appliance().place(),
                    it.appliance().name(),
                    it.circuit().id(),
                    it.sources());
        }
    }

    private void absence() {
        Changeover changeover = job.inverter().changeover();
        boolean takesOver = changeover != null
                && changeover.kind().value() == ChangeoverKind.AUTOMATIC
                && Given.maybe(changeover.whenShoreFails()).orElse(WhenShoreFails.TAKE_OVER)
                        == WhenShoreFails.TAKE_OVER;
        boolean alwaysOn =
                job.shore() == null || (changeover != null && changeover.kind().value() == ChangeoverKind.NONE);
        if (!(takesOver || alwaysOn) || figures.absence().leftOn().isEmpty()) {
            return;
        }
        List<ApplianceFigures> heating = figures.appliances().stream()
                .filter(it ->
                        Given.isYes(it.appliance().leftOn()) && it.appliance().kind() == LoadKind.HEATING)
                .filter(it -> it.average().value().watts()
                        > HEATING_SHARE_PER_HOUR
                                * figures.bank().energy().value().wattHours())
                .toList();
        for (ApplianceFigures it : heating) {
            findings.add(
                    Severity.FORBIDS,
                    Check.HEATING_LEFT_ON,
                    it.appliance().place(),
                    it.appliance().name(),
                    it.average().stated(),
                    figures.bank().energy().stated());
        }
        if (!alwaysOn) {
            findings.add(
                    Severity.DECIDE,
                    Check.LEFT_ON_TAKE_OVER,
                    job.inverter().place(),
                    figures.absence().leftOn(),
                    figures.absence().toReserve().stated(),
                    figures.absence().toReserveWorn().stated());
        }
    }

    private void drain() {
        if (figures.absence().idlePerDay().value().fraction() > MUCH_A_DAY) {
            findings.add(
                    Severity.NOTE,
                    Check.IDLE_DRAIN,
                    job.inverter().place(),
                    figures.inverter().idle().stated(),
                    figures.absence().idlePerDay().stated(),
                    figures.absence().idleToReserve().stated());
        }
    }

    private void heating(ApplianceFigures it) {
        it.sharePerUse()
                .filter(share -> it.appliance().kind() == LoadKind.HEATING
                        && share.value().fraction() > MUCH_FOR_ONE_USE)
                .ifPresent(share -> findings.add(
                        Severity.NOTE,
                        Check.HEATING_ON_BATTERY,
                        it.appliance().place(),
                        it.appliance().name(),
                        share.stated()));
    }
}
