package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Temperature;

/** An earth or bonding conductor. */
@Means("An earth or bonding conductor.")
public record Earth(
        @Means(value = "name on its tag", example = "E1")
        @Matches(
                value = "[A-Za-z][A-Za-z0-9-]{0,7}",
                form = "a letter and up to 7 letters, digits or hyphens, such as E1")
        @Identifies(Thing.EARTH)
        String id,

        @Means("what it is there for") Given<EarthKind> kind,

        @Means(value = "where it begins", example = "inverter case") @Longest(Longest.NAME)
        String from,

        @Means(value = "where it ends", example = "earth bus") @Longest(Longest.NAME)
        String to,

        @Means("id of the circuit whose lines it goes with, or the word shore")
        @RefersTo(value = Thing.AC_CIRCUIT, words = "shore")
        @Nullable String of,

        @Means(value = "conductor", example = "16 mm2") Given<Conductor> fitted,

        @Means("length") @Within(least = "1 cm", most = "100 m") @Nullable Given<Length> length,

        @Means("whether it is a core of the cable of its lines") @Nullable Given<Boolean> inCable,

        @Means("temperature rating of its insulation; 70 °C when not written")
        @Within(least = "60 °C", most = "200 °C")
        @Nullable Given<Temperature> insulation,

        Place place) {}
