package org.quaybook.job;

/** How a value is known. Kept through to figures and documents. */
public enum Provenance {
    /** Measured on this installation. */
    MEASURED,
    /** Read off the plate or the maker's data. */
    PLATE,
    /** Somebody said so. */
    TOLD,
    /** Taken as usual, nobody has looked. */
    ASSUMED,
    /** Written in the job file without a word on how it is known. */
    STATED,
    /** Nobody has seen it; there is no value. */
    NOT_SEEN
}
