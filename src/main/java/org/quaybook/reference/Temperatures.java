package org.quaybook.reference;

import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Temperature;

/** How the capacity of lead-acid batteries falls in the cold. */
public final class Temperatures {

    private Temperatures() {}

    /**
     * Capacity at a temperature as a share of that at 25 °C: C(T) = C25 (1 + λ (T − 25)), the form of IEC 60896 (from
     * memory). Never above 1, since nothing may be promised on the strength of a warm day, and never below 0.
     *
     * @param perKelvin λ, such as {@link Battery#capacityPerKelvin}
     */
    public static Ratio capacityShare(Temperature temperature, double perKelvin) {
        double share = 1 + perKelvin * temperature.kelvinAbove(Batteries.referenceTemperature());
        return new Ratio(Math.max(0, Math.min(1, share)));
    }
}
