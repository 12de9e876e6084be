package org.quaybook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Check;
import org.quaybook.checks.Finding;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook revisit}. */
@Command(
        name = "revisit",
        mixinStandardHelpOptions = true,
        header = "Compares the readings of a later visit with those of the handover.",
        description = {
            "",
            "Compares what a later visit read with what was read at handover and with what the figures lead one to "
                    + "expect, and names the joint or run that has moved. The readings stand in a file of their own or, "
                    + "with a later date, among the tests of the job file. Drops are compared as resistances, so the load "
                    + "need not be the same. Writes nothing.",
            ""
        },
        footer = {"", "Exit codes: 0 nothing has moved; 1 something has, or a reading is out of its limit; 2 bad input."
        })
final class RevisitCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "Job file, or a folder with a job.yaml.")
    private @Nullable Path job;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "READINGS",
            description = "File with the readings of the visit. Left out, the later tests of the job file count.")
    private @Nullable Path readings;

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Path file = Objects.requireNonNull(job);
        Road.Judged judged = readings == null ? Road.judge(file) : Road.judge(file, readings);
        new Report(line.getErr(), words, line.getColorScheme().ansi()).problems(judged.problems());
        Assessment assessment = judged.assessment();
        if (assessment == null) {
            return Exit.BAD_INPUT;
        }
        new BaselineTable(words).print(assessment.figures().baseline(), line.getOut());
        List<Finding> found =
                assessment.findings().stream().filter(this::isOfVisit).toList();
        new Report(line.getOut(), words, line.getColorScheme().ansi()).findings(found);
        long moved = assessment.figures().baseline().items().stream()
                .filter(Item::moved)
                .count();
        line.getOut().println();
        line.getOut().println(words.say(moved == 0 ? "cli.revisit.steady" : "cli.revisit.moved", moved));
        return moved > 0 || found.stream().anyMatch(Finding::forbids) ? Exit.FORBIDDEN : Exit.DONE;
    }

    /** What is found in the readings; of a job without a file of readings, what has moved. */
    private boolean isOfVisit(Finding finding) {
        return readings == null
                ? finding.check() == Check.BASELINE_MOVED
                : finding.place().file().equals(readings.toString().replace('\\', '/'));
    }
}
