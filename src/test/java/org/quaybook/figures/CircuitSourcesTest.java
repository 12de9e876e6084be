package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.quaybook.job.Source;

/** What can make a circuit live, by the way that the changeover and the outlets of the job are wired. */
class CircuitSourcesTest {

    private static List<Source> first(String demo, String... replacements) {
        var job = ChangedDemo.of(demo, replacements).job();
        return new CircuitSources(job).of(job.acCircuits().get(0));
    }

    @Test
    void theChangeoverBringsShoreAndGenerator() {
        assertThat(first("marmalade-meridian")).containsExactly(Source.INVERTER, Source.SHORE, Source.GENERATOR);
        assertThat(first("second-biscuit")).containsExactly(Source.INVERTER, Source.SHORE);
        assertThat(first("hut-seventeen")).containsExactly(Source.INVERTER, Source.GENERATOR);
    }

    @Test
    void withoutAChangeoverOnlyTheInverterFeeds() {
        assertThat(first("second-biscuit", "    kind: manual", "    kind: none"))
                .containsExactly(Source.INVERTER);
    }

    /** Dead until proved otherwise is the wrong way round: a generator that nobody has looked at counts. */
    @Test
    void aGeneratorThatNobodyHasSeenCounts() {
        assertThat(first(
                        "marmalade-meridian",
                        "shore-on: shore, shore-off: inverter, generator-on: generator",
                        "shore-on: shore, shore-off: inverter"))
                .containsExactly(Source.INVERTER, Source.SHORE, Source.GENERATOR);
    }

    @Test
    void aSourceThatNobodyHasSeenIsNotGuessed() {
        assertThat(first("second-biscuit", "source: inverter, rcd: R1", "source: not seen, rcd: R1"))
                .isEmpty();
    }
}
