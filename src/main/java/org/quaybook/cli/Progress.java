package org.quaybook.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.quaybook.text.Words;

/**
 * How far a run over several jobs is. On a terminal the last line says how many are done and how long the rest may take;
 * elsewhere nothing is added to what is told of the jobs.
 */
final class Progress {

    /** ECMA-48: back to the first column, and erase to the end of the line. */
    private static final String AGAIN = "\r\u001b[K";

    private final PrintWriter out;
    private final PrintWriter err;
    private final Words words;
    private final boolean shown;
    private final int jobs;
    private final Clock clock;
    private final Instant begun;
    private int done;

    Progress(PrintWriter out, PrintWriter err, Words words, boolean shown, int jobs, Clock clock) {
        this.out = out;
        this.err = err;
        this.words = words;
        this.shown = shown;
        this.jobs = jobs;
        this.clock = clock;
        this.begun = clock.instant();
    }

    static Progress on(JobTelling telling, int jobs, Clock clock) {
        return new Progress(
                telling.out(),
                telling.err(),
                telling.words(),
                Terminal.isThere() && telling.ansi().enabled(),
                jobs,
                clock);
    }

    /** One more job is done, and this is told of it. */
    void tell(String told, String toldOfErrors) {
        done++;
        clear();
        out.print(told);
        out.flush();
        err.print(toldOfErrors);
        if (shown) {
            err.print(words.say("cli.many.progress", done, jobs, clock(left())));
        }
        err.flush();
    }

    /** The jobs so far tell how long the rest will take. */
    private Duration left() {
        return since().multipliedBy(jobs - done).dividedBy(done);
    }

    Duration since() {
        return Duration.between(begun, clock.instant());
    }

    /** No more jobs follow. */
    void end() {
        clear();
        err.flush();
    }

    private void clear() {
        if (shown) {
            err.print(AGAIN);
            err.flush();
        }
    }

    /** As on a stop watch: minutes and seconds, with hours where there are any; part of a second counts as one. */
    static String clock(Duration time) {
        long seconds = time.plusMillis(999).toSeconds();
        return seconds < 3600
                ? "%d:%02d".formatted(seconds / 60, seconds % 60)
                : "%d:%02d:%02d".formatted(seconds / 3600, seconds / 60 % 60, seconds % 60);
    }
}
