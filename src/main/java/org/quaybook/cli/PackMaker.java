package org.quaybook.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.job.Job;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Reissue;
import org.quaybook.pack.Road;

/**
 * Makes the pack of one job and tells what became of it.
 *
 * @param to folder of the packs
 * @param templates of the user's own; null for none
 */
record PackMaker(Path to, @Nullable Path templates, JobTelling telling) {

    /** Makes the pack of a job that could be calculated; gives the exit code. */
    int make(Path job, Road.Judged judged, Assessment assessment) {
        if (assessment.forbidsHandover()) {
            telling.forbidding(assessment);
            telling.err().println(telling.summary(job, assessment));
            telling.err().println(telling.words().say("cli.not-packed", job.toString()));
            Path sheet = sheet(assessment.job());
            return written(
                    sheet,
                    () -> Road.worksheet(assessment, judged.branding(), templates),
                    "cli.worksheet-only",
                    List.of(sheet.toString()),
                    Exit.FORBIDDEN);
        }
        return attempt(() -> {
            Path target = to.resolve(assessment.job().job().number());
            Reissue.Written written = Reissue.write(target, judged, templates, Main.Version.number());
            telling.out().println(telling.summary(job, assessment));
            telling.out()
                    .println(telling.words()
                            .say("cli.packed." + written.outcome().name().toLowerCase(Locale.ROOT), target.toString()));
            written.changes().forEach(line -> telling.out().println("  " + line));
            return Exit.DONE;
        });
    }

    /** What the figures lack is asked for on paper; gives the exit code. */
    int survey(Path job, Road.Unfinished unfinished) {
        Path sheet = sheet(unfinished.job());
        return written(
                sheet,
                () -> Road.survey(unfinished, templates),
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
        return attempt(() -> {
            PackFolder.writeFile(file, printing.pdf());
            telling.err().println(telling.words().say(key, arguments.toArray()));
            return due;
        });
    }

    /** Makes and writes something; gives the exit code. */
    private interface Attempt {
        int make() throws NotPrinted, PackFolder.NotWritten;
    }

    private int attempt(Attempt attempt) {
        try {
            return attempt.make();
        } catch (NotPrinted e) {
            telling.report(telling.err()).problems(e.diagnostics());
            return Exit.BAD_INPUT;
        } catch (PackFolder.NotWritten e) {
            telling.report(telling.err()).problems(List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
    }
}
