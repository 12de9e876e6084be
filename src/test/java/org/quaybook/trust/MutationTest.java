package org.quaybook.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A small share of what {@code src/test/mutate} tries: no changed token may bring out a stack trace, a hang or a figure that
 * is none. The changes are this project's own choice.
 */
class MutationTest {

    @TempDir
    private Path scratch;

    @Test
    void everyChangedJobEndsInFiguresOrInAMessage() throws InterruptedException {
        MutationRun.Tally tally = MutationRun.run(new MutationRun.Plan(26, 1_500, 60, Duration.ofMinutes(2)), scratch);

        assertThat(tally.faults()).isEmpty();
        assertThat(tally.ends())
                .as("the changes must reach each end, or they try nothing")
                .containsKeys(Trial.End.REFUSED, Trial.End.JUDGED, Trial.End.PACKED);
    }
}
