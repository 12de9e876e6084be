package org.quaybook.job;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** What the owner did at handover. */
@Means("What the owner did at handover.")
public record Rehearsal(
        @Means("when") @Done LocalDate on,
        @Means("who was there") @Personal @Nullable String with,
        @Means("started the system") @Nullable Given<Boolean> started,
        @Means("switched everything off") @Nullable Given<Boolean> allOff,

        @Means("pulled the shore lead and saw what goes dark") @Nullable Given<Boolean> shoreLost) {}
