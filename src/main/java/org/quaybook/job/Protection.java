package org.quaybook.job;

import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/** Limits of the batteries' own protection, for each block. */
@Means("Limits of the batteries' own protection, for each block.")
public record Protection(
        @Means("continuous discharge current of one block") @Within(least = "1 A", most = "2000 A") @Nullable Given<Current> discharge,

        @Means("short-time discharge current of one block") @Within(least = "1 A", most = "5000 A") @Nullable Given<Current> peak,

        @Means("voltage of the whole string at which it opens") @Within(least = "1 V", most = "60 V") @Nullable Given<Voltage> cutOut,

        @Means("temperature above which charging is allowed") @Within(least = "-30 °C", most = "20 °C") @Nullable Given<Temperature> chargeAbove,

        @Means("whether it warns before it opens") @Nullable Given<Boolean> alarmBefore) {}
