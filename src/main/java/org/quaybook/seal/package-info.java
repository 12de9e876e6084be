/**
 * Sealing: what is published of a record that nobody but the holders of its key may read. Authenticated encryption with the
 * ciphers of the JDK, nothing of our own but which of them are used and how.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.seal;

import org.jspecify.annotations.NullMarked;
