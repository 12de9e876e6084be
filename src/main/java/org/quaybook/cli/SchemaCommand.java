package org.quaybook.cli;

import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.JobSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code quaybook schema}. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        header = "Prints the JSON Schema of the job file for editors.",
        description = {
            "",
            "Prints the JSON Schema of the job file or of the installer profile, for editors that complete and check "
                    + "YAML while you type.",
            ""
        })
final class SchemaCommand implements Callable<Integer> {

    /** The files that have a schema. */
    enum Subject {
        JOB,
        INSTALLER
    }

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "SUBJECT",
            defaultValue = "JOB",
            description = "JOB or INSTALLER (default: ${DEFAULT-VALUE}).")
    private Subject subject = Subject.JOB;

    @Override
    public Integer call() {
        Objects.requireNonNull(spec)
                .commandLine()
                .getOut()
                .print(subject == Subject.JOB ? JobSchema.job() : JobSchema.installer());
        spec.commandLine().getOut().flush();
        return Exit.DONE;
    }
}
