package org.quaybook.job;

/** What feeds an AC circuit. */
public enum Source {
    @Means("the inverter, or shore power through its changeover")
    INVERTER,
    @Means("shore power only")
    SHORE,
    @Means("the generator only")
    GENERATOR,
    @Means("nothing")
    NOTHING
}
