package org.quaybook.calc;

import java.util.List;
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

    /** Rest voltage when full. */
    public Voltage full() {
        return at(Ratio.WHOLE);
    }

    /** States of charge at which the curve bends, rising. Between them it is straight. */
    public List<Ratio> bends() {
        return cell.rows().stream().map(row -> row.stateOfCharge()).sorted().toList();
    }
}
