package org.quaybook.job;

/** Where the neutral of the inverter output is tied to the protective earth. */
public enum NeutralBond {
    @Means("a relay ties them in inverter mode and opens on shore power")
    INVERTER_ONLY,
    @Means("tied all the time")
    ALWAYS,
    @Means("never tied: the output floats")
    NONE
}
