package org.quaybook.cli;

import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.JobSchema;
import org.quaybook.pack.FiguresSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook schema}. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        header = "Prints the JSON Schema of the job file for editors, or of another file.",
        description = {
            "",
            "Prints the JSON Schema of the job file, the installer profile or the service log, for editors that complete and check "
                    + "YAML while you type, or of figures.json, for programs that read the figures of a pack.",
            ""
        })
final class SchemaCommand implements Callable<Integer> {

    /** The files that have a schema. */
    enum Subject {
        JOB,
        INSTALLER,
        SERVICE,
        FIGURES
    }

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "SUBJECT",
            defaultValue = "JOB",
            description = "JOB, INSTALLER, SERVICE or FIGURES (default: ${DEFAULT-VALUE}).")
    private Subject subject = Subject.JOB;

    @Override
    public Integer call() {
        Objects.requireNonNull(spec)
                .commandLine()
                .getOut()
                .print(
                        switch (subject) {
                            case JOB -> JobSchema.job();
                            case INSTALLER -> JobSchema.installer();
                            case SERVICE -> JobSchema.service();
                            case FIGURES -> FiguresSchema.text();
                        });
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
