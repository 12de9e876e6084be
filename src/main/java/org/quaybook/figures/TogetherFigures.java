package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;

/**
 * Two appliances at once on the inverter.
 *
 * @param key begins the names of its figures
 * @param first one of them
 * @param second the other
 * @param power their input together
 * @param allowed whether the inverter's continuous output covers it and a full bank holds the voltage meanwhile, with what
 *     always draws beside it
 * @param order which of them must start while the other is still off
 */
public record TogetherFigures(
        String key,
        ApplianceFigures first,
        ApplianceFigures second,
        Figure<Power> power,
        boolean allowed,
        Order order) {

    /** Every two of more than so many, 630 pairs, nobody reads (our own limit): {@link RoomFigures} takes their place. */
    static final int MOST_APPLIANCES = 36;

    /** In which order two appliances can be brought to run at once. */
    public enum Order {
        /** Either may start while the other runs. */
        ANY,
        /** The first must have started before the second is switched on. */
        FIRST,
        /** The second must have started before the first is switched on. */
        SECOND,
        /** They cannot run at once, or a start that comes back by itself would not fit. */
        NEVER
    }

    /** What switches itself off and on starts again by itself. */
    public static boolean startsAgain(ApplianceFigures it) {
        return it.average().value().compareTo(it.power().value()) < 0;
    }

    /** Every pair of the appliances that can run alone, in the job's order; none of too many. */
    static List<TogetherFigures> pairs(RunSystem system, List<ApplianceFigures> appliances) {
        Reckoning reckoning = new Reckoning(system);
        List<ApplianceFigures> able =
                appliances.stream().filter(ApplianceFigures::runs).toList();
        if (able.size() > MOST_APPLIANCES) {
            return List.of();
        }
        List<TogetherFigures> pairs = new ArrayList<>();
        for (int i = 0; i < able.size(); i++) {
            for (int j = i + 1; j < able.size(); j++) {
                pairs.add(reckoning.pair("pair." + (pairs.size() + 1), able.get(i), able.get(j)));
            }
        }
        return List.copyOf(pairs);
    }

    private record Reckoning(RunSystem system) {

        TogetherFigures pair(String key, ApplianceFigures a, ApplianceFigures b) {
            Power running = a.power().value().plus(b.power().value());
            boolean allowed = fits(running, system.inverter().output().value());
            return new TogetherFigures(
                    key,
                    a,
                    b,
                    system.book()
                            .enter(
                                    key + ".power",
                                    running,
                                    Rounding.UP,
                                    Formula.SUM,
                                    Input.of("P", a.power()),
                                    Input.of("P", b.power())),
                    allowed,
                    allowed ? order(a, b) : Order.NEVER);
        }

        /** Whoever cannot start beside the other must start before it, which no order brings about for a start that recurs. */
        private Order order(ApplianceFigures a, ApplianceFigures b) {
            boolean aBesideB = startsBeside(a, b);
            boolean bBesideA = startsBeside(b, a);
            if (aBesideB && bBesideA) {
                return Order.ANY;
            }
            if (bBesideA && !startsAgain(a)) {
                return Order.FIRST;
            }
            return aBesideB && !startsAgain(b) ? Order.SECOND : Order.NEVER;
        }

        private boolean startsBeside(ApplianceFigures starting, ApplianceFigures running) {
            Power together = starting.startPower().value().plus(running.power().value());
            return fits(together, system.inverter().startOutput().value());
        }

        private boolean fits(Power output, Power most) {
            return output.compareTo(most) <= 0
                    && system.now()
                            .holds(
                                    Ratio.WHOLE,
                                    system.inverter().losses().inputFor(output).plus(system.standing()),
                                    system.inverter().cutOut().value());
        }
    }
}
