package org.quaybook.cli;

import java.nio.file.Path;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.Road;
import picocli.CommandLine.Command;

/** {@code quaybook check}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        header = "Prints what is wrong with jobs, worst first; writes nothing.",
        description = {
            "",
            "Reads and calculates jobs and prints what it finds, worst first, each with the numbers that clash, what to "
                    + "do about it and where the rule comes from. Writes nothing.",
            ""
        })
final class CheckCommand extends JobCommand {

    @Override
    int judged(Path job, Road.Judged judged, Assessment assessment) {
        report(out()).findings(assessment.findings());
        if (!assessment.findings().isEmpty()) {
            out().println();
        }
        out().println(summary(job, assessment));
        return assessment.forbidsHandover() ? Exit.FORBIDDEN : Exit.DONE;
    }
}
