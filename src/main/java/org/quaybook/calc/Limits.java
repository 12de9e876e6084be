package org.quaybook.calc;

import org.jspecify.annotations.Nullable;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

/**
 * What ends a discharge.
 *
 * @param reserve state of charge that shall be left
 * @param cutOut voltage at the inverter's terminals at which it switches off
 * @param protection voltage at the bank's terminals at which its own protection opens, if it has one
 */
public record Limits(
        Ratio reserve, Voltage cutOut, @Nullable Voltage protection) {}
