package org.quaybook.pack.labels;

import java.util.List;
import java.util.stream.Stream;
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
        return Stream.of(EnergySource.values())
                .filter(kind -> kind.isOf(job))
                .map(kind -> new LabelSource(kind, kind.isolators(job)))
                .toList();
    }

    /** The same without switches that part the battery as well; the battery keeps its own. */
    LabelSource withoutBatterySwitches(Job job) {
        return kind == EnergySource.BATTERY
                ? this
                : new LabelSource(
                        kind,
                        isolators.stream()
                                .filter(isolator -> !isolator.partsBattery(job.cables(), job.fuses()))
                                .toList());
    }
}
