package org.quaybook.figures;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.quaybook.DemoJobs;

/** Many jobs to hold laws against: the demos, the jobs of the tests, and invented ones, the same at every run. */
public final class VariedJobs {

    /** Invented jobs of each demo. */
    private static final int VARIANTS = 5;

    /** How many jobs besides the demos a law sees, and how far these are from each other in the list. */
    private static final int OTHERS = 3;

    private static final int STEP = 5;

    /** What can be otherwise in an invented job. */
    private interface Twist {
        JobTree of(JobTree job, Random random);
    }

    private static final List<String> METRIC = List.of("25 mm2", "35 mm2", "50 mm2", "70 mm2", "95 mm2", "120 mm2");

    private static final List<String> AWG = List.of("4 AWG", "2 AWG", "1 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG");

    private static final List<Twist> TWISTS = List.of(
            (job, random) -> job.with("bank.parallel", Integer.toString(1 + random.nextInt(4))),
            (job, random) -> job.with("bank.take-off", pick(random, "busbar", "same-end", "opposite-ends")),
            (job, random) -> job.with("bank.temperature", random.nextInt(-12, 26) + " °C (told)"),
            (job, random) -> job.with("bank.health", random.nextInt(60, 101) + " % (measured)"),
            (job, random) -> job.with("bank.reserve", random.nextInt(5, 56) + " %"),
            (job, random) -> job.with("bank.standing-draw", random.nextInt(10, 1500) + " mA (measured)"),
            (job, random) -> job.times("bank.block.resistance", random.nextDouble(0.5, 2.2)),
            (job, random) -> job.without("bank.block.resistance"),
            (job, random) -> job.with("bank.block.short-circuit", random.nextInt(2, 9) + " kA (plate)"),
            (job, random) -> job.times("bank.block.capacity", random.nextDouble(0.6, 1.8)),
            (job, random) -> job.with("bank.charge-limit", random.nextInt(30, 120) + " A (plate)"),
            (job, random) -> job.times("inverter.continuous", random.nextDouble(0.6, 1.2)),
            (job, random) -> job.times("inverter.idle", random.nextDouble(0.5, 3)),
            (job, random) -> job.without("inverter.idle"),
            (job, random) -> job.without("inverter.efficiency"),
            (job, random) -> job.with("inverter.efficiency.full", random.nextInt(82, 91) + " % (plate)"),
            (job, random) -> job.times("inverter.cut-out", random.nextDouble(0.96, 1.02)),
            (job, random) -> job.with("inverter.locker", random.nextInt(35, 58) + " °C"),
            (job, random) -> job.with("inverter.input-limit", random.nextInt(4, 17) + " A"),
            (job, random) -> job.times("cables.0.length", random.nextDouble(0.5, 3)),
            (job, random) -> job.times("cables.*.length", random.nextDouble(0.7, 2)),
            (job, random) -> job.with("cables.0.fitted", random.nextInt(1, 3) + " x " + size(job, random)),
            (job, random) -> job.with("cables.1.fitted", size(job, random)),
            (job, random) -> job.with("cables.1.joints", Integer.toString(random.nextInt(2, 9))),
            (job, random) -> job.with("cables.0.ambient", random.nextInt(20, 61) + " °C"),
            (job, random) -> job.with("cables.*.bundled", Integer.toString(random.nextInt(1, 8))),
            (job, random) -> job.with("cables.*.route", "engine-space"),
            (job, random) -> job.withMore(
                    "cables",
                    "{ id: B9, from: battery +, to: switch +, length: 0.7 m, fitted: " + size(job, random)
                            + ", insulation: 90 °C, route: outside-engine-space }"),
            (job, random) -> job.withMore("fuses.0.protects", "B2"),
            (job, random) -> job.times("fuses.0.distance", random.nextDouble(0.2, 3)),
            (job, random) -> job.times("fuses.0.rating", random.nextDouble(0.6, 1.5)),
            (job, random) -> job.without("fuses.0.rating"),
            (job, random) -> job.withMore(
                    "fuses",
                    "{ id: F8, protects: [], role: branch, feeds: Pump, conductor: 10 mm2, load: "
                            + random.nextInt(5, 40) + " A, family: midi, rating: 40 A, distance: 100 mm }"),
            (job, random) -> job.withMore(
                    "fuses",
                    "{ id: F7, protects: [], role: string, conductor: 50 mm2, family: class-t, rating: 150 A,"
                            + " distance: 50 mm }"),
            (job, random) -> job.times("appliances.0.power", random.nextDouble(0.4, 1.3)),
            (job, random) -> job.times("appliances.1.power", random.nextDouble(0.4, 1.6)),
            (job, random) -> job.with("appliances.1.left-on", "yes"),
            (job, random) -> job.with("appliances.1.start", Double.toString(random.nextInt(1, 5))),
            (job, random) -> job.with("appliances.2.must-not-fail", "yes").with("appliances.2.wished-time", "9 h"),
            (job, random) ->
                    job.without("appliances.0.average").with("appliances.0.duty", random.nextInt(10, 100) + " %"),
            (job, random) ->
                    job.without("appliances.2.average").with("appliances.2.duty", random.nextInt(10, 100) + " %"),
            (job, random) -> job.withMore(
                    "appliances",
                    "{ name: Cool box, power: " + random.nextInt(40, 400) + " W, duty: " + random.nextInt(20, 90)
                            + " %, start: 3, kind: motor, left-on: yes, must-not-fail: yes }"),
            (job, random) -> job.withMore(
                    "appliances",
                    "{ name: Lamp, power: " + random.nextInt(5, 90) + " W, left-on: yes, wished-time: 12 h }"),
            (job, random) -> job.with("together.0.wished-time", random.nextInt(1, 9) + " h"),
            (job, random) -> job.times("charging.*.current", random.nextDouble(0.3, 1.6)),
            (job, random) -> job.withMore(
                    "charging",
                    "{ kind: shore-charger, name: Second charger, current: " + random.nextInt(10, 60)
                            + " A, efficiency: 82 %, fed-by: shore }"),
            (job, random) -> job.withMore(
                    "charging",
                    "{ kind: generator, name: Loud one, current: " + random.nextInt(10, 90)
                            + " A, per-day: 3 h, fed-by: generator }"),
            (job, random) -> job.withMore(
                    "charging",
                    "{ kind: solar, name: More panels, peak: " + random.nextInt(100, 900)
                            + " W, summer-sun: 4 h, winter-sun: 1 h }"),
            (job, random) -> job.times("generator.power", random.nextDouble(0.2, 1)));

    private VariedJobs() {}

    /** Those of all that can be calculated, with what comes out. */
    public static List<Observed> calculated() {
        return Calculated.JOBS;
    }

    /** The demos and some others, of each law others; all of them with {@code -Dlaws=all}. */
    public static List<Observed> someFor(String law) {
        if ("all".equals(System.getProperty("laws"))) {
            return Calculated.JOBS;
        }
        int many = Calculated.JOBS.size();
        int first = Math.floorMod(law.hashCode(), many);
        List<Observed> some = new ArrayList<>(Calculated.JOBS.subList(0, DemoJobs.ALL.size() + 1));
        IntStream.range(0, OTHERS)
                .mapToObj(i -> Calculated.JOBS.get((first + i * STEP) % many))
                .filter(job -> !some.contains(job))
                .forEach(some::add);
        return some;
    }

    private static final class Calculated {
        static final List<Observed> JOBS =
                all().stream().flatMap(job -> Observed.of(job).stream()).toList();
    }

    /** All of them; what is invented may be a job that cannot be calculated. */
    private static List<JobTree> all() {
        List<JobTree> jobs = new ArrayList<>();
        DemoJobs.ALL.forEach(demo -> jobs.add(JobTree.demo(demo)));
        // The job of every field has a conductor that its rulebook does not hold, and one that is yet to be chosen.
        jobs.add(JobTree.of("full", Path.of("src/test/resources/jobs/full.yaml"))
                .with("cables.1.fitted", "70 mm2")
                .with("cables.2.fitted", "70 mm2"));
        for (JobTree job : List.copyOf(jobs)) {
            for (int i = 1; i <= VARIANTS; i++) {
                jobs.add(varied(job, i));
            }
        }
        return jobs;
    }

    private static JobTree varied(JobTree job, int seed) {
        Random random = new Random(31L * job.toString().hashCode() + seed);
        List<Twist> twists = new ArrayList<>(TWISTS);
        Collections.shuffle(twists, random);
        JobTree varied = job;
        for (Twist twist : twists.subList(0, 4 + random.nextInt(10))) {
            varied = twist.of(varied, random);
        }
        return varied.named(job + " varied " + seed);
    }

    /** One of the rulebook's series. */
    private static String size(JobTree job, Random random) {
        return pick(random, job.at("job.rulebook").equals("abyc-e11") ? AWG : METRIC);
    }

    private static String pick(Random random, String... from) {
        return from[random.nextInt(from.length)];
    }

    private static <T> T pick(Random random, List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
