package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.calc.Discharge;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;

/**
 * Two appliances at once.
 *
 * @param first one of them
 * @param second the other
 * @param power their input together
 * @param allowed whether the inverter's continuous output covers it and a full bank holds the voltage meanwhile
 * @param starts whether its short-time output covers the larger start beside the other running, and a full bank holds
 *     the voltage meanwhile
 */
public record TogetherFigures(
        ApplianceFigures first, ApplianceFigures second, Power power, boolean allowed, boolean starts) {

    /** Every pair of the appliances that can run alone, in the job's order. */
    static List<TogetherFigures> pairs(
            List<ApplianceFigures> appliances, BankFigures bank, InverterFigures inverter, SupplyFigures supply) {
        Discharge full = new Discharge(bank.asItIs(), supply.resistance().value());
        List<ApplianceFigures> able =
                appliances.stream().filter(ApplianceFigures::runs).toList();
        List<TogetherFigures> pairs = new ArrayList<>();
        for (int i = 0; i < able.size(); i++) {
            for (int j = i + 1; j < able.size(); j++) {
                pairs.add(pair(able.get(i), able.get(j), inverter, full));
            }
        }
        return List.copyOf(pairs);
    }

    private static TogetherFigures pair(
            ApplianceFigures a, ApplianceFigures b, InverterFigures inverter, Discharge full) {
        Power running = a.power().value().plus(b.power().value());
        Power start = new Power(Math.max(
                a.startPower().value().watts() + b.power().value().watts(),
                b.startPower().value().watts() + a.power().value().watts()));
        return new TogetherFigures(
                a,
                b,
                running,
                running.compareTo(inverter.output().value()) <= 0 && holds(running, inverter, full),
                start.compareTo(inverter.startOutput().value()) <= 0 && holds(start, inverter, full));
    }

    private static boolean holds(Power output, InverterFigures inverter, Discharge full) {
        return full.holds(
                Ratio.WHOLE,
                inverter.losses().inputFor(output),
                inverter.cutOut().value());
    }
}
