/**
 * The folder of published records: issued packs are put onto it, withdrawn ones taken off.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.site;

import org.jspecify.annotations.NullMarked;
