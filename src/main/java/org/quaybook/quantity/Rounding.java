package org.quaybook.quantity;

/** Which way a value may be rounded for a reader without making somebody unsafe. */
public enum Rounding {
    /** Less is safe: running times, what a conductor or fuse bears. */
    DOWN,
    /** More is safe: demands, drops, fault currents, what a size must at least be. */
    UP,
    /** Neither side is dangerous: ratings and settings stated by somebody else. */
    NEAREST
}
