package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.quantity.Power;

/**
 * Two appliances at once.
 *
 * @param first one of them
 * @param second the other
 * @param power their input together
 * @param allowed whether the inverter's continuous output covers it
 * @param starts whether its short-time output covers the larger start beside the other running
 */
public record TogetherFigures(
        ApplianceFigures first, ApplianceFigures second, Power power, boolean allowed, boolean starts) {

    /** Every pair of the appliances that can run alone, in the job's order. */
    static List<TogetherFigures> pairs(List<ApplianceFigures> appliances, InverterFigures inverter) {
        List<ApplianceFigures> able = appliances.stream()
                .filter(one -> one.verdict() == ApplianceFigures.Verdict.RUNS
                        || one.verdict() == ApplianceFigures.Verdict.NOT_WHEN_WORN)
                .toList();
        List<TogetherFigures> pairs = new ArrayList<>();
        for (int i = 0; i < able.size(); i++) {
            for (int j = i + 1; j < able.size(); j++) {
                pairs.add(pair(able.get(i), able.get(j), inverter));
            }
        }
        return List.copyOf(pairs);
    }

    private static TogetherFigures pair(ApplianceFigures a, ApplianceFigures b, InverterFigures inverter) {
        Power running = a.power().value().plus(b.power().value());
        double start = Math.max(
                a.startPower().value().watts() + b.power().value().watts(),
                b.startPower().value().watts() + a.power().value().watts());
        return new TogetherFigures(
                a,
                b,
                running,
                running.compareTo(inverter.continuous().value()) <= 0,
                start <= inverter.shortTime().value().watts());
    }
}
