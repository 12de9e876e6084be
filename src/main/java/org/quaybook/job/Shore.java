package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/** The shore inlet and what follows it. */
@Means("The shore inlet and what follows it.")
public record Shore(
        @Means(value = "rating of the inlet", example = "16 A") @Within(least = "1 A", most = "125 A")
        Given<Current> inlet,

        @Means("shore voltage; that of the inverter when not written")
        @Within(least = "100 V", most = "250 V")
        @Nullable Given<Voltage> voltage,

        @Means(value = "conductor from inlet to board", example = "2.5 mm2") @Nullable Given<ConductorSize> cable,

        @Means("how its cable is laid; the way that cools worst when not written") @Nullable Given<Laid> laid,

        @Means("temperature rating of the cable's insulation; 70 °C when not written")
        @Within(least = "60 °C", most = "200 °C")
        @Nullable Given<Temperature> insulation,

        @Means("id of the RCD after the inlet; behind the isolating transformer where there is one")
        @RefersTo(Thing.RCD)
        @Nullable String rcd,

        @Means("main shore breaker") @Within(least = "1 A", most = "125 A") @Nullable Given<Current> breaker,

        @Means("conductor length from inlet to breaker") @Within(least = "0 m", most = "50 m") @Nullable Given<Length> breakerDistance,

        @Means("whether a lamp shows reversed polarity") @Nullable Given<Boolean> polarityLamp,

        @Means("whether a galvanic isolator is fitted in the shore's earth conductor") @Nullable Given<Boolean> galvanicIsolator,

        @Means("isolating transformer behind the inlet") @Nullable Transformer transformer,

        @Means("smallest supply the owner expects to meet") @Within(least = "1 A", most = "125 A") @Nullable Given<Current> smallestPedestal,

        @Means("place of the inlet") @Longest(Longest.PLACE) @Nullable String where,

        Place place) {}
