/**
 * How a job file begins: the questions, the answers so far, and the file that they make. Reads and writes nothing itself;
 * every answer is held against the job reader, so there is one set of rules.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.intake;

import org.jspecify.annotations.NullMarked;
