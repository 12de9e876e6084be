package org.quaybook.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the commands on jobs share: jobs are taken one after the other, and the worst exit code is the command's. */
abstract class JobCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            arity = "0..*",
            paramLabel = "JOB",
            description = "Job file, or a folder with a job.yaml, or a folder with such folders in it.")
    private List<Path> named = List.of();

    @Option(
            names = "--list",
            paramLabel = "FILE",
            description = "File with the paths of more jobs, one a line; - reads them from the standard input.")
    private @Nullable Path list;

    private List<Path> jobs = List.of();

    /** The worst exit code so far. */
    private int worst;

    final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        findJobs();
        worst = Exit.DONE;
        JudgedAhead.each(jobs, (job, judged) -> worst = Math.max(worst, take(job, judged)));
        finished();
        return worst;
    }

    private int take(Path job, Road.Judged judged) {
        problems(job, judged);
        Assessment assessment = judged.assessment();
        return assessment == null
                ? judged.unfinished().map(it -> unfinished(job, it)).orElse(Exit.BAD_INPUT)
                : judged(job, judged, assessment);
    }

    /** Tells what is wrong with the input. */
    void problems(Path job, Road.Judged judged) {
        telling().problems(job, judged);
    }

    final List<Path> jobs() {
        return jobs;
    }

    /**
     * Finds the jobs that are meant, once.
     *
     * @throws ParameterException if none is named, or the list cannot be read
     */
    final void findJobs() {
        if (jobs.isEmpty()) {
            jobs = NamedJobs.of(named, list, line(), words);
        }
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
        telling().forbidding(assessment);
    }

    final Report report(PrintWriter to) {
        return telling().report(to);
    }

    /** One line that counts findings and says whether the job may be handed over. */
    final String summary(Path job, Assessment assessment) {
        return telling().summary(job, assessment);
    }

    final JobTelling telling() {
        return new JobTelling(out(), err(), words, ansi());
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
