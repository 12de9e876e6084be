package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;

/** An AC generator. */
@Means("An AC generator.")
public record Generator(
        @Means("continuous power") @Within(least = "100 W", most = "100 kW")
        Given<Power> power,

        @Means("short-time power and for how long; no more than the continuous power when not written") @Nullable ShortTime shortTime,

        @Means("breaker between it and the inverter's input") @Within(least = "1 A", most = "500 A") @Nullable Given<Current> breaker,

        @Means("where its neutral is tied to earth: always if at the generator itself, none if nowhere") @Nullable Given<NeutralBond> neutralBond,

        @Means(
                "whether it and shore power can never meet, by one inlet for both or a lock, and what parts them opens neutral too")
        @Nullable Given<Boolean> interlocked,

        @Means("whether voltage and frequency stay within what the charger accepts") @Nullable Given<Boolean> steady,

        @Means("id of the RCD that all it feeds passes") @RefersTo(Thing.RCD) @Nullable String rcd,

        @Means(
                value = "how it is chosen as source, said to the owner",
                example = "turn the selector on the board to generator")
        @Nullable String chosenBy,

        @Means("its place") @Longest(Longest.PLACE) @Nullable String where,

        Place place) {}
