package org.quaybook.job;

/** What the installation lives in. */
public enum CraftKind {
    @Means("a small craft")
    BOAT,
    @Means("a motorhome, camper van or caravan")
    MOTORHOME,
    @Means("a building off the grid")
    CABIN
}
