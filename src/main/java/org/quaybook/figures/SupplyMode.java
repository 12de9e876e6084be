package org.quaybook.figures;

/** What feeds the AC circuits. */
public enum SupplyMode {
    /** The inverter, from the bank. */
    INVERTER,
    /** Shore power through the inverter's changeover. */
    PASS_THROUGH,
    /** Shore power past the inverter. */
    SHORE,
    /** The generator. */
    GENERATOR
}
