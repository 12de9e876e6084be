package org.quaybook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Job;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Reissue;
import org.quaybook.pack.Road;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

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

    @Override
    public Integer call() {
        if (!watch) {
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

    private List<Path> watched() {
        Path own = templates();
        return Stream.concat(
                        jobs().stream().flatMap(job -> Road.inputs(job).stream()),
                        own == null ? Stream.empty() : Stream.of(own))
                .toList();
    }

    @Override
    int judged(Path job, Road.Judged judged, Assessment assessment) {
        if (assessment.forbidsHandover()) {
            tellForbidding(assessment);
            err().println(summary(job, assessment));
            err().println(words.say("cli.not-packed", job.toString()));
            Path sheet = sheet(assessment.job());
            return written(
                    sheet,
                    () -> Road.worksheet(assessment, judged.branding(), templates()),
                    "cli.worksheet-only",
                    List.of(sheet.toString()),
                    Exit.FORBIDDEN);
        }
        Path target = to.resolve(assessment.job().job().number());
        try {
            Reissue.Written written = Reissue.write(target, judged, templates(), Main.Version.number());
            out().println(summary(job, assessment));
            out().println(words.say(
                    "cli.packed." + written.outcome().name().toLowerCase(Locale.ROOT), target.toString()));
            written.changes().forEach(line -> out().println("  " + line));
            return Exit.DONE;
        } catch (NotPrinted e) {
            report(err()).problems(e.diagnostics());
            return Exit.BAD_INPUT;
        } catch (PackFolder.NotWritten e) {
            report(err()).problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
    }

    /** What the figures lack is asked for on paper. */
    @Override
    int unfinished(Path job, Road.Unfinished unfinished) {
        Path sheet = sheet(unfinished.job());
        return written(
                sheet,
                () -> Road.survey(unfinished, templates()),
                "cli.survey-only",
                List.of(job.toString(), sheet.toString()),
                Exit.BAD_INPUT);
    }

    /** Beside the packs, never inside one: what lies in a pack may be handed over. */
    private Path sheet(Job job) {
        return to.resolve(job.job().number() + "-worksheet.pdf");
    }

    /** Makes a document that is written alone. */
    private interface Printing {
        byte[] pdf() throws NotPrinted;
    }

    /** Writes a document alone, says so, and gives the exit code that is due then. */
    private int written(Path file, Printing printing, String key, List<String> arguments, int due) {
        try {
            PackFolder.writeFile(file, printing.pdf());
        } catch (NotPrinted e) {
            report(err()).problems(e.diagnostics());
            return Exit.BAD_INPUT;
        } catch (PackFolder.NotWritten e) {
            report(err()).problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
        err().println(words.say(key, arguments.toArray()));
        return due;
    }

    private @Nullable Path templates() {
        return templates.read(line(), words);
    }
}
