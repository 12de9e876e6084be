package org.quaybook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.quaybook.DemoJobs;

/** Jobs are told of in the order in which they were named, whatever is done first. */
class JudgedAheadTest {

    private static final List<Path> JOBS = Stream.concat(DemoJobs.ALL.stream(), DemoJobs.ALL.stream())
            .map(demo -> Path.of("demo-jobs", demo))
            .toList();

    @Test
    void handsJobsOnInTheirOrderInTheCallersThread() {
        List<Path> taken = new ArrayList<>();
        List<String> numbers = new ArrayList<>();
        Thread caller = Thread.currentThread();
        JudgedAhead.each(JOBS, (job, judged) -> {
            assertThat(Thread.currentThread()).isSameAs(caller);
            taken.add(job);
            numbers.add(Objects.requireNonNull(judged.assessment()).job().job().number());
        });
        assertThat(taken).isEqualTo(JOBS);
        assertThat(numbers.subList(0, DemoJobs.ALL.size()))
                .doesNotHaveDuplicates()
                .isEqualTo(numbers.subList(DemoJobs.ALL.size(), JOBS.size()));
    }

    @Test
    void aJobThatIsNotThereHoldsUpNoOther() {
        List<Path> jobs = List.of(JOBS.get(0), Path.of("demo-jobs", "no-such-job"), JOBS.get(1));
        List<Boolean> calculated = new ArrayList<>();
        JudgedAhead.each(jobs, (job, judged) -> calculated.add(judged.assessment() != null));
        assertThat(calculated).containsExactly(true, false, true);
    }

    @Test
    void whatTheTakerThrowsEndsTheRun() {
        List<Path> taken = new ArrayList<>();
        assertThatThrownBy(() -> JudgedAhead.each(JOBS, (job, judged) -> {
                    taken.add(job);
                    throw new IllegalArgumentException("enough");
                }))
                .hasMessage("enough");
        assertThat(taken).hasSize(1);
    }
}
