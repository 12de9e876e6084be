package org.quaybook.calc;

import org.quaybook.quantity.Length;
import org.quaybook.quantity.Temperature;

/**
 * How a DC run is laid.
 *
 * @param length one way
 * @param insulation temperature rating of the insulation
 * @param engineSpace whether it passes an engine space or the like
 * @param bundled current-carrying conductors in its bundle, itself included
 * @param tinned whether its strands are tinned
 */
public record RunConditions(Length length, Temperature insulation, boolean engineSpace, int bundled, boolean tinned) {}
