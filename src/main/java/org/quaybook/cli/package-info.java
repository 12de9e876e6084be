/** The way in: commands, messages on the terminal, exit codes. */
@NullMarked
package org.quaybook.cli;

import org.jspecify.annotations.NullMarked;
