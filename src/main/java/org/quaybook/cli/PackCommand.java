package org.quaybook.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.MadeFrom;
import org.quaybook.pack.Road;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** {@code quaybook pack}. */
@Command(
        name = "pack",
        mixinStandardHelpOptions = true,
        header = "Makes the handover pack of each job.",
        description = {
            "",
            "Makes the handover pack of each job: guide.pdf, quick-card.pdf, a sheet each for harbour office, surveyor and "
                    + "electrician, labels.pdf, worksheet.pdf, record/ (for any web host), figures.json and issue.json, in a folder named by the job number. A draft of the same job is "
                    + "replaced; a pack that “record” has signed is kept beside the one that follows it, and changes.pdf "
                    + "then says what to do with labels and pages. While a finding forbids handing over, or the figures lack a value, only the worksheet is "
                    + "written, beside the packs and marked as not for handing over.",
            "",
            "Of several jobs, as many are made at once as there are cores. Packs that lie there as they would be made are "
                    + "left alone, so that a run which was stopped goes on where it was; a job that fails holds up no other.",
            ""
        })
final class PackCommand extends JobCommand {

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "packs",
            description = "Where the packs go (default: ${DEFAULT-VALUE}).")
    private Path to = Path.of("packs");

    @Mixin
    private OwnTemplates templates = new OwnTemplates();

    @Option(
            names = "--watch",
            description =
                    "Stays, and makes the pack again whenever the job file, the installer profile, something that "
                            + "they name or a template is saved; stop it with Ctrl-C.")
    private boolean watch;

    @Option(
            names = "--at-once",
            paramLabel = "N",
            defaultValue = "0",
            description = "How many packs of several are made at the same time (default: as many as there are cores).")
    private int atOnce;

    @Option(
            names = "--anew",
            description = "Of several jobs, also makes those packs again that lie there as they would be made.")
    private boolean anew;

    @Override
    public Integer call() {
        if (atOnce < 0) {
            throw new ParameterException(line(), words.say("cli.many.at-once", atOnce));
        }
        findJobs();
        if (!watch) {
            if (jobs().size() > 1) {
                return many();
            }
            Road.makeReady();
            return super.call();
        }
        int last = Exit.DONE;
        try {
            while (true) {
                // Before the packs are made: what is saved meanwhile counts.
                Watch saved = new Watch(watched());
                last = super.call();
                out().println(words.say("cli.watching"));
                saved.awaitChange();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return last;
        }
    }

    private int many() {
        int threads = atOnce == 0 ? Runtime.getRuntime().availableProcessors() : atOnce;
        return new ManyPacks(maker(), new MadeFrom(ProgramFiles.all(), templates()), anew, Clock.systemUTC())
                .make(jobs(), threads);
    }

    private List<Path> watched() {
        Path own = templates();
        return Stream.concat(
                        jobs().stream().flatMap(job -> Road.inputs(job).stream()),
                        own == null ? Stream.empty() : Stream.of(own))
                .toList();
    }

    @Override
    int judged(Path job, Road.Judged judged, Assessment assessment) {
        return maker().make(job, judged, assessment);
    }

    @Override
    int unfinished(Path job, Road.Unfinished unfinished) {
        return maker().survey(job, unfinished);
    }

    private PackMaker maker() {
        return new PackMaker(to, templates(), telling());
    }

    private @Nullable Path templates() {
        return templates.read(line(), words);
    }
}
