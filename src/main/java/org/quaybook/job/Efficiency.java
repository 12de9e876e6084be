package org.quaybook.job;

import org.quaybook.quantity.Ratio;

/** Efficiency of the inverter, idle draw included. */
@Means("Efficiency of the inverter, idle draw included.")
public record Efficiency(
        @Means(value = "at its best load", example = "94 %") @Within(least = "50 %", most = "99.9 %")
        Given<Ratio> best,

        @Means(value = "at full continuous output", example = "90 %") @Within(least = "50 %", most = "99.9 %")
        Given<Ratio> full) {}
