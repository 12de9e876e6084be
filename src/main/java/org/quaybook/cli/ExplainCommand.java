package org.quaybook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figure;
import org.quaybook.pack.Road;
import org.quaybook.pack.workings.Workings;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook explain}. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        header = "Lists the figures of a job, or says how one was reached.",
        description = {
            "",
            "Lists the figures of a job by name, or says how one was reached: formula, every input with where it came "
                    + "from (line of the job file, row of a table, usual practice), and the figures behind it.",
            ""
        })
final class ExplainCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "JOB", description = "Job file, or a folder with a job.yaml.")
    private @Nullable Path job;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FIGURE",
            description = "Name of a figure, or its beginning. Left out, all names are listed.")
    private String name = "";

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Road.Judged judged = Road.judge(Objects.requireNonNull(job));
        new Report(line.getErr(), words, line.getColorScheme().ansi()).problems(judged.problems());
        Assessment assessment = judged.assessment();
        if (assessment == null) {
            return Exit.BAD_INPUT;
        }
        List<Figure<?>> all = assessment.figures().all();
        List<Figure<?>> chosen = all.stream()
                .filter(figure -> figure.key().equals(name))
                .findFirst()
                .<List<Figure<?>>>map(List::of)
                .orElseGet(() -> all.stream()
                        .filter(figure -> figure.key().startsWith(name))
                        .toList());
        if (chosen.isEmpty()) {
            line.getErr().println(words.say("cli.explain.none", name));
            return Exit.BAD_INPUT;
        }
        if (chosen.size() == 1) {
            new Explanation(new Workings(assessment.figures(), words, Workings.Places.FILE), line.getOut(), words)
                    .print(chosen.get(0).key());
        } else {
            chosen.forEach(figure -> line.getOut().println(figure.key() + " = " + words.word(figure.stated())));
        }
        return Exit.DONE;
    }
}
