package org.quaybook.job;

import org.quaybook.diag.Place;
import org.quaybook.quantity.Length;

/** A sheet that labels are cut out of. */
@Means("A sheet that labels are cut out of.")
public record PlainSheet(
        @Means(value = "width of the sheet", example = "210 mm") @Within(least = "120 mm", most = "1000 mm")
        Length width,

        @Means(value = "height of the sheet", example = "297 mm") @Within(least = "60 mm", most = "2000 mm")
        Length height,

        @Means(value = "what the printer leaves white on all sides", example = "10 mm")
        @Within(least = "0 mm", most = "40 mm")
        Length margin,

        @Means(value = "space between labels, for the cuts", example = "5 mm") @Within(least = "0 mm", most = "40 mm")
        Length gap,

        Place place) {}
