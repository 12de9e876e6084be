package org.quaybook.calc;

import org.quaybook.quantity.Current;

/**
 * What a DC run carries.
 *
 * @param drawn the most that loads draw of the bank through it: decides the drop
 * @param carried the most in either direction, never less than {@code drawn}: decides conductor and warmth
 */
public record RunCurrent(Current drawn, Current carried) {
    public RunCurrent {
        if (carried.compareTo(drawn) < 0) {
            throw new IllegalArgumentException("a run that loads draw " + drawn + " through cannot carry " + carried);
        }
    }

    /** Of a run that nothing charges through. */
    public static RunCurrent of(Current drawn) {
        return new RunCurrent(drawn, drawn);
    }
}
