package org.quaybook.job;

/** The kinds of residual current an RCD answers to. */
public enum RcdType {
    @Means("alternating only")
    AC,
    @Means("alternating and pulsating direct")
    A,
    @Means("type A and mixed frequencies")
    F,
    @Means("all, smooth direct too")
    B
}
