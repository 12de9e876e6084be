package org.quaybook.calc;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Current;

/**
 * The ratings that a fuse may have.
 *
 * @param least so that the continuous current does not age it: load / load factor
 * @param most so that it protects the conductor: allowed current times what the rulebook lets it exceed
 */
public record FuseRange(Current least, Current most) {

    /**
     * The range for a load and a conductor.
     *
     * @param load largest continuous current
     * @param loadFactor share of its rating that a fuse may carry all the time, above 0 and at most 1
     * @param conductor allowed current of the conductor
     * @param overAmpacity what the rulebook allows above that, 1 or more
     */
    public static FuseRange of(Current load, double loadFactor, Current conductor, double overAmpacity) {
        if (loadFactor <= 0 || loadFactor > 1 || overAmpacity < 1) {
            throw new IllegalArgumentException("load factor " + loadFactor + ", over ampacity " + overAmpacity);
        }
        return new FuseRange(load.dividedBy(loadFactor), conductor.times(overAmpacity));
    }

    /** The smallest of the standard ratings inside the range. */
    public Optional<Current> choose(List<Current> ratings) {
        return ratings.stream()
                .filter(rating -> rating.compareTo(least) >= 0 && rating.compareTo(most) <= 0)
                .min(Current::compareTo);
    }
}
