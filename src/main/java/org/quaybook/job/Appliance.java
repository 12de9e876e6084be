package org.quaybook.job;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** Something that the owner wants to run. */
@Means("Something that the owner wants to run.")
public record Appliance(
        @Means("what the owner calls it") @Longest(Longest.NAME) @Identifies(Thing.APPLIANCE)
        String name,

        @Means(value = "electrical input while it works hardest, off its plate", example = "1.1 kW")
        @Within(least = "0.5 W", most = "50 kW")
        Given<Power> power,

        @Means("average input over a run, when it switches itself on and off; instead of duty")
        @Within(least = "0.1 W", most = "50 kW")
        @Nullable Given<Power> average,

        @Means("what it gives, where its plate states that: the cooking power of a microwave")
        @Within(least = "0.5 W", most = "50 kW")
        @Nullable Given<Power> outputPower,

        @Means("share of the time that it draws its power; 100 % when not written; instead of average")
        @Within(least = "1 %", most = "100 %")
        @Nullable Given<Ratio> duty,

        @Means("start power as a multiple of its running power; 1 when not written")
        @Within(least = "1", most = "12")
        @Nullable Given<Double> start,

        @Means("how long a start lasts") @Within(least = "10 ms", most = "60 s") @Nullable Given<TimeSpan> startTime,

        @Means("kind of load, where it matters") @Nullable LoadKind kind,

        @Means("id of the AC circuit that it hangs on; taken to hang on the inverter when not written")
        @RefersTo(Thing.AC_CIRCUIT)
        @Nullable String circuit,

        @Means(value = "how long one use lasts; left out when it runs all day", example = "6 min")
        @Within(least = "1 s", most = "7 d")
        @Nullable Given<TimeSpan> perUse,

        @Means("uses in a usual day") @Within(least = "0.01", most = "500") @Nullable Given<Double> usesPerDay,

        @Means(
                value = "times of day at which its uses begin; uses without one are spread from 07:00 to 22:00",
                example = "[07:30, 18:00]")
        List<LocalTime> at,

        @Means("how long the owner wants it to run from full, with the bank old and cold")
        @Within(least = "1 s", most = "60 d")
        @Nullable Given<TimeSpan> wishedTime,

        @Means("whether it stays on when nobody is there") @Nullable Given<Boolean> leftOn,

        @Means("mains frequency it needs") @Within(least = "50 Hz", most = "60 Hz") @Nullable Given<Frequency> frequency,

        @Means("mains voltage it needs") @Within(least = "100 V", most = "250 V") @Nullable Given<Voltage> voltage,

        @Means("whether somebody depends on it") @Nullable Given<Boolean> mustNotFail,

        @Means("whether its neutral is tied to its case, as in ranges and dryers of some countries") @Nullable Given<Boolean> neutralToCase,

        @Means("standing leakage current") @Within(least = "0 mA", most = "30 mA") @Nullable Given<Current> leakage,

        Place place) {

    public Appliance {
        at = List.copyOf(at);
    }

    /** Whether somebody depends on it: as the job says, or because it is a medical device. */
    public boolean isReliedOn() {
        return Given.isYes(mustNotFail) || kind == LoadKind.MEDICAL;
    }
}
