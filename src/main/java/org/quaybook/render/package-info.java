/**
 * Templates into text, XHTML and CSS into PDF, label drawings into PDF sheets, links into QR codes. Knows nothing of
 * what the documents say. The same input gives the same bytes; nothing here reads the clock, the network or a file that
 * was not named by the caller.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.render;

import org.jspecify.annotations.NullMarked;
