package org.quaybook.job;

/** The pole that a DC cable belongs to. */
public enum Pole {
    @Means("the side that fuses sit in")
    POSITIVE,
    @Means("the return")
    NEGATIVE
}
