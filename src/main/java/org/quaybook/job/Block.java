package org.quaybook.job;

import java.time.YearMonth;
import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;

/** One battery of the bank. */
@Means("One battery of the bank.")
public record Block(
        @Means(value = "nominal voltage", example = "12.8 V") @Within(least = "1.2 V", most = "60 V")
        Given<Voltage> voltage,

        @Means(value = "capacity when new, at the 20-hour rate for lead-acid", example = "280 Ah")
        @Within(least = "1 Ah", most = "5000 Ah")
        Given<Charge> capacity,

        @Means(value = "internal resistance; taken from the table of batteries when not written", example = "3 mΩ")
        @Within(least = "0.01 mΩ", most = "1 Ω")
        @Nullable Given<Resistance> resistance,

        @Means(
                value =
                        "current of a short at its terminals when it is new and full, where its maker states one; the fuses are then judged by it",
                example = "3200 A")
        @Within(least = "10 A", most = "100 kA")
        @Nullable Given<Current> shortCircuit,

        @Means(value = "month it was fitted", example = "2026-04") @Done @Nullable YearMonth fitted,

        @Means("serial numbers") @Nullable String serial) {}
