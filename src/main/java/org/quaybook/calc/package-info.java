/**
 * Pure formulas: bank, inverter, working point, runtime, sharing, conductors, fuses, ventilation. Knows no job, reads
 * nothing, rounds nothing; throws only for meaningless input. A bad design is a result, and the checks judge it.
 *
 * <p>Open to users of the library.
 */
@NullMarked
package org.quaybook.calc;

import org.jspecify.annotations.NullMarked;
