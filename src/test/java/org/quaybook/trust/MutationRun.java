package org.quaybook.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.quaybook.DemoJobs;
import org.quaybook.text.Words;

/**
 * Takes every demo job, changes one token at a time and sends it down the road. Each must end in figures or a pack, or in a
 * message with a place, within a time.
 */
final class MutationRun {

    /**
     * What a run is to do.
     *
     * @param cases jobs to try
     * @param everyPack of how many jobs that can be calculated one is made into a whole pack too
     * @param most time for one job
     */
    record Plan(long seed, int cases, int everyPack, Duration most) {}

    /** What came of a run. */
    static final class Tally {
        private final Map<Trial.End, Integer> ends = new EnumMap<>(Trial.End.class);
        private final Map<String, String> faults = new TreeMap<>();
        private int faulty;
        private Duration longestJudged = Duration.ZERO;
        private Duration longestPacked = Duration.ZERO;

        synchronized void add(String change, Duration took, Trial.Result result) {
            ends.merge(result.end(), 1, Integer::sum);
            if (result.whole() && took.compareTo(longestPacked) > 0) {
                longestPacked = took;
            }
            if (!result.whole() && took.compareTo(longestJudged) > 0) {
                longestJudged = took;
            }
            result.faults().forEach(fault -> faults.putIfAbsent(fault, change));
            faulty += result.faults().isEmpty() ? 0 : 1;
        }

        /** Each fault once, with the first change that brought it out. */
        synchronized Map<String, String> faults() {
            return new TreeMap<>(faults);
        }

        synchronized Map<Trial.End, Integer> ends() {
            return new EnumMap<>(ends);
        }

        @Override
        public synchronized String toString() {
            return ends.values().stream().mapToInt(Integer::intValue).sum() + " jobs tried, " + faulty + " faulty; "
                    + ends
                    + "; longest " + longestJudged.toMillis() + " ms without and " + longestPacked.toMillis()
                    + " ms with documents";
        }
    }

    private static final List<String> FILES = List.of("job.yaml", "installer.yaml");

    private final Plan plan;
    private final Path scratch;
    private final Tally tally = new Tally();

    private MutationRun(Plan plan, Path scratch) {
        this.plan = plan;
        this.scratch = scratch;
    }

    /** @param scratch an empty folder */
    static Tally run(Plan plan, Path scratch) throws InterruptedException {
        return new MutationRun(plan, scratch).run();
    }

    private Tally run() throws InterruptedException {
        int workers = Runtime.getRuntime().availableProcessors();
        List<Thread> threads = new ArrayList<>();
        for (int worker = 0; worker < workers; worker++) {
            int first = worker;
            Thread thread = new Thread(() -> share(first, workers));
            thread.start();
            threads.add(thread);
        }
        for (Thread thread : threads) {
            thread.join();
        }
        return tally;
    }

    private void share(int first, int workers) {
        ExecutorService one = Executors.newSingleThreadExecutor();
        AtomicInteger calculated = new AtomicInteger();
        try {
            Map<String, Path> folders = new TreeMap<>();
            for (String demo : DemoJobs.ALL) {
                folders.put(demo, copy(Path.of("demo-jobs", demo), scratch.resolve(demo + "-" + first)));
            }
            for (int number = first; number < plan.cases(); number += workers) {
                String demo = DemoJobs.ALL.get(number % DemoJobs.ALL.size());
                one = once(number, demo, folders.get(demo), calculated, one);
            }
        } finally {
            one.shutdownNow();
        }
    }

    private ExecutorService once(int number, String demo, Path folder, AtomicInteger calculated, ExecutorService one) {
        String file = FILES.get(number % 8 == 7 ? 1 : 0);
        Path original = Path.of("demo-jobs", demo, file);
        Mutations.Mutant mutant = new Mutations(plan.seed() * 1_000_003 + number).of(text(original));
        String change = demo + "/" + file + ", case " + number + " of seed " + plan.seed() + ": " + mutant.change();
        Words words = Words.of(Words.languages().get(number % Words.languages().size()));
        long begun = System.nanoTime();
        Future<Trial.Result> trial = one.submit(() -> {
            Files.write(folder.resolve(file), mutant.text().getBytes(StandardCharsets.UTF_8));
            Trial.Result result =
                    new Trial(folder, words).run(() -> calculated.incrementAndGet() % plan.everyPack() == 0);
            Files.copy(original, folder.resolve(file), StandardCopyOption.REPLACE_EXISTING);
            return result;
        });
        try {
            Trial.Result result = trial.get(plan.most().toMillis(), TimeUnit.MILLISECONDS);
            tally.add(change, Duration.ofNanos(System.nanoTime() - begun), result);
            return one;
        } catch (TimeoutException e) {
            tally.add(change, plan.most(), new Trial.Result(Trial.End.REFUSED, List.of("no end in " + plan.most())));
        } catch (ExecutionException e) {
            tally.add(
                    change,
                    plan.most(),
                    new Trial.Result(Trial.End.REFUSED, List.of(e.getCause().toString())));
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        one.shutdownNow();
        return Executors.newSingleThreadExecutor();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
            return to;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Arguments: jobs to try, seed, of how many that can be calculated one is packed; the last two may be left out. A run
     * that is stopped tells what it has found so far.
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        int cases = Integer.parseInt(arguments[0]);
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        int everyPack = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 200;
        MutationRun run = new MutationRun(
                new Plan(seed, cases, everyPack, Duration.ofMinutes(2)),
                Files.createTempDirectory("quaybook-mutations"));
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            run.tally.faults().forEach((fault, change) -> System.out.println(fault + "\n  first by " + change));
            System.out.println(run.tally);
        }));
        System.exit(run.run().faults().isEmpty() ? 0 : 1);
    }
}
