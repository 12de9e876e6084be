package org.quaybook.calc;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.RestVoltageCurve;

/**
 * Rest voltage of a whole string against state of charge: the chemistry's curve of one cell times the cells in series.
 *
 * @param cell curve of one cell
 * @param cells cells in series, at least 1
 */
public record RestVoltage(RestVoltageCurve cell, int cells) {

    public RestVoltage {
        if (cells < 1) {
            throw new IllegalArgumentException("a string has at least one cell, not " + cells);
        }
    }

    /** Rest voltage of the string; state of charge from 0 to 1. */
    public Voltage at(Ratio stateOfCharge) {
        return cell.perCell(stateOfCharge).times(cells);
    }

    /**
     * The lowest state of charge at which the string rests at or above a voltage; empty if it does not even when full.
     */
    public Optional<Ratio> lowestAt(Voltage string) {
        Voltage perCell = string.dividedBy(cells);
        if (perCell.compareTo(cell.full().perCell()) > 0) {
            return Optional.empty();
        }
        return perCell.compareTo(cell.empty().perCell()) <= 0 ? Optional.of(Ratio.NONE) : cell.stateOfChargeAt(perCell);
    }

    /** Rest voltage when full. */
    public Voltage full() {
        return at(Ratio.WHOLE);
    }

    /** States of charge at which the curve bends, rising. Between them it is straight. */
    public List<Ratio> bends() {
        return cell.rows().stream().map(row -> row.stateOfCharge()).sorted().toList();
    }
}
