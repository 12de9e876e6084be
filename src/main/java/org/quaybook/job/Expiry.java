package org.quaybook.job;

import java.time.LocalDate;
import org.quaybook.diag.Place;

/** Something that runs out or is due. */
@Means("Something that runs out or is due.")
public record Expiry(
        @Means("what") String what, @Means("when") LocalDate on, Place place) {}
