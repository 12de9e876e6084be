package org.quaybook.figures;

import java.util.List;
import org.quaybook.calc.Demand;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Limits;
import org.quaybook.job.Given;
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
 * @param idlePerDay share of the usable charge that the idle inverter takes in a day
 */
public record AbsenceFigures(
        List<String> leftOn,
        Figure<Power> power,
        Figure<TimeSpan> toReserve,
        Figure<TimeSpan> toReserveWorn,
        Figure<TimeSpan> toEmpty,
        Figure<TimeSpan> idleToReserve,
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
        Demand demand = demand(leftOn, inverter);
        Demand idle = Demand.steady(new Power(Math.max(inverter.idle().value().watts(), 1e-3)));
        Discharge now = new Discharge(bank.asItIs(), supply.resistance().value());
        Discharge worn = new Discharge(bank.worn(), supply.resistance().value());
        Limits empty = new Limits(Ratio.NONE, limits.cutOut(), limits.protection());
        Input[] inputs = {
            Input.of("P", power),
            Input.of("P₀", inverter.idle()),
            Input.of("s", bank.reserve()),
            Input.of("C", bank.capacityNow()),
            Input.of("R", bank.resistance()),
            Input.of("R", supply.resistance()),
            Input.of("U", inverter.cutOut())
        };
        Input[] idleOnly = {
            Input.of("P₀", inverter.idle()),
            Input.of("s", bank.reserve()),
            Input.of("C", bank.capacityNow()),
            Input.of("R", bank.resistance()),
            Input.of("R", supply.resistance()),
            Input.of("U", inverter.cutOut())
        };

        Input[] wornInputs = {
            Input.of("P", power),
            Input.of("P₀", inverter.idle()),
            Input.of("s", bank.reserve()),
            Input.of("C", bank.capacityWorn()),
            Input.of("R", bank.resistanceWorn()),
            Input.of("R", supply.resistance()),
            Input.of("U", inverter.cutOut())
        };
        TimeSpan idleTime = now.run(idle, Ratio.WHOLE, limits, Pauses.RECOVER).time();
        Figure<TimeSpan> idleToReserve =
                book.enter("absence.idle-to-reserve", idleTime, Rounding.DOWN, Formula.RUN_TIME, idleOnly);
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
                        wornInputs),
                book.enter(
                        "absence.to-empty",
                        now.run(demand, Ratio.WHOLE, empty, Pauses.RECOVER).time(),
                        Rounding.DOWN,
                        Formula.RUN_TIME,
                        inputs),
                idleToReserve,
                book.enter(
                        "absence.idle-per-day",
                        new Ratio(idleTime.seconds() == 0 ? 1 : 24 / idleTime.hours()),
                        Rounding.UP,
                        Formula.SHARE_PER_DAY,
                        Input.of("t", idleToReserve)));
    }

    /**
     * What stays on, taken together: all of it draws at once, as far as the inverter gives that, for so long that the mean
     * is right, and pauses at once. So the voltage is judged at the peak, and a square-law loss is not averaged away.
     */
    private static Demand demand(List<ApplianceFigures> leftOn, InverterFigures inverter) {
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
