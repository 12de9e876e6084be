package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Current;

/** A residual current device. */
@Means("A residual current device.")
public record Rcd(
        @Means(value = "name at the board", example = "R2")
        @Matches(
                value = "[A-Za-z][A-Za-z0-9-]{0,7}",
                form = "a letter and up to 7 letters, digits or hyphens, such as R2")
        @Identifies(Thing.RCD)
        String id,

        @Means(value = "rated residual current", example = "30 mA") @Within(least = "5 mA", most = "500 mA")
        Given<Current> rating,

        @Means("type") Given<RcdType> type,
        @Means("what feeds it") Given<Source> source,

        @Means("its place") @Longest(Longest.PLACE) @Nullable String where,

        Place place) {}
