package org.quaybook.job;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Quantity;

/** A test and its result. */
@Means("A test and its result.")
public record TestResult(
        @Means("which test") TestKind test,

        @Means("ids of what was tested, or names of sockets")
        @RefersTo({Thing.CABLE, Thing.FUSE, Thing.ISOLATOR, Thing.RCD, Thing.AC_CIRCUIT, Thing.SOCKET})
        List<String> of,

        @Means("what fed it during the test") @Nullable Given<Source> source,

        @Means(value = "the load or current during the test", example = "90 A") @Nullable Given<Quantity> at,

        @Means(value = "reading with its unit", example = "21 ms") @Nullable Given<Quantity> result,

        @Means("for a test without a reading") @Nullable Outcome outcome,
        @Means("who tested") @Nullable String by,
        @Means("when") @Done @Nullable LocalDate on,
        @Means("instrument used") @Nullable String instrument,
        Place place) {
    public TestResult {
        of = List.copyOf(of);
    }
}
