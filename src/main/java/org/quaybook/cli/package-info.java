/**
 * The way in: commands, messages on the terminal, exit codes.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.cli;

import org.jspecify.annotations.NullMarked;
