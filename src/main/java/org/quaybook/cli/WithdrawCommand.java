package org.quaybook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Road;
import org.quaybook.pack.site.NotPublished;
import org.quaybook.pack.site.Site;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook withdraw}. */
@Command(
        name = "withdraw",
        mixinStandardHelpOptions = true,
        header = "Takes a published record off.",
        description = {
            "",
            "Takes the record of a job off the folder of all records, with every revision. Its address then says that it was "
                    + "withdrawn, when, and whom to call. The code is not used again; what follows gets a new job file.",
            ""
        })
final class WithdrawCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "JOB", description = "Job file, or a folder with a job.yaml.")
    private @Nullable Path job;

    @Option(
            names = "--to",
            paramLabel = "SITE",
            defaultValue = "site",
            description = "Folder of all published records (default: ${DEFAULT-VALUE}).")
    private Path to = Path.of("site");

    @Mixin
    private OwnTemplates templates = new OwnTemplates();

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Report report = new Report(line.getErr(), words, line.getColorScheme().ansi());
        Road.Judged judged = Road.judge(Objects.requireNonNull(job));
        report.problems(judged.problems());
        Assessment assessment = judged.assessment();
        if (assessment == null) {
            return Exit.BAD_INPUT;
        }
        try {
            byte[] page = Road.withdrawn(judged, templates.read(line, words), LocalDate.now(ZoneId.systemDefault()));
            Site.at(to).withdraw(assessment.job().job().record().symbols(), page);
        } catch (NotPrinted e) {
            report.problems(e.diagnostics());
            return Exit.BAD_INPUT;
        } catch (NotPublished e) {
            report.problems(List.of(e.diagnostic()));
            return e.bySystem() ? Exit.NOT_WRITTEN : Exit.BAD_INPUT;
        }
        line.getOut()
                .println(words.say(
                        "cli.withdraw.done", assessment.job().job().record().toString()));
        return Exit.DONE;
    }
}
