/**
 * The installer's worksheet: survey, findings, parts, order of work, commissioning, baseline and workings on paper.
 *
 * <p>Not for users of the library: may change without notice.
 */
@NullMarked
package org.quaybook.pack.worksheet;

import org.jspecify.annotations.NullMarked;
