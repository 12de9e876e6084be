package org.quaybook.figures;

import java.util.List;
import org.quaybook.calc.Demand;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Limits;
import org.quaybook.calc.Standby;
import org.quaybook.job.Given;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;

/**
 * Nobody is there: how long the bank lasts.
 *
 * @param leftOn names of the appliances that stay on
 * @param power their mean input together
 * @param toReserve from full to the reserve, inverter on and those appliances on, bank as it is
 * @param toReserveWorn the same with the worn bank
 * @param toEmpty from full until the inverter switches off or nothing is left
 * @param idleToReserve from full to the reserve with the inverter on and nothing running
 * @param offToReserve from full to the reserve with the inverter off: self-discharge alone
 * @param idlePerDay share of the usable charge that the idle inverter takes in a day
 */
public record AbsenceFigures(
        List<String> leftOn,
        Figure<Power> power,
        Figure<TimeSpan> toReserve,
        Figure<TimeSpan> toReserveWorn,
        Figure<TimeSpan> toEmpty,
        Figure<TimeSpan> idleToReserve,
        Figure<TimeSpan> offToReserve,
        Figure<Ratio> idlePerDay) {

    public AbsenceFigures {
        leftOn = List.copyOf(leftOn);
    }

    static AbsenceFigures of(
            List<ApplianceFigures> appliances,
            BankFigures bank,
            InverterFigures inverter,
            SupplyFigures supply,
            Limits limits,
            FigureBook book) {
        List<ApplianceFigures> leftOn = appliances.stream()
                .filter(figures -> Given.isYes(figures.appliance().leftOn()))
                .toList();
        Figure<Power> power = book.enter(
                "absence.power",
                leftOn.stream().map(figures -> figures.average().value()).reduce(new Power(0), Power::plus),
                Rounding.UP,
                Formula.SUM,
                leftOn.stream().map(figures -> Input.of("P", figures.average())).toList());
        Demand demand = Demand.steady(inverter.losses().inputFor(power.value()));
        Demand idle = Demand.steady(new Power(Math.max(inverter.idle().value().watts(), 1e-3)));
        Discharge now = new Discharge(bank.asItIs(), supply.resistance().value());
        Discharge worn = new Discharge(bank.worn(), supply.resistance().value());
        Limits empty = new Limits(Ratio.NONE, limits.cutOut(), limits.protection());
        Input[] inputs = {
            Input.of("P", power),
            Input.of("P₀", inverter.idle()),
            Input.of("s", bank.reserve()),
            Input.of("C", bank.capacityNow())
        };
        TimeSpan idleTime = now.run(idle, Ratio.WHOLE, limits, Pauses.RECOVER).time();
        Figure<TimeSpan> idleToReserve =
                book.enter("absence.idle-to-reserve", idleTime, Rounding.DOWN, Formula.RUN_TIME, inputs);
        return new AbsenceFigures(
                leftOn.stream().map(figures -> figures.appliance().name()).toList(),
                power,
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
                        inputs),
                book.enter(
                        "absence.to-empty",
                        now.run(demand, Ratio.WHOLE, empty, Pauses.RECOVER).time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        inputs),
                idleToReserve,
                book.enter(
                        "absence.off-to-reserve",
                        Standby.until(
                                bank.capacityNow().value(),
                                new Ratio(1 - bank.reserve().value().fraction()),
                                new Current(0),
                                bank.battery().selfDischargePerMonth()),
                        Rounding.DOWN,
                        Formula.SELF_DISCHARGE,
                        Input.of("C", bank.capacityNow()),
                        Input.of("s", bank.reserve()),
                        Input.usual(
                                "d",
                                bank.battery().selfDischargePerMonth(),
                                bank.battery().citation())),
                book.enter(
                        "absence.idle-per-day",
                        new Ratio(idleTime.seconds() == 0 ? 1 : 24 / idleTime.hours()),
                        Rounding.UP,
                        Formula.SHARE,
                        Input.of("t", idleToReserve)));
    }
}
