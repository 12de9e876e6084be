package org.quaybook.cli;

import java.io.PrintWriter;
import java.security.SecureRandom;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.SealKey;
import org.quaybook.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code quaybook seal-key}. */
@Command(
        name = "seal-key",
        mixinStandardHelpOptions = true,
        header = "Makes the key that one record is sealed with.",
        description = {
            "",
            "Prints the two lines for the head of a job file whose published record the web host shall not be able to "
                    + "read. The labels then bear the key. Make it once for each job, before its labels are printed.",
            ""
        })
final class SealKeyCommand implements Callable<Integer> {

    @Spec
    private @Nullable CommandSpec spec;

    private final Words words = Words.of("en-GB");

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        out.println("sealed: yes");
        out.println("seal-key: " + SealKey.draw(new SecureRandom()));
        spec.commandLine().getErr().println(words.say("cli.seal-key.keep"));
        return Exit.DONE;
    }
}
