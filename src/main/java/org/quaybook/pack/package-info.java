/**
 * The road itself: reads a job, calculates and judges it, composes guide, labels and JSON, and puts them into one folder,
 * complete or not at all.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack;

import org.jspecify.annotations.NullMarked;
