package org.quaybook.calc;

import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;

/** Prospective short-circuit current. */
public final class ShortCircuit {

    private ShortCircuit() {}

    /**
     * Current of a bolted short, E / R (Ohm's law).
     *
     * @param rest rest voltage of the full bank
     * @param resistance bank and conductor up to the fault, above 0
     */
    public static Current prospective(Voltage rest, Resistance resistance) {
        if (resistance.ohms() <= 0) {
            throw new IllegalArgumentException("a bank without resistance has no finite fault current");
        }
        return rest.over(resistance);
    }
}
