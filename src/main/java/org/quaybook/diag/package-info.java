/**
 * What reading, checking and rendering report with: a diagnostic is data; the sentence is made later, in the reader's
 * language. Uses nothing of ours.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.diag;

import org.jspecify.annotations.NullMarked;
