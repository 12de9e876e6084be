<<<<<<< HEAD
/**
 * The road itself: reads a job, calculates and judges it, composes the documents and puts them into one folder, complete
 * or not at all.
 */
=======
/** Composes the documents of a handover pack: picks what this job needs, in the reader's words, for the templates. */
>>>>>>> guide
@NullMarked
package org.quaybook.pack;

import org.jspecify.annotations.NullMarked;
