package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Length;

/** A roll of labels or of tape. */
@Means("A roll of labels or of tape.")
public record LabelRoll(
        @Means(value = "width across the feed", example = "62 mm") @Within(least = "4 mm", most = "1000 mm")
        Length width,

        @Means(value = "what the print head does not reach on each side", example = "1.5 mm")
        @Within(least = "0 mm", most = "20 mm")
        Length edge,

        @Means("length of each label along the feed; left out, the tape is cut to any length")
        @Within(least = "4 mm", most = "1000 mm")
        @Nullable Length length,

        @Means(value = "space between labels along the feed", example = "3 mm") @Within(least = "0 mm", most = "100 mm")
        Length gap,

        Place place) {}
