package org.quaybook.record;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Rcd;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;
import org.quaybook.text.Words;

/**
 * The sources on which an RCD protects: the one that the job names, the generator whose output passes it, and those on
 * which it was seen to trip.
 */
public final class RcdSources {

    private final Job job;
    private final Words words;

    public RcdSources(Job job, Words words) {
        this.job = job;
        this.words = words;
    }

    /** In words; empty if nothing is known. */
    public String of(Rcd rcd) {
        Set<Source> sources = new LinkedHashSet<>();
        Stream.concat(
                        Given.maybe(rcd.source()).stream(),
                        job.tests().stream()
                                .filter(test -> test.test() == TestKind.RCD_TRIP
                                        && test.of().contains(rcd.id())
                                        && test.result() != null
                                        && test.result().value() != null)
                                .flatMap(test -> Given.maybe(test.source()).stream()))
                .forEach(sources::add);
        if (job.generator() != null && rcd.id().equals(job.generator().rcd())) {
            sources.add(Source.GENERATOR);
        }
        return words.list(sources.stream().map(words::term).toList());
    }
}
