/** The installer's worksheet: survey, findings, parts, order of work, commissioning, baseline and workings on paper. */
@NullMarked
package org.quaybook.pack.worksheet;

import org.jspecify.annotations.NullMarked;
