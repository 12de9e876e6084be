package org.quaybook.record;

import java.util.List;
import java.util.Locale;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;

/**
 * The kinds of source, in the order of making dead: what feeds the sockets first, the battery last, so that no charger
 * loses it. An alternator or regulator that loses its battery while it charges makes a voltage surge. Common practice, no
 * source.
 */
public enum EnergySource {
    SHORE,
    GENERATOR,
    ALTERNATOR,
    SOLAR,
    WIND,
    BATTERY;

    /** As it stands in keys and in the job file. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a job has it. A generator that gives DC is one too. */
    public boolean isOf(Job job) {
        return switch (this) {
            case BATTERY -> true;
            case SHORE -> job.shore() != null;
            case GENERATOR -> job.generator() != null || charges(ChargeKind.GENERATOR, job);
            case ALTERNATOR -> charges(ChargeKind.ALTERNATOR, job);
            case SOLAR -> charges(ChargeKind.SOLAR, job);
            case WIND -> charges(ChargeKind.WIND, job);
        };
    }

    private static boolean charges(ChargeKind kind, Job job) {
        return job.charging().stream().anyMatch(charging -> charging.kind() == kind);
    }

    /** The switches that part it from the rest, in the order of the job. */
    public List<Isolator> isolators(Job job) {
        return job.isolators().stream()
                .filter(isolator -> this == BATTERY
                        ? isolator.partsBattery(job.cables(), job.fuses())
                        : isolator.isolates().contains(id()))
                .toList();
    }
}
