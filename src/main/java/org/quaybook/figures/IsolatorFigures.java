package org.quaybook.figures;

import java.util.List;
import java.util.Set;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;

/**
 * What passes a switch in the feed of the inverter.
 *
 * @param most at most: to the loads, or from what charges where that is more
 */
public record IsolatorFigures(Isolator isolator, Figure<Current> most) {

    static List<IsolatorFigures> of(
            Job job, SharedWay way, BankFigures bank, InverterFigures inverter, FigureBook book) {
        return job.isolators().stream()
                .filter(isolator -> isolator.partsBattery(job.cables(), job.fuses()))
                .map(isolator -> new IsolatorFigures(
                        isolator,
                        way.carried(
                                        "isolator." + isolator.id(),
                                        way.branchesThrough(isolator),
                                        way.chargingThrough(Set.copyOf(isolator.isolates())),
                                        inverter.worstCurrent(),
                                        bank,
                                        book)
                                .carried()))
                .toList();
    }
}
