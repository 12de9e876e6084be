package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Appliance;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.quantity.Power;

/**
 * An appliance on a circuit that the inverter never feeds: it takes nothing from the bank.
 *
 * @param circuit that it hangs on
 * @param sources what can feed that circuit, the one that the job names first
 */
public record PastInverterFigures(
        Appliance appliance,
        String key,
        AcCircuit circuit,
        List<Source> sources,
        Figure<Power> power,
        Figure<Power> startPower)
        implements MainsLoad {

    public PastInverterFigures {
        sources = List.copyOf(sources);
    }

    /** Whether this source can feed it. */
    public boolean isOn(Source source) {
        return sources.contains(source);
    }

    static List<PastInverterFigures> of(Job job, FigureBook book) {
        CircuitSources sources = new CircuitSources(job);
        List<PastInverterFigures> figures = new ArrayList<>();
        ApplianceFigures.keys(job)
                .forEach((appliance, key) -> job.circuitOf(appliance)
                        .filter(AcCircuit::isPastInverter)
                        .ifPresent(circuit -> {
                            Figure<Power> power = book.stated(key + ".power", appliance.power());
                            figures.add(new PastInverterFigures(
                                    appliance,
                                    key,
                                    circuit,
                                    sources.of(circuit),
                                    power,
                                    ApplianceReckoning.startPower(appliance, key, power, book)));
                        }));
        return figures;
    }
}
