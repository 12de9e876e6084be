package org.quaybook.job;

/** What charges the bank. */
public enum ChargeKind {
    @Means("mains charger")
    SHORE_CHARGER,
    @Means("engine alternator")
    ALTERNATOR,
    @Means("solar controller")
    SOLAR,
    @Means("generator charger")
    GENERATOR,
    @Means("wind turbine")
    WIND
}
