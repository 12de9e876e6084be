package org.quaybook.reference;

/**
 * Where a value comes from and how far that can be trusted.
 *
 * @param source the standard, handbook or practice, with edition and table number where there are any
 * @param standing how the value got from that source into the table
 */
public record Citation(String source, Standing standing) {

    /** How a value got from its source into the table. */
    public enum Standing {
        /** Read in the source or in a page that reproduces it. */
        SEEN,
        /** Written down from memory of the source; to be compared with it before anybody relies on it alone. */
        FROM_MEMORY,
        /** Worked out from other values by the rule that the source names. */
        COMPUTED,
        /** Copied by the installer from a copy of the standard of his own. */
        OWN_COPY,
        /** What the trade usually does; no document stands behind it. */
        COMMON_PRACTICE
    }
}
