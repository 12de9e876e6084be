/**
 * Judges a job and its figures: each check has a stable id, a source, a message that names the numbers which clash and a
 * remedy with a number.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.checks;

import org.jspecify.annotations.NullMarked;
