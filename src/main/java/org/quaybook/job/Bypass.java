package org.quaybook.job;

import org.jspecify.annotations.Nullable;

/** Switch that feeds the circuits past a dead inverter. */
@Means("Switch that feeds the circuits past a dead inverter.")
public record Bypass(
        @Means("its place") @Longest(Longest.PLACE) String where,
        @Means("whether it was operated") @Nullable Given<Boolean> tested) {}
