package org.quaybook.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.pack.ChangeOfOwner;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.PackFolder;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook sold}. */
@Command(
        name = "sold",
        mixinStandardHelpOptions = true,
        header = "Takes the former owner out of a job that is sold, and makes the buyer's sheet.",
        description = {
            "",
            "The job file goes on as the next revision under the same record code, without owner, berth, remote accounts, "
                    + "what the insurer asks and what the owner was shown. The file as it was stays beside it, named by its "
                    + "revision. The sheet for the buyer says what goes with the installation, where the record is, which "
                    + "accounts to take over, what the seller has to let go and what falls due.",
            ""
        })
final class SoldCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(paramLabel = "JOB", description = "Job file, or a folder with a job.yaml.")
    private @Nullable Path job;

    @Option(names = "--on", required = true, paramLabel = "DATE", description = "Day of the sale, such as 2027-04-30.")
    private @Nullable LocalDate on;

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "packs",
            description = "Where the buyer's sheet goes (default: ${DEFAULT-VALUE}).")
    private Path to = Path.of("packs");

    @Mixin
    private OwnTemplates templates = new OwnTemplates();

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        CommandLine line = Objects.requireNonNull(spec).commandLine();
        Path file = Objects.requireNonNull(job);
        Report report = new Report(line.getErr(), words, line.getColorScheme().ansi());
        ChangeOfOwner.Outcome outcome;
        try {
            outcome = ChangeOfOwner.of(file, Objects.requireNonNull(on), to, templates.read(line, words));
        } catch (NotPrinted e) {
            report.problems(e.diagnostics());
            return Exit.BAD_INPUT;
        } catch (PackFolder.NotWritten e) {
            report.problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
        report.problems(outcome.problems());
        if (outcome.done().isEmpty()) {
            line.getErr().println(words.say("cli.sold.refused", file.toString()));
            return Exit.BAD_INPUT;
        }
        ChangeOfOwner.Done done = outcome.done().get();
        line.getOut().println(words.say("cli.sold.done", done.job().toString(), done.revision()));
        line.getOut().println(words.say("cli.sold.kept", done.kept().toString()));
        done.sheets().forEach(sheet -> line.getOut().println(words.say("cli.sold.sheet", sheet.toString())));
        line.getOut().println(words.say("cli.sold.next"));
        return Exit.DONE;
    }
}
