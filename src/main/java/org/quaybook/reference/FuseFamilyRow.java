package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Voltage;

/**
 * One family of fuses or breakers. The figures are usual ones for the family: those of the part as fitted go before
 * them.
 *
 * @param family the key, such as {@code class-t}
 * @param form the standard or build
 * @param use what it is usually fitted for
 * @param ratings rated currents on sale, smallest first
 * @param maxVoltage largest direct voltage that every member of the family bears
 * @param highestVersion largest direct voltage that some members bear
 * @param interrupting what it can break, by voltage, lowest voltage first
 * @param citation where the row comes from
 */
public record FuseFamilyRow(
        String family,
        String form,
        String use,
        List<Current> ratings,
        Voltage maxVoltage,
        Voltage highestVersion,
        List<Interrupting> interrupting,
        Citation citation) {

    /** Keeps 30.000000000000004 A, as a division may leave it, from asking for the rating above 30 A. */
    private static final double ROUNDING = 1e-9;

    public FuseFamilyRow {
        ratings = List.copyOf(ratings);
        interrupting = List.copyOf(interrupting);
    }

    /**
     * The largest fault current that can be broken at a voltage.
     *
     * @param at the direct voltage
     * @param least what the weakest makes break
     * @param typical what most makes break
     * @param citation where the row comes from
     */
    public record Interrupting(Voltage at, Current least, Current typical, Citation citation) {}

    /**
     * What the family can be counted on to break in a bank: the weakest make's figure in the first row whose voltage is
     * at least the bank's; empty when there is no such row.
     */
    public Optional<Found<Current>> interruptingAt(Voltage bank) {
        return interrupting.stream()
                .filter(row -> row.at().compareTo(bank) >= 0)
                .findFirst()
                .map(row -> new Found<>(
                        row.least(), Fuses.INTERRUPTING, family + " " + row.at().volts() + " V", row.citation()));
    }

    /** The smallest rating on sale that is not below a current; empty when the family ends before it. */
    public Optional<Current> nextRating(Current atLeast) {
        double wanted = atLeast.amperes() * (1 - ROUNDING);
        return ratings.stream().filter(rating -> rating.amperes() >= wanted).findFirst();
    }
}
