package org.quaybook.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.CheckedJob;
import org.quaybook.pack.FindingsJson;
import org.quaybook.pack.FindingsSarif;
import org.quaybook.pack.Road;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code quaybook check}. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        header = "Prints what is wrong with jobs, worst first; writes nothing.",
        description = {
            "",
            "Reads and calculates jobs and prints what it finds, worst first, each with the numbers that clash, what to "
                    + "do about it and where the rule comes from. Writes nothing.",
            ""
        })
final class CheckCommand extends JobCommand {

    /** How findings are told. */
    enum Format {
        TEXT,
        JSON,
        SARIF
    }

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "text",
            description = "text, json, or sarif for editors and build servers (default: ${DEFAULT-VALUE}).")
    private Format format = Format.TEXT;

    private final List<CheckedJob> checked = new ArrayList<>();

    @Override
    void problems(Path job, Road.Judged judged) {
        if (format == Format.TEXT) {
            super.problems(job, judged);
        } else {
            checked.add(CheckedJob.of(job.toString(), judged));
        }
    }

    @Override
    int judged(Path job, Road.Judged judged, Assessment assessment) {
        if (format == Format.TEXT) {
            report(out()).findings(assessment.findings());
            if (!assessment.findings().isEmpty()) {
                out().println();
            }
            out().println(summary(job, assessment));
        }
        return assessment.forbidsHandover() ? Exit.FORBIDDEN : Exit.DONE;
    }

    @Override
    void finished() {
        String version = Main.Version.number();
        switch (format) {
            case TEXT -> {}
            case JSON -> print(FindingsJson.of(checked, words, version));
            case SARIF -> print(FindingsSarif.of(checked, words, version));
        }
    }

    private void print(byte[] text) {
        out().print(new String(text, StandardCharsets.UTF_8));
        out().flush();
    }
}
