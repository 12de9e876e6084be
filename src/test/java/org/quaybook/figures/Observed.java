package org.quaybook.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.quaybook.job.Job;
import org.quaybook.job.JobReading;
import org.quaybook.quantity.Conductor;

/**
 * What came out for a job: each figure by its name in the canonical unit, and beside them what is no figure but can be
 * compared.
 *
 * @param values by name
 */
public record Observed(JobTree tree, Job job, Tables tables, Figures figures, Map<String, Double> values) {

    private static final Map<String, Tables> TABLES = new ConcurrentHashMap<>();

    /** What lasts for more than a year, takes for ever or holds at no state of charge has no figure: it is endless. */
    private static final Pattern ENDLESS_IF_ABSENT =
            Pattern.compile("day\\.(summer|winter)-days(-worn)?|day\\.(summer|winter)-sun-to-full"
                    + "|charging\\..*\\.(to-full|to-full-cold|after-day)"
                    + "|.*\\.(alarm-below|cut-out-below|starts-down-to|alarm-rest)"
                    + "|cable\\..*\\.least-(area|parallel)");

    /** What cannot run at all has no such figure: it is nothing. */
    private static final Pattern NOTHING_IF_ABSENT =
            Pattern.compile(".*\\.(time-from-\\d+|time-least|time-most|voltage-at-\\d+|running-voltage|left-for-bank)"
                    + "|cable\\..*\\.(allowed|margin)");

    /** Empty if the job cannot be read or calculated. */
    public static Optional<Observed> of(JobTree tree) {
        JobReading reading = tree.reading();
        Job job = reading.job();
        if (job == null) {
            return Optional.empty();
        }
        Tables tables = TABLES.computeIfAbsent(job.job().rulebook(), Tables::standard);
        Figures figures = Figures.of(job, tables).figures();
        return figures == null
                ? Optional.empty()
                : Optional.of(new Observed(tree, job, tables, figures, values(figures)));
    }

    private static Map<String, Double> values(Figures figures) {
        Map<String, Double> values = new LinkedHashMap<>();
        figures.all().forEach(figure -> values.put(figure.key(), figure.value().canonical()));
        figures.supply()
                .runs()
                .forEach(run -> run.least().ifPresent(least -> {
                    values.put("cable." + run.cable().id() + ".least-parallel", (double) least.parallel());
                    values.put("cable." + run.cable().id() + ".least-area", area(least));
                }));
        // A day that ends in the dark is worse than any that does not, however much is left in the bank.
        figures.day().courses().stream()
                .filter(course -> course.cutOut().isPresent())
                .forEach(course -> {
                    values.put(course.lowest().key(), -1.0);
                    if (course.season() == DayFigures.Season.DARK) {
                        values.replaceAll(
                                (key, value) -> key.endsWith(".after-day") ? Double.POSITIVE_INFINITY : value);
                    }
                });
        figures.pairs().forEach(pair -> values.put("pair." + names(pair) + ".together", pair.allowed() ? 1.0 : 0.0));
        figures.pairs().forEach(pair -> values.put("pair." + names(pair) + ".in-any-order", orders(pair.order())));
        return values;
    }

    private static String names(TogetherFigures pair) {
        String a = pair.first().key().replace("appliance.", "");
        String b = pair.second().key().replace("appliance.", "");
        return a.compareTo(b) < 0 ? a + "-and-" + b : b + "-and-" + a;
    }

    private static double orders(TogetherFigures.Order order) {
        return switch (order) {
            case ANY -> 2;
            case FIRST, SECOND -> 1;
            case NEVER -> 0;
        };
    }

    private static double area(Conductor conductor) {
        return conductor.size().area().squareMillimetres();
    }

    /** A value by its name; where there is none, what its absence means, or not a number if it means nothing. */
    double value(String key) {
        Double value = values.get(key);
        if (value != null) {
            return value;
        }
        if (!isOfSomethingHere(key)) {
            return Double.NaN;
        }
        if (ENDLESS_IF_ABSENT.matcher(key).matches()) {
            return Double.POSITIVE_INFINITY;
        }
        return NOTHING_IF_ABSENT.matcher(key).matches() ? 0 : Double.NaN;
    }

    /** Whether the appliance, group, charger or cable of a name is one of the job. */
    private boolean isOfSomethingHere(String key) {
        String of = key.substring(0, key.lastIndexOf('.'));
        return key.startsWith("day.")
                || Stream.of(".time", ".current", ".drop", ".most-quiet").anyMatch(it -> values.containsKey(of + it));
    }

    /** Names of the appliances that run: what does not takes nothing from the bank. */
    List<String> running() {
        return figures.appliances().stream()
                .filter(ApplianceFigures::runs)
                .map(ApplianceFigures::key)
                .toList();
    }

    List<String> keys() {
        return List.copyOf(values.keySet());
    }
}
