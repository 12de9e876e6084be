package org.quaybook.figures;

import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;

/**
 * A result with its name, the way it may be rounded and how it was reached.
 *
 * @param key unique name inside a job: {@code inverter.worst-current}
 * @param value the exact result
 * @param rounding the safe side
 * @param working formula and inputs
 */
public record Figure<Q extends Quantity>(String key, Q value, Rounding rounding, Working working) {

    /** The value with its safe side, ready to be put into words. */
    public Stated stated() {
        return new Stated(value, rounding);
    }
}
