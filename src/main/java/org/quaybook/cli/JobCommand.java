package org.quaybook.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.diag.Severity;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the commands on jobs share: jobs are taken one after the other, and the worst exit code is the command's. */
abstract class JobCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "JOB",
            description = "Job file, or a folder with a job.yaml. Several are taken one after the other.")
    private List<Path> jobs = List.of();

    final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        int worst = Exit.DONE;
        for (Path job : jobs) {
            worst = Math.max(worst, take(job));
        }
        finished();
        return worst;
    }

    private int take(Path job) {
        Road.Judged judged = Road.judge(job);
        problems(job, judged);
        Assessment assessment = judged.assessment();
        return assessment == null
                ? judged.unfinished().map(it -> unfinished(job, it)).orElse(Exit.BAD_INPUT)
                : judged(job, judged, assessment);
    }

    /** Tells what is wrong with the input. */
    void problems(Path job, Road.Judged judged) {
        report(err()).problems(judged.problems());
        if (judged.assessment() == null) {
            err().println(words.say(
                    "cli.bad-input",
                    job.toString(),
                    judged.problems().stream()
                            .filter(problem -> problem.severity() == Severity.ERROR)
                            .count()));
        }
    }

    final List<Path> jobs() {
        return jobs;
    }

    /** After the last job. */
    void finished() {}

    /** Goes on with a job that could be read and calculated; gives the exit code. */
    abstract int judged(Path job, Road.Judged judged, Assessment assessment);

    /** Goes on with a job that could be read but lacks what the figures need; gives the exit code. */
    int unfinished(Path job, Road.Unfinished unfinished) {
        return Exit.BAD_INPUT;
    }

    /** Lists on the way for errors what forbids handing over. */
    final void tellForbidding(Assessment assessment) {
        report(err())
                .findings(
                        assessment.findings().stream().filter(Finding::forbids).toList());
        err().println();
    }

    final Report report(PrintWriter to) {
        return new Report(to, words, ansi());
    }

    /** One line that counts findings and says whether the job may be handed over. */
    final String summary(Path job, Assessment assessment) {
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

    final CommandLine line() {
        return Objects.requireNonNull(spec).commandLine();
    }

    private Ansi ansi() {
        return line().getColorScheme().ansi();
    }

    final PrintWriter out() {
        return line().getOut();
    }

    final PrintWriter err() {
        return line().getErr();
    }
}
