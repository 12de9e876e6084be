package org.quaybook.job;

/** What an earth conductor is there for. */
public enum EarthKind {
    @Means("protective conductor of an AC circuit or of the shore inlet")
    PROTECTIVE,
    @Means("from the inverter's case to earth or to the negative bus")
    CASE,
    @Means("ties hull, body or other metal to earth")
    BOND
}
