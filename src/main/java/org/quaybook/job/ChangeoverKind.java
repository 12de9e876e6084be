package org.quaybook.job;

/** How the AC circuits change between shore and inverter. */
public enum ChangeoverKind {
    @Means("the inverter takes over by itself")
    AUTOMATIC,
    @Means("a switch with an off position between the sources")
    MANUAL,
    @Means("the inverter circuits are never fed from shore")
    NONE
}
