package org.quaybook.pack;

import java.util.List;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Diagnostic;

/**
 * A job and how far it came, for programs that read. Of thousands of jobs no more is kept than what is told.
 *
 * @param job the path as the user gave it
 * @param problems of its text
 * @param calculated whether there are figures
 * @param handOver whether nothing forbids handing over
 * @param findings of the checks; empty if there are no figures
 */
public record CheckedJob(
        String job, List<Diagnostic> problems, boolean calculated, boolean handOver, List<Finding> findings) {

    public CheckedJob {
        problems = List.copyOf(problems);
        findings = List.copyOf(findings);
    }

    /** What is told of a job. */
    public static CheckedJob of(String job, Road.Judged judged) {
        Assessment assessment = judged.assessment();
        return assessment == null
                ? new CheckedJob(job, judged.problems(), /* calculated= */ false, /* handOver= */ false, List.of())
                : new CheckedJob(
                        job,
                        judged.problems(),
                        /* calculated= */ true,
                        !assessment.forbidsHandover(),
                        assessment.findings());
    }
}
