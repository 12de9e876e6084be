package org.quaybook.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Severity;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;
import picocli.CommandLine.Help.Ansi;

/** Where and how something is told of one job. */
record JobTelling(PrintWriter out, PrintWriter err, Words words, Ansi ansi) {

    Report report(PrintWriter to) {
        return new Report(to, words, ansi);
    }

    /** Tells what is wrong with the input. */
    void problems(Path job, Road.Judged judged) {
        report(err).problems(judged.problems());
        if (judged.assessment() == null) {
            err.println(words.say(
                    "cli.bad-input",
                    job.toString(),
                    judged.problems().stream()
                            .filter(problem -> problem.severity() == Severity.ERROR)
                            .count()));
        }
    }

    /** Lists on the way for errors what forbids handing over. */
    void forbidding(Assessment assessment) {
        report(err)
                .findings(
                        assessment.findings().stream().filter(Finding::forbids).toList());
        err.println();
    }

    /** One line that counts findings and says whether the job may be handed over. */
    String summary(Path job, Assessment assessment) {
        return words.say(
                assessment.forbidsHandover() ? "cli.summary.forbidden" : "cli.summary.allowed",
                job.toString(),
                count(assessment, Severity.FORBIDS, false),
                count(assessment, Severity.DECIDE, false),
                count(assessment, Severity.NOTE, false),
                count(assessment, Severity.DECIDE, true) + count(assessment, Severity.NOTE, true));
    }

    private static long count(Assessment assessment, Severity severity, boolean accepted) {
        return assessment.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .map(Finding::accepted)
                .filter(deviation -> deviation.isPresent() == accepted)
                .count();
    }
}
