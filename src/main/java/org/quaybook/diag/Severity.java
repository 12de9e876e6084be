package org.quaybook.diag;

/** How much a diagnostic matters, worst first. */
public enum Severity {
    /** The input cannot be understood or is impossible. */
    ERROR,
    /** Somebody could be hurt: the installation must not be handed over like this. */
    FORBIDS,
    /** The installer must decide, and may write down why it stays. */
    DECIDE,
    /** Worth knowing. */
    NOTE
}
