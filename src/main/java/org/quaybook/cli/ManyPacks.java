package org.quaybook.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.MadeFrom;
import org.quaybook.pack.MadeFrom.Origin;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;

/**
 * Makes the packs of several jobs at once. What is told of a job comes in one piece when it is done; a job that fails holds
 * up no other.
 */
final class ManyPacks {

    private final PackMaker usual;
    private final MadeFrom made;
    private final boolean anew;
    private final Clock clock;
    private final Words words;

    /** Jobs by number: two of one number would write into one folder. */
    private final Map<String, Path> numbers = new ConcurrentHashMap<>();

    /** Held by a job until its number is taken, so that of two jobs of one number always the later is refused. */
    private record Turn(CountDownLatch before, CountDownLatch own) {}

    /** What became of a job, in the order of the summary. */
    private enum Fate {
        PACKED,
        AS_BEFORE,
        FORBIDDEN,
        TO_MEND,
        NOT_WRITTEN,
        OUR_FAULT
    }

    private record Done(Path job, Fate fate, int code, String out, String err) {}

    /**
     * @param usual where packs go, and where it is told
     * @param anew whether packs that lie there as they would be made are made again
     */
    ManyPacks(PackMaker usual, MadeFrom made, boolean anew, Clock clock) {
        this.usual = usual;
        this.made = made;
        this.anew = anew;
        this.clock = clock;
        this.words = usual.telling().words();
    }

    /** Makes them; gives the worst exit code. */
    int make(List<Path> jobs, int threads) {
        Progress progress = Progress.on(usual.telling(), jobs.size(), clock);
        ExecutorService pool = Executors.newFixedThreadPool(threads, ManyPacks::thread);
        List<Done> all = new ArrayList<>();
        try {
            CompletionService<Done> working = new ExecutorCompletionService<>(pool);
            CountDownLatch before = new CountDownLatch(0);
            for (Path job : jobs) {
                Turn turn = new Turn(before, new CountDownLatch(1));
                working.submit(() -> make(job, turn));
                before = turn.own();
            }
            for (int i = 0; i < jobs.size(); i++) {
                Done done = working.take().get();
                progress.tell(done.out(), done.err());
                all.add(new Done(done.job(), done.fate(), done.code(), "", ""));
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("what a job throws was caught", e);
        } finally {
            pool.shutdownNow();
            progress.end();
        }
        summary(jobs.size(), all, progress.since());
        return all.stream().mapToInt(Done::code).max().orElse(Exit.DONE);
    }

    /** Nobody waits for these if the run is stopped. */
    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "packs");
        thread.setDaemon(true);
        return thread;
    }

    private Done make(Path job, Turn turn) throws InterruptedException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        JobTelling telling = new JobTelling(
                new PrintWriter(out),
                new PrintWriter(err),
                words,
                usual.telling().ansi());
        try {
            Optional<Origin> origin = Optional.empty();
            Path other;
            try {
                origin = made.of(job, usual.to());
            } finally {
                other = taken(origin, job, turn);
            }
            if (origin.isPresent()) {
                if (other != null) {
                    telling.err()
                            .println(words.say(
                                    "cli.many.same-number",
                                    job.toString(),
                                    origin.get().number(),
                                    other.toString()));
                    return done(job, Fate.TO_MEND, Exit.BAD_INPUT, out, err);
                }
                if (!anew && made.isMade(origin.get(), usual.to())) {
                    telling.out()
                            .println(words.say(
                                    "cli.many.as-before",
                                    job.toString(),
                                    usual.to().resolve(origin.get().number()).toString()));
                    return done(job, Fate.AS_BEFORE, Exit.DONE, out, err);
                }
            }
            int code = pack(job, new PackMaker(usual.to(), usual.templates(), telling));
            if (code == Exit.DONE && origin.isPresent()) {
                remember(origin.get(), telling);
            }
            return done(job, fate(code), code, out, err);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            telling.err().println(job);
            int code = Mishap.tell(e, telling.err());
            return done(job, fate(code), code, out, err);
        }
    }

    /** Takes the number of a job after those of all jobs before it, which began before it; gives the job that has it already. */
    private @Nullable Path taken(Optional<Origin> origin, Path job, Turn turn) throws InterruptedException {
        try {
            turn.before().await();
            return origin.map(it -> numbers.putIfAbsent(it.number(), job)).orElse(null);
        } finally {
            turn.own().countDown();
        }
    }

    private static int pack(Path job, PackMaker maker) {
        Road.Judged judged = Road.judge(job);
        maker.telling().problems(job, judged);
        Assessment assessment = judged.assessment();
        return assessment == null
                ? judged.unfinished().map(it -> maker.survey(job, it)).orElse(Exit.BAD_INPUT)
                : maker.make(job, judged, assessment);
    }

    /** Without it the pack is made again next time, which harms nobody. */
    private void remember(Origin origin, JobTelling telling) {
        try {
            made.remember(origin, usual.to());
        } catch (PackFolder.NotWritten e) {
            telling.report(telling.err()).problems(List.of(e.diagnostic()));
        }
    }

    private static Done done(Path job, Fate fate, int code, StringWriter out, StringWriter err) {
        return new Done(job, fate, code, out.toString(), err.toString());
    }

    private static Fate fate(int code) {
        return switch (code) {
            case Exit.DONE -> Fate.PACKED;
            case Exit.FORBIDDEN -> Fate.FORBIDDEN;
            case Exit.BAD_INPUT -> Fate.TO_MEND;
            case Exit.NOT_WRITTEN -> Fate.NOT_WRITTEN;
            default -> Fate.OUR_FAULT;
        };
    }

    private void summary(int jobs, List<Done> all, Duration taken) {
        PrintWriter out = usual.telling().out();
        Map<Fate, Integer> counts = new EnumMap<>(Fate.class);
        all.forEach(done -> counts.merge(done.fate(), 1, Integer::sum));
        out.println();
        out.println(words.say("cli.many.summary", jobs, Progress.clock(taken)));
        counts.forEach((fate, count) -> out.println("  " + words.say("cli.many.count." + key(fate), count)));
        if (all.size() < jobs) {
            out.println("  " + words.say("cli.many.left", jobs - all.size()));
        }
        all.stream()
                .filter(done -> done.code() != Exit.DONE)
                .sorted(Comparator.comparing(Done::fate).thenComparing(Done::job))
                .forEach(done -> usual.telling()
                        .err()
                        .println(words.say(
                                "cli.many.failed." + key(done.fate()),
                                done.job().toString())));
    }

    private static String key(Fate fate) {
        return fate.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
