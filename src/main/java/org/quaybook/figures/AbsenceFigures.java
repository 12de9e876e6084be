package org.quaybook.figures;

import java.util.List;
import java.util.stream.Stream;
import org.quaybook.calc.Demand;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Limits;
import org.quaybook.job.Changeover;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.WhenShoreFails;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;

/**
 * Nobody is there: how long the bank lasts.
 *
 * @param setting what happens to what stays on when shore power fails
 * @param leftOn names of the appliances that stay on
 * @param power their mean input together
 * @param load what they and the inverter take from the bank on average, and what always draws
 * @param toReserve from full to the reserve, inverter on and those appliances on, bank as it is
 * @param toReserveWorn the same with the worn bank
 * @param toEmpty from full until the inverter switches off or nothing is left
 * @param idleToReserve from full to the reserve with the inverter on and nothing running
 * @param idleToReserveWorn the same with the worn bank: what to plan on
 * @param idleToEmpty from full with the inverter on and nothing running until the inverter switches off or nothing is left
 * @param draw what draws on the bank besides the inverter
 * @param offToReserve from full to the reserve with the inverter off; the bank's own discharge alone where nobody wrote what
 *     always draws, so that it is then a time at most
 * @param offToEmpty the same until nothing is left
 * @param idlePerDay share of the usable charge that the idle inverter takes in a day
 */
public record AbsenceFigures(
        Setting setting,
        List<String> leftOn,
        Figure<Power> power,
        Figure<Power> load,
        Figure<TimeSpan> toReserve,
        Figure<TimeSpan> toReserveWorn,
        Figure<TimeSpan> toEmpty,
        Figure<TimeSpan> idleToReserve,
        Figure<TimeSpan> idleToReserveWorn,
        Figure<TimeSpan> idleToEmpty,
        SteadyDraw draw,
        Figure<TimeSpan> offToReserve,
        Figure<TimeSpan> offToEmpty,
        Figure<Ratio> idlePerDay) {

    /** What happens to what stays on when shore power fails. */
    public enum Setting {
        /** The inverter takes over by itself: what stays on runs the bank down. */
        TAKES_OVER,
        /** The inverter stays off: what stays on goes dark. */
        STAYS_OFF,
        /** Somebody would have to turn a switch: what stays on goes dark, and an inverter left on idles. */
        BY_HAND,
        /** The circuits always hang on the inverter: what stays on runs the bank down. */
        ALWAYS_ON_INVERTER,
        /** Nobody wrote it down, or there is no shore power. */
        NOT_KNOWN;

        static Setting of(Job job) {
            Changeover changeover = job.inverter().changeover();
            if (job.shore() == null || changeover == null || changeover.kind().value() == null) {
                return NOT_KNOWN;
            }
            return switch (BankFigures.seen(changeover.kind())) {
                case MANUAL -> BY_HAND;
                case NONE -> ALWAYS_ON_INVERTER;
                case AUTOMATIC ->
                    Given.maybe(changeover.whenShoreFails())
                            .map(what -> what == WhenShoreFails.TAKE_OVER ? TAKES_OVER : STAYS_OFF)
                            .orElse(NOT_KNOWN);
            };
        }
    }

    private static final double HOURS_IN_MONTH = 720;

    public AbsenceFigures {
        leftOn = List.copyOf(leftOn);
    }

    static AbsenceFigures of(
            Job job,
            List<ApplianceFigures> appliances,
            BankFigures bank,
            InverterFigures inverter,
            SupplyFigures supply,
            SteadyDraw draw,
            Limits limits,
            FigureBook book) {
        List<ApplianceFigures> leftOn = leftOn(appliances);
        Figure<Power> power = book.enter(
                "absence.power",
                leftOn.stream().map(figures -> figures.average().value()).reduce(new Power(0), Power::plus),
                Rounding.UP,
                Formula.SUM,
                leftOn.stream().map(figures -> Input.of("P", figures.average())).toList());
        Power always = draw.asPower();
        Demand demand = demand(leftOn, inverter).plus(always);
        Demand inverterOnly =
                Demand.steady(new Power(Math.max(inverter.idle().value().watts(), 1e-3)));
        Demand idle = inverterOnly.plus(always);
        Figure<Power> load = book.enter(
                "absence.load",
                mean(demand),
                Rounding.UP,
                Formula.DAY_USE,
                Stream.concat(
                                Stream.of(Input.of("P", power), Input.of("P₀", inverter.idle())),
                                draw.powerInputs().stream())
                        .toList());
        Discharge now = new Discharge(bank.asItIs(), supply.resistance().value());
        Discharge worn = new Discharge(bank.worn(), supply.resistance().value());
        Limits empty = new Limits(Ratio.NONE, limits.cutOut(), limits.protection());
        List<Input> nowInputs = runInputs(bank.capacityNow(), bank.resistances(), bank, inverter, supply);
        List<Input> wornInputs = runInputs(bank.capacityWorn(), bank.resistancesWorn(), bank, inverter, supply);
        List<Input> inputs = with(List.of(Input.of("P₁", load)), nowInputs);
        List<Input> inverterInputs = with(List.of(Input.of("P₁", inverter.idle())), nowInputs);
        List<Input> idleOnly = with(inverterInputs, draw.powerInputs());
        List<Input> idleWorn = with(with(List.of(Input.of("P₁", inverter.idle())), wornInputs), draw.powerInputs());
        Figure<TimeSpan> idleToReserve = book.enter(
                "absence.idle-to-reserve",
                now.run(idle, Ratio.WHOLE, limits, Pauses.RECOVER).time(),
                Rounding.DOWN,
                Formula.RUN_TIME,
                idleOnly);
        Figure<TimeSpan> inverterToReserve = draw.counted().isEmpty()
                ? idleToReserve
                : book.enter(
                        "absence.inverter-to-reserve",
                        now.run(inverterOnly.plus(draw.standingAsPower()), Ratio.WHOLE, limits, Pauses.RECOVER)
                                .time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        with(inverterInputs, draw.standingPowerInputs()));
        return new AbsenceFigures(
                Setting.of(job),
                leftOn.stream().map(figures -> figures.appliance().name()).toList(),
                power,
                load,
                book.enter(
                        "absence.to-reserve",
                        now.run(demand, Ratio.WHOLE, limits, Pauses.RECOVER).time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        inputs),
                book.enter(
                        "absence.to-reserve-worn",
                        worn.run(demand, Ratio.WHOLE, limits, Pauses.DO_NOT_RECOVER)
                                .time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        with(List.of(Input.of("P₁", load)), wornInputs)),
                book.enter(
                        "absence.to-empty",
                        now.run(demand, Ratio.WHOLE, empty, Pauses.RECOVER).time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        inputs),
                idleToReserve,
                book.enter(
                        "absence.idle-to-reserve-worn",
                        worn.run(idle, Ratio.WHOLE, limits, Pauses.DO_NOT_RECOVER)
                                .time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        idleWorn),
                book.enter(
                        "absence.idle-to-empty",
                        now.run(idle, Ratio.WHOLE, empty, Pauses.RECOVER).time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        idleOnly),
                draw,
                off("absence.off-to-reserve", bank.usableCharge(), draw, bank, book),
                off("absence.off-to-empty", bank.capacityNow(), draw, bank, book),
                book.enter(
                        "absence.idle-per-day",
                        sharePerDay(inverterToReserve.value()),
                        Rounding.UP,
                        Formula.SHARE_PER_DAY,
                        Input.of("t", inverterToReserve)));
    }

    private static List<Input> runInputs(
            Figure<Charge> capacity,
            List<Input> resistances,
            BankFigures bank,
            InverterFigures inverter,
            SupplyFigures supply) {
        return with(
                with(List.of(Input.of("s", bank.reserve()), Input.of("C", capacity)), resistances),
                List.of(Input.of("R", supply.resistance()), Input.of("U", inverter.cutOut())));
    }

    private static List<Input> with(List<Input> some, List<Input> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    /** The appliances that stay on. */
    static List<ApplianceFigures> leftOn(List<ApplianceFigures> appliances) {
        return appliances.stream()
                .filter(figures -> Given.isYes(figures.appliance().leftOn()))
                .toList();
    }

    private static Ratio sharePerDay(TimeSpan toReserve) {
        return new Ratio(toReserve.seconds() == 0 ? 1 : 24 / toReserve.hours());
    }

    private static Power mean(Demand demand) {
        double duty = demand.duty().fraction();
        return demand.working().times(duty).plus(demand.pausing().times(1 - duty));
    }

    private static Figure<TimeSpan> off(
            String key, Figure<Charge> charge, SteadyDraw draw, BankFigures bank, FigureBook book) {
        Ratio perMonth = bank.battery().selfDischargePerMonth();
        double amperes = bank.capacityNow().value().ampereHours() * perMonth.fraction() / HOURS_IN_MONTH
                + draw.current().amperes();
        return book.enter(
                key,
                TimeSpan.ofHours(charge.value().ampereHours() / amperes),
                Rounding.DOWN,
                Formula.OFF_TIME,
                Stream.concat(
                                Stream.of(
                                        Input.of("C₁", charge),
                                        Input.of("C", bank.capacityNow()),
                                        Input.usual(
                                                "d", perMonth, bank.battery().citation())),
                                draw.whole().map(it -> Input.of("I", it)).stream())
                        .toList());
    }

    /**
     * What stays on, taken together: all of it draws at once, as far as the inverter gives that, for so long that the mean
     * is right, and pauses at once. So the voltage is judged at the peak, and a square-law loss is not averaged away.
     */
    static Demand demand(List<ApplianceFigures> leftOn, InverterFigures inverter) {
        double idle = inverter.idle().value().watts();
        double extra = 0;
        double together = 0;
        for (ApplianceFigures figures : leftOn) {
            double power = figures.power().value().watts();
            extra += (figures.load().value().watts() - idle)
                    * figures.average().value().watts()
                    / power;
            together += power;
        }
        Power peak = new Power(Math.min(together, inverter.output().value().watts()));
        double working = Math.max(inverter.losses().inputFor(peak).watts(), idle + extra);
        Ratio duty = working > idle ? new Ratio(Math.min(1, extra / (working - idle))) : Ratio.WHOLE;
        return duty.fraction() > 0
                ? new Demand(new Power(working), new Power(idle), duty)
                : Demand.steady(inverter.idle().value());
    }
}
