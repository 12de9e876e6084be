/**
 * Single sheets of the pack: the quick card alone, and a page each for harbour office, surveyor and next electrician.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.sheets;

import org.jspecify.annotations.NullMarked;
