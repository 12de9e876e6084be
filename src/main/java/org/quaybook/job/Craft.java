package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** What the installation lives in. */
@Means("What the installation lives in.")
public record Craft(
        @Means("name of the craft or cabin") @Longest(Longest.NAME)
        String name,

        @Means("what it is") CraftKind kind,

        @Means(value = "in a few words, with its length", example = "canal barge, 19 m") @Nullable String type,

        @Means(value = "what it is built of", example = "steel") @Nullable String hull,

        @Means("whether the hull or body is metal and bonded to earth") @Nullable Given<Boolean> metalHull,

        @Means("whether a petrol engine or tank shares a space with the installation") @Nullable Given<Boolean> petrolAboard,

        @Means("where it usually lies; never published") @Personal @Nullable String berth,

        Place place) {}
