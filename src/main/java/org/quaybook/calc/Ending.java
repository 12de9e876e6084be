package org.quaybook.calc;

/** What ended a discharge. */
public enum Ending {
    /** The state of charge that shall be left was reached. */
    RESERVE,
    /** The voltage at the inverter fell to its cut-out. */
    CUT_OUT,
    /** The battery's own protection opened. */
    PROTECTION
}
