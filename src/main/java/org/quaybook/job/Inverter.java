package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;

/** The inverter. */
@Means("The inverter.")
public record Inverter(
        @Means("what it is called at the board") @Longest(Longest.NAME) @Nullable String name,

        @Means(value = "continuous output power at 25 °C", example = "2.4 kW") @Within(least = "10 W", most = "50 kW")
        Given<Power> continuous,

        @Means("short-time output power and for how long") @Nullable ShortTime shortTime,

        @Means(
                value = "input power when on without load; taken from the table of inverters when not written",
                example = "14 W")
        @Within(least = "0.1 W", most = "500 W")
        @Nullable Given<Power> idle,

        @Means("efficiency at its best and at full output; the usual values when not written") @Nullable Efficiency efficiency,

        @Means(value = "input voltage at which the alarm sounds", example = "23.0 V")
        @Within(least = "1 V", most = "100 V")
        Given<Voltage> alarm,

        @Means(value = "input voltage at which it switches off", example = "22.0 V")
        @Within(least = "1 V", most = "100 V")
        Given<Voltage> cutOut,

        @Means(value = "input voltage at which it comes on again", example = "25.6 V")
        @Within(least = "1 V", most = "100 V")
        @Nullable Given<Voltage> restart,

        @Means("how long the input must stay low before the alarm sounds")
        @Within(least = "0 s", most = "600 s")
        @Nullable Given<TimeSpan> alarmDelay,

        @Means("how long the input must stay low before it switches off")
        @Within(least = "0 s", most = "600 s")
        @Nullable Given<TimeSpan> cutOutDelay,

        @Means(value = "input voltage at which it switches off at once, without its delay", example = "20.0 V")
        @Within(least = "1 V", most = "100 V")
        @Nullable Given<Voltage> cutOutAtOnce,

        @Means("how long the input must be back before it comes on again")
        @Within(least = "0 s", most = "1 h")
        @Nullable Given<TimeSpan> restartDelay,

        @Means("what it puts out") Output output,

        @Means("where neutral and protective earth are tied") @Nullable Given<NeutralBond> neutralBond,

        @Means("how circuits change between shore and inverter") @Nullable Changeover changeover,

        @Means("most current that its changeover carries from shore") @Within(least = "1 A", most = "500 A") @Nullable Given<Current> passThrough,

        @Means("shore current it is set to take at most") @Within(least = "1 A", most = "500 A") @Nullable Given<Current> inputLimit,

        @Means("load search: it sleeps until a load is switched on") @Nullable SearchMode searchMode,

        @Means("switch that feeds the circuits past a dead inverter") @Nullable Bypass bypass,

        @Means("highest usual temperature where it stands") @Within(least = "-20 °C", most = "80 °C") @Nullable Given<Temperature> locker,

        @Means("whether it may stand where petrol vapour can gather") @Nullable Given<Boolean> ignitionProtected,

        @Means("temperature above which it gives less; 40 °C when not written")
        @Within(least = "0 °C", most = "80 °C")
        @Nullable Given<Temperature> derateAbove,

        @Means("how much less it gives for each kelvin above that, of its output; 2 % when not written")
        @Within(least = "0 %", most = "10 %")
        @Nullable Given<Ratio> deratePerKelvin,

        @Means("the place it stands at") @Longest(Longest.PLACE) @Nullable String where,

        @Means("serial number") @Nullable String serial,
        @Means("firmware version") @Nullable String firmware,

        @Means("how to reach it: panel, tool, minutes") @Nullable String access,

        Place place) {}
