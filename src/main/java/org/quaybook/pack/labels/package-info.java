/**
 * The labels: which ones a job calls for, what stands on them, where they go, and how large their readers need them.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.labels;

import org.jspecify.annotations.NullMarked;
