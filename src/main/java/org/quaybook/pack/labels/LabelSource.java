package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.record.EnergySource;

/**
 * A source of energy aboard and the switches on record that part it from the rest.
 *
 * @param isolators in the order of the job; empty if the job knows none
 */
record LabelSource(EnergySource kind, List<Isolator> isolators) {

    LabelSource {
        isolators = List.copyOf(isolators);
    }

    /** All sources of a job. */
    static List<LabelSource> of(Job job) {
        List<LabelSource> sources = new ArrayList<>();
        for (EnergySource kind : EnergySource.values()) {
            if (aboard(kind, job)) {
                sources.add(new LabelSource(kind, isolators(kind, job)));
            }
        }
        return List.copyOf(sources);
    }

    private static boolean aboard(EnergySource kind, Job job) {
        return switch (kind) {
            case BATTERY -> true;
            case SHORE -> job.shore() != null;
            case GENERATOR -> job.generator() != null || charges(ChargeKind.GENERATOR, job);
            case ALTERNATOR -> charges(ChargeKind.ALTERNATOR, job);
            case SOLAR -> charges(ChargeKind.SOLAR, job);
            case WIND -> charges(ChargeKind.WIND, job);
        };
    }

    private static boolean charges(ChargeKind kind, Job job) {
        return job.charging().stream().map(Charging::kind).anyMatch(kind::equals);
    }

    private static List<Isolator> isolators(EnergySource kind, Job job) {
        return job.isolators().stream()
                .filter(isolator ->
                        kind == EnergySource.BATTERY ? partsBattery(isolator, job) : isolates(isolator, kind.id()))
                .toList();
    }

    private static boolean partsBattery(Isolator isolator, Job job) {
        return isolates(isolator, "bank")
                || isolates(isolator, "inverter")
                || isolator.isOnTheWay(job.cables(), job.fuses());
    }

    private static boolean isolates(Isolator isolator, String what) {
        return isolator.isolates().contains(what);
    }
}
