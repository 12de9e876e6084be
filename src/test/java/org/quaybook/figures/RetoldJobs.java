package org.quaybook.figures;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Jobs told in another way that means the same. */
final class RetoldJobs {

    private static final Pattern QUANTITY =
            Pattern.compile("([+-]?\\d+(?:\\.\\d+)?) ?(A|V|W|kW|m|mΩ|Ω|mA|Ah|h|min|°C|kA|mm|cm2)( \\(.*\\))?");

    /** One of a unit in another unit: the International System of Units; degrees apart. */
    private static final Map<String, Map.Entry<Double, String>> OTHER = Map.ofEntries(
            Map.entry("A", Map.entry(1e3, "mA")),
            Map.entry("mA", Map.entry(1e-3, "A")),
            Map.entry("kA", Map.entry(1e3, "A")),
            Map.entry("V", Map.entry(1e3, "mV")),
            Map.entry("W", Map.entry(1e-3, "kW")),
            Map.entry("kW", Map.entry(1e3, "W")),
            Map.entry("m", Map.entry(1e2, "cm")),
            Map.entry("mm", Map.entry(1e-3, "m")),
            Map.entry("mΩ", Map.entry(1e-3, "Ω")),
            Map.entry("Ω", Map.entry(1e3, "mΩ")),
            Map.entry("Ah", Map.entry(1e3, "mAh")),
            Map.entry("h", Map.entry(60.0, "min")),
            Map.entry("min", Map.entry(60.0, "s")),
            Map.entry("cm2", Map.entry(100.0, "mm2")));

    private RetoldJobs() {}

    static JobTree inOtherUnits(JobTree job) {
        JobTree retold = job;
        for (String leaf : job.leaves()) {
            retold = retold.rewritten(leaf, RetoldJobs::inAnotherUnit);
        }
        return retold;
    }

    private static String inAnotherUnit(String text) {
        Matcher written = QUANTITY.matcher(text);
        if (!written.matches()) {
            return text;
        }
        double number = Double.parseDouble(written.group(1));
        String origin = written.group(3) == null ? "" : written.group(3);
        if (written.group(2).equals("°C")) {
            return JobTree.plain(number * 1.8 + 32) + " °F" + origin;
        }
        return Optional.ofNullable(OTHER.get(written.group(2)))
                .map(other -> JobTree.plain(number * other.getKey()) + " " + other.getValue() + origin)
                .orElseThrow();
    }

    /** Two of half the voltage for each block, all that resists counted in; unchanged where blocks are not known so well. */
    static JobTree inSeries(JobTree job) {
        if (!job.has("bank.block.resistance") || !job.at("bank.series").equals("1")) {
            return job;
        }
        double link = Practice.JOINT.times(Practice.JOINTS_PER_LINK).ohms();
        double block = number(job, "bank.block-resistance");
        return isAged(job)
                ? job
                : job.times("bank.block.voltage", 0.5)
                        .with("bank.series", "2")
                        .without("bank.block.short-circuit")
                        .with("bank.block.resistance", milliohms(job, (block - link) / 2));
    }

    /** Two of half the capacity for the one block of a string, on bars with equal leads. */
    static JobTree inParallel(JobTree job) {
        if (!job.has("bank.block.resistance")
                || !job.at("bank.parallel").equals("1")
                || job.has("bank.charge-limit")
                || job.has("bank.charge-limit-cold")
                || isAged(job)) {
            return job;
        }
        int series = Integer.parseInt(job.at("bank.series"));
        double lead = Practice.JOINT.times(Practice.JOINTS_PER_LINK).ohms();
        double block = number(job, "bank.block-resistance");
        double links = series == 1 ? 0 : (series - 1) * number(job, "bank.series-link-resistance");
        double string = 2 * (series * block + links) - 2 * lead;
        return job.times("bank.block.capacity", 0.5)
                .with("bank.parallel", "2")
                .with("bank.take-off", "busbar")
                .without("bank.links")
                .without("bank.block.short-circuit")
                .with("bank.block.resistance", milliohms(job, (string - links) / series));
    }

    /** A stated resistance is that of new blocks: with another of them it would age otherwise. */
    private static boolean isAged(JobTree job) {
        return job.has("bank.health") && !job.at("bank.health").startsWith("100");
    }

    private static double number(JobTree job, String figure) {
        return Observed.of(job).orElseThrow().value(figure);
    }

    /** With the origin of what was there, since how far a value may be off hangs on it. */
    private static String milliohms(JobTree job, double ohms) {
        return JobTree.plain(ohms * 1e3) + " mΩ " + origin(job.at("bank.block.resistance"));
    }

    private static String origin(String text) {
        return text.replaceFirst("^[^(]*", "");
    }

    /** A mean power as the share of the time that makes it. */
    static JobTree dutyForAverage(JobTree job) {
        JobTree retold = job;
        for (int i = 0; i < job.size("appliances"); i++) {
            String average = "appliances." + i + ".average";
            if (job.has(average)) {
                double share = watts(job.at(average)) / watts(job.at("appliances." + i + ".power"));
                retold = retold.without(average)
                        .with(
                                "appliances." + i + ".duty",
                                JobTree.plain(share * 100) + " % " + origin(job.at(average)));
            }
        }
        return retold;
    }

    private static double watts(String text) {
        List<String> parts = List.of(text.split(" ", -1));
        return Double.parseDouble(parts.get(0)) * (parts.get(1).equals("kW") ? 1000 : 1);
    }
}
