/**
 * From data to words: message keys and arguments become sentences, quantities become numbers with units, in the reader's
 * language. The only place that rounds.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.text;

import org.jspecify.annotations.NullMarked;
