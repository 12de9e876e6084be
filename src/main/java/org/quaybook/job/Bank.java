package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Torque;
import org.quaybook.quantity.Voltage;

/** The batteries as one bank. */
@Means("The batteries as one bank.")
public record Bank(
        @Means("kind of battery") Given<Chemistry> chemistry,
        @Means("one battery of the bank") Block block,

        @Means("blocks in series in each string") @Within(least = "1", most = "48")
        Given<Integer> series,

        @Means("strings in parallel") @Within(least = "1", most = "24")
        Given<Integer> parallel,

        @Means("the cable between neighbouring strings, each side") @Nullable Link links,

        @Means("the cable between neighbouring blocks of one string; its joints alone are counted when not written")
        @Nullable Link seriesLinks,

        @Means("where the load is connected; needed when strings are in parallel") @Nullable Given<TakeOff> takeOff,

        @Means("whether all blocks are of one make, type and age") @Nullable Given<Boolean> blocksAlike,

        @Means("whether all links are of one size and length") @Nullable Given<Boolean> linksAlike,

        @Means(value = "lowest usual temperature of the bank in use", example = "12 °C")
        @Within(least = "-40 °C", most = "40 °C")
        Given<Temperature> temperature,

        @Means(value = "state of charge that shall be left", example = "20 %") @Within(least = "0 %", most = "90 %")
        Given<Ratio> reserve,

        @Means("capacity left of a used bank, of its capacity when new; 100 % when not written")
        @Within(least = "20 %", most = "110 %")
        @Nullable Given<Ratio> health,

        @Means("limits of the batteries' own protection (BMS), each block") @Nullable Protection protection,

        @Means("most charge current that the maker allows each block, warm")
        @Within(least = "0.1 A", most = "2000 A")
        @Nullable Given<Current> chargeLimit,

        @Means("the same at the lowest usual temperature of the bank; the table's rate when not written")
        @Within(least = "0.1 A", most = "2000 A")
        @Nullable Given<Current> chargeLimitCold,

        @Means(
                value =
                        "highest voltage that its sources are set to charge the bank with at 25 °C, equalising included;"
                                + " the table's of its chemistry when not written",
                example = "28.8 V")
        @Within(least = "1.2 V", most = "150 V")
        @Nullable Given<Voltage> chargeVoltage,

        @Means(
                value = "what always draws on the bank, however everything is switched: battery monitor, switched-off"
                        + " inverter",
                example = "30 mA")
        @Within(least = "0 mA", most = "50 A")
        @Nullable Given<Current> standingDraw,

        @Means("ventilation of the battery space") @Nullable Vent vent,

        @Means("tightening torque of the terminals") @Within(least = "0.5 Nm", most = "100 Nm") @Nullable Given<Torque> torque,

        @Means(
                value = "order of the parts on a terminal, from the terminal face",
                example = "lug, flat washer, spring washer, nut")
        @Nullable Given<String> stack,

        @Means("whether wing nuts hold the lugs") @Nullable Given<Boolean> wingNuts,

        @Means("most cable lugs on one stud") @Within(least = "1", most = "12") @Nullable Given<Integer> lugsPerStud,

        @Means("whether the largest lug lies lowest on each stud") @Nullable Given<Boolean> largestLugLowest,

        @Means("hole of the lugs on the terminals") @Within(least = "3 mm", most = "20 mm") @Nullable Given<Length> lugHole,

        @Means("where the bank is") @Longest(Longest.PLACE) @Nullable String where,

        Place place) {}
