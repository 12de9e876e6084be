package org.quaybook.job;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/**
 * What a later visit read off, in a file of its own: the tests of the handover again.
 *
 * @param tests each with day, tester and instrument of the visit where it names none itself
 */
@Means("What a later visit read off.")
public record Readings(
        @Means(value = "number of the job that was visited", example = "26-118")
        String job,

        @Means(value = "day of the visit", example = "2027-05-14")
        LocalDate on,

        @Means("who tested") @Personal @Nullable String by,
        @Means("instrument used") @Nullable String instrument,
        @Means("the tests, as in the job file") List<TestResult> tests,
        Place place) {
    public Readings {
        tests = tests.stream().map(test -> test.during(on, by, instrument)).toList();
    }
}
