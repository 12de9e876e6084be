/** Composes the documents of a handover pack: picks what this job needs, in the reader's words, for the templates. */
@NullMarked
package org.quaybook.pack;

import org.jspecify.annotations.NullMarked;
