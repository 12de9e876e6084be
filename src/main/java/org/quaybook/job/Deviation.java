package org.quaybook.job;

import java.time.LocalDate;
import org.quaybook.diag.Place;

/** A finding accepted, with the reason. */
@Means("A finding accepted, with the reason.")
public record Deviation(
        @Means("id of the check") String check,
        @Means("reason") String why,
        @Means("who accepts it") @Personal String by,
        @Means("when") @Done LocalDate on,
        Place place) {}
