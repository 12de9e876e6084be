/**
 * The owner's guide: one class a chapter, each giving its template the facts and sentences that the job calls for.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.guide;

import org.jspecify.annotations.NullMarked;
