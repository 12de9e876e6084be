package org.quaybook.job;

import org.quaybook.quantity.Power;
import org.quaybook.quantity.TimeSpan;

/** Short-time output. */
@Means("Short-time output.")
public record ShortTime(
        @Means("power") @Within(least = "10 W", most = "100 kW")
        Given<Power> power,

        @Means("for how long") @Within(least = "10 ms", most = "1 h")
        Given<TimeSpan> time) {}
