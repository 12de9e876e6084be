package org.quaybook.job;

/** What a fuse is there for. */
public enum FuseRole {
    @Means("it carries what the whole bank gives the inverter")
    MAIN,
    @Means("one in each string of the bank, before the strings meet")
    STRING,
    @Means("it feeds something besides the inverter")
    BRANCH
}
