package org.quaybook.figures;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.calc.Discharge.Run;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.job.Appliance;
import org.quaybook.job.Given;
import org.quaybook.job.Protection;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** Works out what one appliance can do. */
final class ApplianceReckoning {

    private final RunSystem system;
    private final Appliance appliance;
    private final String key;
    private final InverterFigures inverter;
    private final FigureBook book;

    ApplianceReckoning(RunSystem system, Appliance appliance, String key) {
        this.system = system;
        this.appliance = appliance;
        this.key = key;
        this.inverter = system.inverter();
        this.book = system.book();
    }

    ApplianceFigures figures() {
        Figure<Power> power = book.stated(key + ".power", appliance.power());
        Ratio duty = duty();
        Figure<Power> average = average(power, duty);
        Figure<Power> start = startPower(appliance, key, power, book);
        Figure<Power> load = inverter.load(key + ".load", power, book);
        Figure<Power> startLoad = inverter.load(key + ".start-load", start, book);
        Figure<Voltage> startLimit = startLimit();
        LoadReckoning reckoning = new LoadReckoning(
                system,
                new LoadReckoning.Load(
                        key,
                        power,
                        start,
                        load,
                        startLoad,
                        startLimit,
                        duty,
                        Given.maybe(appliance.average()).isPresent(),
                        dutyInput(duty),
                        system.powerSpread(appliance),
                        system.dutySpread(appliance),
                        appliance.wishedTime()));
        Verdict verdict = reckoning.verdict();
        RunningFigures running = reckoning.figures();
        Optional<Figure<Ratio>> startsDownTo = reckoning
                .startsDownTo()
                .filter(soc -> verdict.runs())
                .map(soc -> reckoning.lowest(".starts-down-to", soc, startLoad, startLimit));
        Optional<Figure<Current>> startCurrent = startsDownTo.flatMap(soc -> startCurrent(soc, startLoad));
        return new ApplianceFigures(
                appliance,
                key,
                verdict,
                power,
                average,
                start,
                load,
                startLoad,
                running,
                uses(".uses", running.time()),
                uses(".uses-worn", running.wornTime()),
                sharePerUse(reckoning.fromFull(), running.time()),
                startLimit,
                startsDownTo,
                startCurrent,
                startCurrent.flatMap(this::startOfBlock));
    }

    private Optional<Figure<Current>> startOfBlock(Figure<Current> startCurrent) {
        Protection protection = system.job().bank().protection();
        if (protection == null || Given.maybe(protection.peak()).isEmpty()) {
            return Optional.empty();
        }
        Figure<Ratio> share = system.bank().worstShare();
        return Optional.of(book.enter(
                key + ".start-of-block",
                startCurrent.value().times(share.value().fraction()),
                Rounding.UP,
                Formula.SHARE_OF_STRING,
                Input.of("I₁", startCurrent),
                Input.of("share", share)));
    }

    private Figure<Power> average(Figure<Power> power, Ratio duty) {
        Given<Power> stated = appliance.average();
        return stated != null && stated.value() != null
                ? book.stated(key + ".average", stated)
                : book.enter(
                        key + ".average",
                        power.value().times(duty.fraction()),
                        Rounding.UP,
                        Formula.MEAN,
                        Input.of("P", power),
                        dutyInput(duty));
    }

    private Ratio duty() {
        Optional<Ratio> byAverage = Given.maybe(appliance.average())
                .map(mean -> new Ratio(mean.ratioTo(BankFigures.seen(appliance.power()))));
        return byAverage.or(() -> Given.maybe(appliance.duty())).orElse(Ratio.WHOLE);
    }

    private Input dutyInput(Ratio duty) {
        return Given.maybe(appliance.average()).isPresent()
                ? Input.of("P_mean", Objects.requireNonNull(appliance.average()))
                : Input.ofOr("d", appliance.duty(), duty, Reason.NOT_WRITTEN);
    }

    static Figure<Power> startPower(Appliance appliance, String key, Figure<Power> power, FigureBook book) {
        double factor = Given.maybe(appliance.start()).orElse(1.0);
        return book.enter(
                key + ".start-power",
                power.value().times(factor),
                Rounding.UP,
                Formula.START,
                Input.of("P", power),
                Input.ofOr("s", appliance.start(), factor, Reason.NOT_WRITTEN));
    }

    /** A start that is over before the cut-out delay has run out need only hold the voltage that knows no delay. */
    private Figure<Voltage> startLimit() {
        Optional<TimeSpan> startTime = Given.maybe(appliance.startTime());
        boolean isOverInTime = startTime.isPresent()
                && inverter.cutOutDelay()
                        .filter(delay -> startTime.get().compareTo(delay.value()) < 0)
                        .isPresent();
        return isOverInTime ? inverter.cutOutAtOnce().orElse(inverter.cutOut()) : inverter.cutOut();
    }

    private Optional<Figure<Current>> startCurrent(Figure<Ratio> startsDownTo, Figure<Power> startLoad) {
        Figure<Ratio> reserve = system.bank().reserve();
        Figure<Ratio> lowest = startsDownTo.value().compareTo(reserve.value()) > 0 ? startsDownTo : reserve;
        return system.now()
                .at(lowest.value(), startLoad.value().plus(system.standing()))
                .map(point -> book.enter(
                        key + ".start-current",
                        point.current(),
                        Rounding.UP,
                        Formula.START_CURRENT,
                        system.withStanding(List.of(
                                Input.of("P₁", startLoad),
                                Input.of("s", lowest),
                                system.rest(lowest.value()),
                                Input.of("R", system.bank().resistanceAt(lowest.value())),
                                Input.of("R", system.supply().resistance())))));
    }

    /** The length of one use; only asked for where the job states it. */
    private Input perUse() {
        return Input.of("t_use", Objects.requireNonNull(appliance.perUse()));
    }

    private Optional<Figure<Count>> uses(String name, Figure<TimeSpan> time) {
        return Given.maybe(appliance.perUse())
                .map(perUse -> book.enter(
                        key + name,
                        new Count(Math.floor(time.value().ratioTo(perUse))),
                        Rounding.DOWN,
                        Formula.USES,
                        Input.of("t", time),
                        perUse()));
    }

    private Optional<Figure<Ratio>> sharePerUse(Run run, Figure<TimeSpan> time) {
        if (time.value().seconds() == 0) {
            return Optional.empty();
        }
        return Given.maybe(appliance.perUse())
                .map(perUse -> book.enter(
                        key + ".share-per-use",
                        new Ratio((1 - run.endsAt().fraction()) * perUse.ratioTo(time.value())),
                        Rounding.UP,
                        Formula.SHARE_PER_USE,
                        Input.usual("s_end", run.endsAt(), Reason.RUN_END),
                        Input.of("t", time),
                        perUse()));
    }
}
