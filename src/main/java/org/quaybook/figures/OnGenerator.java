package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Socket;
import org.quaybook.job.Source;

/** What feeds the circuits while the generator runs. */
public final class OnGenerator {

    private final Job job;

    public OnGenerator(Job job) {
        this.job = job;
    }

    /**
     * The generator where the circuit or the outlet of its name says so; else what all outlets have that hang on the same
     * source as the circuit. Empty if they differ, or if nobody has seen it.
     */
    public Optional<Source> feeds(AcCircuit circuit) {
        Optional<Source> source = Given.maybe(circuit.source());
        if (source.equals(Optional.of(Source.GENERATOR))) {
            return source;
        }
        List<Socket> named = job.sockets().stream()
                .filter(socket -> socket.name().equalsIgnoreCase(circuit.name()))
                .toList();
        boolean inverter = source.equals(Optional.of(Source.INVERTER));
        List<Socket> alike = named.isEmpty()
                ? job.sockets().stream()
                        .filter(socket -> source.isPresent()
                                && Given.maybe(socket.shoreOff()).equals(Optional.of(Source.INVERTER)) == inverter)
                        .toList()
                : named;
        Set<Optional<Source>> feeds =
                alike.stream().map(socket -> Given.maybe(socket.generatorOn())).collect(Collectors.toSet());
        return feeds.size() == 1 ? feeds.iterator().next() : Optional.empty();
    }
}
