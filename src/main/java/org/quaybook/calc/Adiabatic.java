package org.quaybook.calc;

import org.quaybook.quantity.Area;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.TimeSpan;

/** What a conductor bears for a moment in which no heat leaves it. */
public final class Adiabatic {

    private Adiabatic() {}

    /**
     * Smallest conductor for a short, S = I √t / k (IEC 60364-5-54 543.1.2).
     *
     * @param fault current of the short
     * @param cleared time until it is cleared, up to 5 s
     * @param k factor of material and insulation in A √s/mm², above 0
     */
    public static Area least(Current fault, TimeSpan cleared, double k) {
        if (k <= 0) {
            throw new IllegalArgumentException("k " + k);
        }
        return new Area(fault.amperes() * Math.sqrt(cleared.seconds()) / k);
    }
}
