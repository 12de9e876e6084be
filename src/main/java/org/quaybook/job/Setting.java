package org.quaybook.job;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** A setting as left. */
@Means("A setting as left.")
public record Setting(
        @Means("which device") String device,
        @Means("which setting") String name,
        @Means("what it is set to") String value,
        @Means("what it was before") @Nullable String was,
        @Means("when it was last changed") @Done @Nullable LocalDate on,
        @Means("who changed it") @Personal @Nullable String by,
        @Means("season it is for") @Nullable String season,
        Place place) {}
