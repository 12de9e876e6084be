package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** Something to print labels on; its geometry is one of the last three. */
@Means("Something to print labels on.")
public record LabelStock(
        @Means(value = "what it is called for", example = "a4-2x4")
        @Matches(value = "[a-z0-9]+(-[a-z0-9]+)*", form = "small letters and digits, parted by hyphens, such as a4-2x4")
        String id,

        @Means(value = "what it is, in a few words", example = "A4 sheet of 8 labels, 96 x 67 mm")
        String title,

        @Means(value = "how it is printed", example = "laser")
        StockPrinting printing,

        @Means("dots of the printer in a millimetre: 8 for 203 dpi, 11.811 for 300, 23.622 for 600")
        @Within(least = "4", most = "100")
        @Nullable Double dotsPerMm,

        @Means("its geometry, if labels are cut out of a sheet") @Nullable PlainSheet plainSheet,

        @Means("its geometry, if it is a sheet of labels already cut") @Nullable DieCutSheet dieCut,

        @Means("its geometry, if it is a roll") @Nullable LabelRoll roll,
        Place place) {}
