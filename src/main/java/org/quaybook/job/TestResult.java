package org.quaybook.job;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Temperature;

/** A test and its result. */
@Means("A test and its result.")
public record TestResult(
        @Means("which test") TestKind test,

        @Means("ids of what was tested, or names of sockets; for a joint the two parts, from the battery on")
        @RefersTo(
                value = {Thing.CABLE, Thing.FUSE, Thing.ISOLATOR, Thing.RCD, Thing.AC_CIRCUIT, Thing.SOCKET},
                words = {"bank", "busbar", "inverter"})
        List<String> of,

        @Means("what fed it during the test") @Nullable Given<Source> source,

        @Means(value = "the load or current during the test", example = "90 A") @Nullable Given<Quantity> at,

        @Means(value = "reading with its unit", example = "21 ms") @Nullable Given<Quantity> result,

        @Means("air temperature beside a joint whose temperature is read")
        @Within(least = "-40 °C", most = "80 °C")
        @Nullable Given<Temperature> ambient,

        @Means("for a test without a reading") @Nullable Outcome outcome,
        @Means("who tested") @Personal @Nullable String by,
        @Means("when") @Done @Nullable LocalDate on,
        @Means("instrument used") @Nullable String instrument,
        Place place) {
    public TestResult {
        of = List.copyOf(of);
    }

    /** Whether this is the same test of the same thing done again on a later day, so that it says how it is now. */
    public boolean replaces(TestResult earlier) {
        LocalDate before = earlier.on == null ? LocalDate.MIN : earlier.on;
        return test == earlier.test
                && Set.copyOf(of).equals(Set.copyOf(earlier.of))
                && Given.maybe(source).equals(Given.maybe(earlier.source))
                && (test != TestKind.RCD_TRIP || Given.maybe(at).equals(Given.maybe(earlier.at)))
                && (outcome != null || Given.maybe(result).isPresent())
                && on != null
                && on.isAfter(before);
    }

    /** The same test with what a visit says once for all its tests, where the test does not say it itself. */
    TestResult during(LocalDate day, @Nullable String tester, @Nullable String meter) {
        return new TestResult(
                test,
                of,
                source,
                at,
                result,
                ambient,
                outcome,
                by == null ? tester : by,
                on == null ? day : on,
                instrument == null ? meter : instrument,
                place);
    }
}
