package org.quaybook.job;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;

/** Something that charges the bank. */
@Means("Something that charges the bank.")
public record Charging(
        @Means("what it is") ChargeKind kind,

        @Means("what it is called") @Longest(Longest.NAME) @Nullable String name,

        @Means(value = "most current it gives the bank", example = "50 A")
        @Within(least = "0.1 A", most = "2000 A")
        @Nullable Given<Current> current,

        @Means(value = "conductor between it and the bank", example = "16 mm2") @Nullable Given<Conductor> cable,

        @Means(value = "length of one run of that conductor; the other pole is taken to be as long", example = "4 m")
        @Within(least = "1 cm", most = "100 m")
        @Nullable Given<Length> length,

        @Means("temperature rating of that conductor's insulation; the least of the rulebook's tables when not written")
        @Within(least = "70 °C", most = "200 °C")
        @Nullable Given<Temperature> insulation,

        @Means("warmest space that conductor runs through; of an alternator the engine space when not written")
        @Nullable Given<Route> route,

        @Means(value = "id of the fuse that protects that conductor at its end by the bank", example = "F2")
        @RefersTo(Thing.FUSE)
        @Nullable String fuse,

        @Means(
                value =
                        "ids of the fuses and cables of the inverter that its current passes on its way to the bank and back, both poles; bank where it is connected at the bank itself; as of its fuse when not written",
                example = "[F1, B1, B2]")
        @RefersTo(
                value = {Thing.FUSE, Thing.CABLE},
                words = Fuse.AT_BANK)
        List<String> through,

        @Means("peak power of solar panels") @Within(least = "1 W", most = "100 kW") @Nullable Given<Power> peak,

        @Means("rating of the alternator itself") @Within(least = "1 A", most = "1000 A") @Nullable Given<Current> rated,

        @Means(
                "alternator: whether something keeps its current to that, such as a charger between it and the bank; a regulator that only holds the voltage does not")
        @Nullable Given<Boolean> currentLimited,

        @Means(
                "alternator: whether a starter battery stays on it whatever the bank does, as where a DC-DC charger feeds the bank from it")
        @Nullable Given<Boolean> starterBattery,

        @Means("hours a day it usually runs") @Within(least = "0 h", most = "24 h") @Nullable Given<TimeSpan> perDay,

        @Means(value = "time of day that it usually begins to run; 10:00 when not written", example = "10:00") @Nullable LocalTime begins,

        @Means("solar: hours of full sun in a usual summer day") @Within(least = "0 h", most = "12 h") @Nullable Given<TimeSpan> summerSun,

        @Means("solar: hours of full sun in a usual winter day") @Within(least = "0 h", most = "12 h") @Nullable Given<TimeSpan> winterSun,

        @Means("whether it is throttled by its own temperature") @Nullable Given<Boolean> temperatureSensor,

        @Means("whether it stops by itself when the bank is too cold to charge") @Nullable Given<Boolean> coldStop,

        @Means("what feeds a mains charger") @Nullable Given<Source> fedBy,

        @Means("mains charger: DC output over AC input; the usual value when not written")
        @Within(least = "30 %", most = "100 %")
        @Nullable Given<Ratio> efficiency,

        @Means("mains charger: power factor of its input; the usual value when not written")
        @Within(least = "0.3", most = "1")
        @Nullable Given<Double> powerFactor,

        Place place) {
    public Charging {
        through = List.copyOf(through);
    }

    /** Whether a fuse sits in its own conductor, and not where others than it pass too. */
    public boolean isFusedBy(Fuse branch) {
        return branch.isBranch() && branch.id().equals(fuse);
    }
}
