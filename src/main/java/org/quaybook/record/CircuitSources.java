package org.quaybook.record;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.quaybook.figures.OnGenerator;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.text.Words;

/**
 * The sources that can make a circuit live: the one that the job names, and what the changeover brings to a circuit on
 * the inverter. Whoever reads of the inverter alone takes it for dead once that is off.
 */
final class CircuitSources {

    private final Job job;
    private final Words words;

    CircuitSources(Job job, Words words) {
        this.job = job;
        this.words = words;
    }

    /** In words; empty if nothing is known. */
    String of(AcCircuit circuit) {
        Set<Source> sources = new LinkedHashSet<>();
        Optional<Source> named = Given.maybe(circuit.source());
        named.ifPresent(sources::add);
        if (named.equals(Optional.of(Source.INVERTER)) && job.shore() != null && changesOver(job.inverter())) {
            sources.add(Source.SHORE);
        }
        new OnGenerator(job)
                .feeds(circuit)
                .filter(source -> source != Source.NOTHING)
                .ifPresent(sources::add);
        return words.list(sources.stream().map(words::term).toList());
    }

    private static boolean changesOver(Inverter inverter) {
        return inverter.changeover() != null
                && inverter.changeover().kind().known().orElse(ChangeoverKind.NONE) != ChangeoverKind.NONE;
    }
}
