package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Area;

/** Ventilation of the battery space. */
@Means("Ventilation of the battery space.")
public record Vent(
        @Means(value = "free area of the low opening", example = "150 cm2")
        @Within(least = "0 cm2", most = "10000 cm2")
        @Nullable Given<Area> inlet,

        @Means("free area of the high opening") @Within(least = "0 cm2", most = "10000 cm2") @Nullable Given<Area> outlet,

        @Means("where the outlet ends") @Nullable String leadsTo,
        Place place) {}
