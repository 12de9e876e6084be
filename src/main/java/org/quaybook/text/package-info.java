/**
 * From data to words: message keys and arguments become sentences, quantities become numbers with units, in the reader's
 * language. The only place that rounds.
 */
@NullMarked
package org.quaybook.text;

import org.jspecify.annotations.NullMarked;
