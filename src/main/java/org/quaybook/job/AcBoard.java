package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Length;

/** The AC board. */
@Means("The AC board.")
public record AcBoard(
        @Means(
                value = "from way to way, for the strip over its breakers; 17.5 mm, the usual module, when not written",
                example = "17.5 mm")
        @Within(least = "8 mm", most = "60 mm")
        @Nullable Given<Length> wayPitch,

        Place place) {}
