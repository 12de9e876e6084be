/**
 * How figures were reached, in words: the same for the terminal, the owner's guide and the installer's worksheet.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.pack.workings;

import org.jspecify.annotations.NullMarked;
