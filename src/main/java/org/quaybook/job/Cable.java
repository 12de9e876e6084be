package org.quaybook.job;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Torque;

/** One DC cable run, one pole. */
@Means("One DC cable run, one pole.")
public record Cable(
        @Means(value = "name on its tags", example = "B1")
        @Matches(
                value = "[A-Za-z][A-Za-z0-9-]{0,7}",
                form = "a letter and up to 7 letters, digits or hyphens, such as B1")
        @Identifies(Thing.CABLE)
        String id,

        @Means(value = "where it begins", example = "battery +") @Longest(Longest.NAME)
        String from,

        @Means(value = "where it ends", example = "inverter +") @Longest(Longest.NAME)
        String to,

        @Means(value = "length of this one run", example = "1.9 m") @Within(least = "1 cm", most = "100 m")
        Given<Length> length,

        @Means(value = "conductor as fitted; left out, a size is proposed", example = "2 x 70 mm2") @Nullable Given<Conductor> fitted,

        @Means(value = "temperature rating of its insulation", example = "90 °C")
        @Within(least = "60 °C", most = "200 °C")
        Given<Temperature> insulation,

        @Means("warmest space it runs through") Given<Route> route,

        @Means(value = "hottest usual air along it; that of the route when not written", example = "55 °C")
        @Within(least = "-20 °C", most = "120 °C")
        @Nullable Given<Temperature> ambient,

        @Means("current-carrying conductors bundled together, this one included; 1 when not written")
        @Within(least = "1", most = "60")
        @Nullable Given<Integer> bundled,

        @Means("whether it lies in one bundle with AC conductors") @Nullable Given<Boolean> withAc,

        @Means("bolted or crimped joints in this run, ends, fuse and switch included")
        @Within(least = "0", most = "40")
        @Nullable Given<Integer> joints,

        @Means("whether its conductors in parallel are alike: length, size and kind, each with lugs of its own")
        @Nullable Given<Boolean> alike,

        @Means("its pole; read off a + or - in from and to when not written") @Nullable Given<Pole> pole,

        @Means("whether the strands are tinned; yes when not written") @Nullable Given<Boolean> tinned,

        @Means("whether it is sheathed or enclosed from the battery on") @Nullable Given<Boolean> sheathed,

        @Means("colour of its insulation") @Nullable Given<WireColour> colour,

        @Means("outside diameter, for its tags") @Within(least = "1 mm", most = "60 mm") @Nullable Given<Length> diameter,

        @Means("tightening torque of its ends") @Within(least = "0.5 Nm", most = "100 Nm") @Nullable Given<Torque> torque,

        Place place) {

    /** As stated, else as a + or − in the names of its ends says; empty where nothing says it. */
    public Optional<Pole> side() {
        Optional<Pole> stated = Given.maybe(pole);
        boolean plus = isPlus(from) || isPlus(to);
        boolean minus = isMinus(from) || isMinus(to);
        return stated.isPresent() || plus == minus ? stated : Optional.of(plus ? Pole.POSITIVE : Pole.NEGATIVE);
    }

    /** Whether one end is named as plus, the other as minus, and the pole is not stated. */
    boolean endsDiffer() {
        return Given.maybe(pole).isEmpty() && ((isPlus(from) && isMinus(to)) || (isMinus(from) && isPlus(to)));
    }

    private static boolean isPlus(String end) {
        return end.contains("+");
    }

    private static boolean isMinus(String end) {
        return end.contains("−") || end.endsWith("-");
    }
}
