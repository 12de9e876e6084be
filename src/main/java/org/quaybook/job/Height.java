package org.quaybook.job;

/** Where in a space an opening is. */
public enum Height {
    @Means("near the floor")
    LOW,
    @Means("near the ceiling")
    HIGH
}
