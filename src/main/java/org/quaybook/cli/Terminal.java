package org.quaybook.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The terminal that the program was called from, if it was called from one. */
final class Terminal {

    /**
     * Set by the launcher, for later runtimes have a console even without a terminal: {@code true} if somebody sits there,
     * or {@value #CONSOLE} where a launcher cannot know, but has made sure that there is no console without a terminal.
     */
    static final String PROPERTY = "quaybook.terminal";

    private static final String CONSOLE = "console";

    private Terminal() {}

    static boolean isThere() {
        return Boolean.getBoolean(PROPERTY) || console() != null;
    }

    /** What somebody types there; null without a terminal. */
    static @Nullable BufferedReader lines() {
        if (!isThere()) {
            return null;
        }
        Console console = console();
        return new BufferedReader(
                console == null ? new InputStreamReader(System.in, StandardCharsets.UTF_8) : console.reader());
    }

    /** Writes as the terminal reads: a console of Windows has a code page of its own. Elsewhere, and into files, UTF-8. */
    static PrintWriter writer(OutputStream to) {
        Console console = console();
        if (console == null) {
            return new PrintWriter(to, true, StandardCharsets.UTF_8);
        }
        Charset charset = console.charset();
        return new PrintWriter(new Typewriter(new OutputStreamWriter(to, charset), charset), true);
    }

    @SuppressWarnings("SystemConsoleNull")
    private static @Nullable Console console() {
        return Objects.equals(System.getProperty(PROPERTY), CONSOLE) ? System.console() : null;
    }
}
