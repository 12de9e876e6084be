package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** An isolating transformer behind the shore inlet. */
@Means("An isolating transformer behind the shore inlet: what it feeds has no conductor in common with the shore.")
public record Transformer(
        @Means("whether the neutral behind it is tied there to the earth of the installation") @Nullable Given<Boolean> neutralTied,

        @Means("whether the shore's earth conductor goes on behind it to the earth of the installation") @Nullable Given<Boolean> shoreEarthGoesOn,

        Place place) {}
