package org.quaybook.job;

/** Which side of a lid or door something is on. */
public enum Side {
    @Means("seen without opening")
    OUTSIDE,
    @Means("seen only when opened")
    INSIDE
}
