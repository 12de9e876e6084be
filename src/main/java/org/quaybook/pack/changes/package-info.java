/**
 * What a revision changes: the packs that were issued before, and what a new one says otherwise.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.changes;

import org.jspecify.annotations.NullMarked;
