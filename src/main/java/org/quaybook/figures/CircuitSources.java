package org.quaybook.figures;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Source;

/**
 * The sources that can make a circuit live: the one that the job names, and what the changeover brings to a circuit on
 * the inverter. Whoever reads of the inverter alone takes it for dead once that is off.
 */
public final class CircuitSources {

    private final Job job;

    public CircuitSources(Job job) {
        this.job = job;
    }

    /** The one named first; empty if nobody has seen it. */
    public List<Source> of(AcCircuit circuit) {
        Optional<Source> named = Given.maybe(circuit.source());
        if (named.isEmpty()) {
            return List.of();
        }
        Set<Source> sources = new LinkedHashSet<>(List.of(named.get()));
        boolean behindChangeover = named.get() == Source.INVERTER && changesOver();
        if (behindChangeover && job.shore() != null) {
            sources.add(Source.SHORE);
        }
        // What nobody has seen of a generator may come through the changeover.
        Source unseen = behindChangeover && job.generator() != null ? Source.GENERATOR : Source.NOTHING;
        Source onGenerator = new OnGenerator(job).feeds(circuit).orElse(unseen);
        if (onGenerator != Source.NOTHING) {
            sources.add(onGenerator);
        }
        return List.copyOf(sources);
    }

    private boolean changesOver() {
        Changeover changeover = job.inverter().changeover();
        return changeover != null && changeover.kind().known().orElse(ChangeoverKind.NONE) != ChangeoverKind.NONE;
    }
}
