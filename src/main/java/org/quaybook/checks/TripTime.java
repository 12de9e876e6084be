package org.quaybook.checks;

import java.util.Comparator;
import java.util.Optional;
import org.quaybook.figures.Tables;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.reference.Found;
import org.quaybook.reference.RcdTimes;

/** The longest time that an RCD may take in a test. */
public final class TripTime {

    /** Readings at a tenth less than five times or twice the rating still count as such. */
    private static final double FIVE_TIMES = 4.5;

    private static final double TWICE = 1.8;

    private TripTime() {}

    /** The longest time at the current of a test; one that states no current was done at the rated one. */
    public static TimeSpan most(TestResult test, Job job, Tables tables) {
        double multiple = Given.maybe(test.at()).orElse(null) instanceof Current current
                ? rating(test, job).map(current::ratioTo).orElse(1.0)
                : 1;
        Optional<TimeSpan> fiveTimes = tables.rules().rcd().timeAtFiveTimes().map(Found::value);
        if (multiple >= FIVE_TIMES && fiveTimes.isPresent()) {
            return fiveTimes.get();
        }
        // A rulebook that knows no test at five times knows none at twice either: both count as one at the rated
        // current.
        return multiple >= TWICE && fiveTimes.isPresent()
                ? RcdTimes.standard().tripTime(false, 2).value()
                : tables.rules().rcd().timeAtRated().value();
    }

    /** Of several tested at once the least: the current of the test is the most times that, and has to be cut off soonest. */
    private static Optional<Current> rating(TestResult test, Job job) {
        return job.rcds().stream()
                .filter(rcd -> test.of().contains(rcd.id()))
                .flatMap(rcd -> rcd.rating().known().stream())
                .min(Comparator.naturalOrder());
    }
}
