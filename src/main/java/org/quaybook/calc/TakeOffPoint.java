package org.quaybook.calc;

/** Where the load is connected to strings in parallel. */
public enum TakeOffPoint {
    /** Plus at the first string, minus at the last. */
    OPPOSITE_ENDS,
    /** Plus and minus at the first string. */
    SAME_END,
    /** Each string has equal leads to common bars. */
    BUSBAR
}
