package org.quaybook.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.checks.Finding;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Road;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** {@code quaybook pack}. */
@Command(
        name = "pack",
        mixinStandardHelpOptions = true,
        header = "Makes the handover pack of each job.",
        description = {
            "",
            "Makes the handover pack of each job: guide.pdf, labels.pdf, record/ (for any web host), figures.json and "
                    + "issue.json, in a folder named by the job number. An earlier pack of the same job is replaced. "
                    + "While a finding forbids handing over, nothing is written.",
            ""
        })
final class PackCommand extends JobCommand {

    @Option(
            names = "--to",
            paramLabel = "FOLDER",
            defaultValue = "packs",
            description = "Where the packs go (default: ${DEFAULT-VALUE}).")
    private Path to = Path.of("packs");

    @Option(
            names = "--templates",
            paramLabel = "FOLDER",
            description = "Templates of your own: each file takes the place of the built-in one of the same name.")
    private @Nullable Path templates;

    @Override
    int judged(Path job, Road.Judged judged, Assessment assessment) {
        if (assessment.forbidsHandover()) {
            report(err())
                    .findings(assessment.findings().stream()
                            .filter(Finding::forbids)
                            .toList());
            err().println();
            err().println(summary(job, assessment));
            err().println(words.say("cli.not-packed", job.toString()));
            return Exit.FORBIDDEN;
        }
        Path target = to.resolve(assessment.job().job().number());
        try {
            Map<String, byte[]> files =
                    Road.documents(assessment, judged.branding(), templates(), Main.Version.number());
            PackFolder.write(target, files);
        } catch (PackFolder.NotWritten e) {
            report(err()).problems(java.util.List.of(e.diagnostic()));
            return Exit.NOT_WRITTEN;
        }
        out().println(summary(job, assessment));
        out().println(words.say("cli.packed", target.toString()));
        return Exit.DONE;
    }

    private @Nullable Path templates() {
        if (templates != null && !Files.isDirectory(templates)) {
            throw new ParameterException(line(), words.say("cli.no-templates", templates.toString()));
        }
        return templates;
    }
}
