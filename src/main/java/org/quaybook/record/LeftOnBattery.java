package org.quaybook.record;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.quaybook.figures.SharedWay;
import org.quaybook.job.Fuse;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;

/**
 * What battery switches leave on the bank: the branches that are connected before them, and those of which nobody has
 * written where they are connected.
 */
public final class LeftOnBattery {

    private LeftOnBattery() {}

    /** With all switches of the bank off, by fuse and what it feeds; empty where no switch parts the bank at all. */
    public static List<String> names(Job job, SharedWay way) {
        List<Isolator> switches = EnergySource.BATTERY.isolators(job);
        return switches.isEmpty() ? List.of() : names(switches, way);
    }

    /** With some switches off, by fuse and what it feeds. */
    public static List<String> names(List<Isolator> off, SharedWay way) {
        Set<Fuse> cut = off.stream()
                .flatMap(isolator -> way.branchesThrough(isolator).stream())
                .collect(Collectors.toUnmodifiableSet());
        return way.branches().stream()
                .filter(fuse -> !cut.contains(fuse))
                .map(fuse -> fuse.feeds() == null ? fuse.id() : fuse.id() + " " + fuse.feeds())
                .toList();
    }
}
