package org.quaybook.figures;

import java.util.List;

/** Jobs made worse by more than a factor. */
public final class WorseJobs {

    private static final List<String> METRIC =
            List.of("1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120", "150", "185", "240");
    private static final List<String> AWG =
            List.of("16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0");

    private WorseJobs() {}

    public static JobTree thinner(JobTree job) {
        return job.rewritten("cables.*.fitted", WorseJobs::thinner);
    }

    public static JobTree thinnerCircuits(JobTree job) {
        return job.rewritten("ac-circuits.*.cable", WorseJobs::thinner).rewritten("shore.cable", WorseJobs::thinner);
    }

    public static JobTree thinnerEarths(JobTree job) {
        return job.rewritten("earths.*.fitted", WorseJobs::thinner);
    }

    /** With every result of a kind of test another. */
    public static JobTree result(JobTree job, String kind, String result) {
        JobTree changed = job;
        for (int i = 0; i < job.size("tests"); i++) {
            if (job.at("tests." + i + ".test").equals(kind)) {
                changed = changed.with("tests." + i + ".result", result);
            }
        }
        return changed;
    }

    /** The next thinner size of its series. */
    private static String thinner(String written) {
        List<String> series = written.contains("AWG") ? AWG : METRIC;
        String unit = written.contains("AWG") ? " AWG" : " mm2";
        int times = written.indexOf(" x ");
        String before = times < 0 ? "" : written.substring(0, times + 3);
        String size = written.substring(before.length()).replaceAll(" .*", "");
        int at = series.indexOf(size);
        return at < 1 ? written : before + series.get(at - 1) + unit;
    }
}
