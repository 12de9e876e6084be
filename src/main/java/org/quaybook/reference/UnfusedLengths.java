package org.quaybook.reference;

import java.util.Optional;
import org.quaybook.quantity.Length;

/**
 * How long a conductor may be between the source and its first fuse or breaker.
 *
 * @param bare for a conductor without sheath or enclosure
 * @param sheathed for one sheathed or enclosed all the way; empty when the rulebook then names no length
 * @param sheathedAtBattery for one so sheathed that begins at the battery's own terminal; empty as above
 */
public record UnfusedLengths(
        Found<Length> bare, Optional<Found<Length>> sheathed, Optional<Found<Length>> sheathedAtBattery) {

    /**
     * The limit that holds; empty when the rulebook names no length for this case.
     *
     * @param isSheathed whether the conductor is sheathed or enclosed all the way
     * @param atBattery whether it begins at the battery's own terminal
     */
    public Optional<Found<Length>> longest(boolean isSheathed, boolean atBattery) {
        if (!isSheathed) {
            return Optional.of(bare);
        }
        return atBattery ? sheathedAtBattery : sheathed;
    }
}
