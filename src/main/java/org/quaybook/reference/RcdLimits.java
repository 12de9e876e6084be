package org.quaybook.reference;

import java.util.Optional;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.TimeSpan;

/**
 * What a residual-current device that protects people must do.
 *
 * @param residual largest rated residual current
 * @param timeAtRated longest time to trip at the rated residual current
 * @param timeAtFiveTimes longest time to trip at five times that; empty when the rulebook knows no such test
 */
public record RcdLimits(
        Found<Current> residual, Found<TimeSpan> timeAtRated, Optional<Found<TimeSpan>> timeAtFiveTimes) {}
