package org.quaybook.job;

/** The kind of battery. */
public enum Chemistry {
    @Means("lead-acid with liquid acid and vents")
    FLOODED,
    @Means("lead-acid, acid held in glass mat, sealed by valves")
    AGM,
    @Means("lead-acid, acid as gel, sealed by valves")
    GEL,
    @Means("lithium iron phosphate")
    LITHIUM_IRON_PHOSPHATE
}
