/**
 * The one translator from job to formulas: feeds {@link org.quaybook.calc} with the job's values and the tables' defaults
 * and keeps each result with its working, so that every document prints the same figure with the same origin.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.figures;

import org.jspecify.annotations.NullMarked;
