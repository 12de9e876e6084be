/**
 * The tables under {@code shared/} and the rulebooks, as typed look-ups. Every value that is looked up names its table,
 * its row and its source. No look-up goes beyond the ends of its table, and none lies between two rows unless its
 * description says so. What each table is worth stands in docs/tables.md.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.reference;

import org.jspecify.annotations.NullMarked;
