package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.Power;

/** Load search. */
@Means("Load search.")
public record SearchMode(
        @Means("whether it is set") Given<Boolean> on,

        @Means("load that wakes it") @Within(least = "1 W", most = "500 W") @Nullable Given<Power> threshold) {}
