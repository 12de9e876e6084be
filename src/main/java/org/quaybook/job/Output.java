package org.quaybook.job;

import org.quaybook.quantity.Frequency;
import org.quaybook.quantity.Voltage;

/** What the inverter puts out. */
@Means("What the inverter puts out.")
public record Output(
        @Means(value = "voltage", example = "230 V") @Within(least = "100 V", most = "250 V")
        Given<Voltage> voltage,

        @Means(value = "frequency", example = "50 Hz") @Within(least = "50 Hz", most = "60 Hz")
        Given<Frequency> frequency,

        @Means("form") Given<Wave> wave) {}
