package org.quaybook.job;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/**
 * A visit after handing over.
 *
 * @param revision several visits may share one: they are issued together
 * @param firm {@link Owner#WORD} if the owner did it himself
 * @param readings each with day, tester and instrument of the visit where it names none itself
 */
@Means("A visit after handing over.")
public record ServiceEntry(
        @Means(
                "the revision that it belongs to, the first that was not yet issued; that of the visit before or a later one")
        @Within(least = "2", most = "999")
        Integer revision,

        @Means(value = "day of the visit", example = "2027-05-14")
        LocalDate date,

        @Means("firm that did the work; \"owner\" if the owner did it himself")
        String firm,

        @Means("who did the work") @Personal @Nullable String by,
        @Means("what was done") String did,
        @Means("instrument used") @Nullable String instrument,

        @Means("what was read, as the tests of the job file")
        List<TestResult> readings,

        @Means("settings changed, as in the job file") List<Setting> settings,
        Place place) {
    public ServiceEntry {
        readings =
                readings.stream().map(test -> test.during(date, by, instrument)).toList();
        settings = List.copyOf(settings);
    }

    /** The same with other settings. */
    ServiceEntry with(List<Setting> changed) {
        return new ServiceEntry(revision, date, firm, by, did, instrument, readings, changed, place);
    }
}
