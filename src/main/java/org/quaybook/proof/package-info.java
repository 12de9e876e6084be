/**
 * Whether a pack or a record is as it was issued: manifest, chain of revisions, signature, and what was altered. Evidence,
 * not proof: whoever holds the key can sign anew.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.proof;

import org.jspecify.annotations.NullMarked;
