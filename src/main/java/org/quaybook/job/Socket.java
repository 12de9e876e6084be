package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/** An outlet or fixed connection. */
@Means("An outlet or fixed connection.")
public record Socket(
        @Means("what it is called") @Longest(Longest.NAME) @Identifies(Thing.SOCKET)
        String name,

        @Means("its place") @Longest(Longest.PLACE) @Nullable String where,

        @Means("what feeds it with shore power on") Given<Source> shoreOn,
        @Means("what feeds it with shore power off") Given<Source> shoreOff,

        @Means("what feeds it with the generator running") @Nullable Given<Source> generatorOn,

        Place place) {}
