package org.quaybook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.pack.SystemReason;
import org.quaybook.text.Words;

/** What no command expects: told in plain words, with the exit code that is due. */
final class Mishap {

    private static final long MEBIBYTE = 1 << 20;

    /** Of a call that goes round in circles the rest is the same again. */
    private static final int FRAMES_OF_A_CIRCLE = 20;

    private Mishap() {}

    /** Says what happened; gives the exit code. */
    static int tell(Throwable thrown, PrintWriter err) {
        Words words = Words.of("en-GB");
        if (because(thrown, OutOfMemoryError.class).isPresent()) {
            long allowed = Runtime.getRuntime().maxMemory() / MEBIBYTE;
            err.println(words.say("cli.memory", allowed, 2 * allowed + "m"));
            return Exit.OUR_FAULT;
        }
        Optional<StackOverflowError> circle = because(thrown, StackOverflowError.class);
        if (circle.isPresent()) {
            err.println(words.say("cli.too-deep"));
            Arrays.stream(circle.get().getStackTrace())
                    .limit(FRAMES_OF_A_CIRCLE)
                    .forEach(frame -> err.println("\tat " + frame));
            return Exit.OUR_FAULT;
        }
        Throwable reason = thrown instanceof UncheckedIOException ? thrown.getCause() : thrown;
        if (reason instanceof IOException refused) {
            err.println(words.say("cli.system-refused", SystemReason.of(refused)));
            return Exit.NOT_WRITTEN;
        }
        err.println(words.say("cli.our-fault", thrown.toString()));
        thrown.printStackTrace(err);
        return Exit.OUR_FAULT;
    }

    /** Libraries wrap what goes wrong under them. */
    private static <T extends Throwable> Optional<T> because(Throwable thrown, Class<T> kind) {
        return Stream.iterate(thrown, Objects::nonNull, Throwable::getCause)
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst();
    }
}
