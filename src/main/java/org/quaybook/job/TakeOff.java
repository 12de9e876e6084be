package org.quaybook.job;

/** Where the load is connected to a bank of parallel strings. */
public enum TakeOff {
    @Means("plus at the first string, minus at the last")
    OPPOSITE_ENDS,
    @Means("plus and minus at the same string")
    SAME_END,
    @Means("every string has equal leads to common bars")
    BUSBAR
}
