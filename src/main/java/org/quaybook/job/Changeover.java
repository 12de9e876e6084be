package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.TimeSpan;

/** How the AC circuits change between shore and inverter. */
@Means("How the AC circuits change between shore and inverter.")
public record Changeover(
        @Means("kind of changeover") Given<ChangeoverKind> kind,

        @Means("how long a change takes") @Within(least = "0 ms", most = "60 s") @Nullable Given<TimeSpan> time,

        @Means("what it does when shore power fails") @Nullable Given<WhenShoreFails> whenShoreFails,

        @Means("whether two sources can never meet, by a mechanical or electrical lock") @Nullable Given<Boolean> interlocked,

        @Means("whether it opens all live conductors, neutral too") @Nullable Given<Boolean> switchesNeutral,

        @Means("whether shore and inverter each have a neutral bus of their own") @Nullable Given<Boolean> neutralBusPerSource) {}
