/**
 * The install record: the static page that the QR opens, and the facts of a job in words that every document shares.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.record;

import org.jspecify.annotations.NullMarked;
