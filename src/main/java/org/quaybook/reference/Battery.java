package org.quaybook.reference;

import java.util.Optional;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/**
 * What is usual for batteries of one chemistry. A maker's data sheet goes before all of it.
 *
 * @param chemistry {@code flooded}, {@code agm}, {@code gel} or {@code lithium-iron-phosphate}
 * @param cellsPer12VoltBlock cells in series in what the trade calls a 12 V battery
 * @param nominalCell nominal voltage of one cell
 * @param peukert usual Peukert exponent at the 20-hour rate, with its usual span
 * @param blockResistance usual internal resistance of a new, full, warm block of 12 V and 100 Ah, with its usual span
 * @param capacityPerKelvin share of the capacity at 25 °C that one kelvin changes
 * @param usualDepth depth of discharge usually planned for
 * @param maxChargeRate largest usual charging current in multiples of capacity per hour (0.2: 20 A for 100 Ah)
 * @param maxDischargeRate largest usual lasting discharge current, in the same measure
 * @param coulombicEfficiency charge that can be taken out for each charge put in
 * @param selfDischargePerMonth share of the capacity lost in a month of rest at 25 °C
 * @param voltages usual charging and discharging voltages of a block of 12 V
 * @param vented whether gas leaves through open vents; a valve-regulated block vents only when overcharged
 * @param gassing currents that IEC 62485-2 counts for ventilation; empty when no gas has to be led away
 * @param resistanceRiseWhenLow factor on the resistance below {@link #LOW}
 * @param chargeableAbove cells colder than this must not be charged; empty when there is no such limit
 * @param citation where the row comes from
 */
public record Battery(
        String chemistry,
        int cellsPer12VoltBlock,
        Voltage nominalCell,
        Usual<Double> peukert,
        Usual<Resistance> blockResistance,
        double capacityPerKelvin,
        Ratio usualDepth,
        double maxChargeRate,
        double maxDischargeRate,
        Ratio coulombicEfficiency,
        Ratio selfDischargePerMonth,
        BlockVoltages voltages,
        boolean vented,
        Optional<Gassing> gassing,
        double resistanceRiseWhenLow,
        Optional<Temperature> chargeableAbove,
        Citation citation) {

    /** State of charge below which {@link #resistanceRiseWhenLow} holds (from memory). */
    public static final Ratio LOW = new Ratio(0.3);

    private static final Charge TABLE_CAPACITY = new Charge(100);

    /** How far from a whole number of cells a nominal voltage may lie, in cells. */
    private static final double CELL_TOLERANCE = 0.1;

    /**
     * A value with the span it usually lies in.
     *
     * @param least lower end of the span
     * @param value what to reckon with
     * @param most upper end of the span
     */
    public record Usual<T>(T least, T value, T most) {}

    /**
     * Usual voltages of a block of 12 V at 25 °C.
     *
     * @param absorption end of bulk charging
     * @param highest largest usual charging voltage: equalising where the chemistry is equalised, else the limit that makers set
     * @param floating kept when full
     * @param perKelvin change of all charging voltages for each kelvin above 25 °C; 0 for lithium
     * @param dischargedAt20Hours end of a discharge at the 20-hour rate
     */
    public record BlockVoltages(
            Voltage absorption, Voltage highest, Voltage floating, Voltage perKelvin, Voltage dischargedAt20Hours) {}

    /** Whether this is a lead-acid battery. */
    public boolean leadAcid() {
        return !chemistry.startsWith("lithium");
    }

    /** Whether hydrogen has to be led away (IEC 62485-2: all lead-acid batteries). */
    public boolean needsGasVentilation() {
        return gassing.isPresent();
    }

    /**
     * Cells in series in a block.
     *
     * @param nominal the block's nominal voltage
     * @throws NotInTable if that is not a whole number of cells, to a tenth of a cell
     */
    public int cells(Voltage nominal) {
        double cells = nominal.ratioTo(nominalCell);
        if (cells < 1 - CELL_TOLERANCE || Math.abs(cells - Math.rint(cells)) > CELL_TOLERANCE) {
            throw new NotInTable(
                    Batteries.TABLE,
                    chemistry + " block of " + nominal.volts() + " V",
                    "cells of " + nominalCell.volts() + " V, of which that is no whole number");
        }
        return (int) Math.rint(cells);
    }

    /**
     * Usual internal resistance of a new block: rises with its cells in series, falls with its capacity.
     *
     * @param nominal the block's nominal voltage
     * @param capacity the block's capacity, more than zero
     * @throws NotInTable if the voltage is not a whole number of cells
     */
    public Found<Resistance> blockResistance(Voltage nominal, Charge capacity) {
        double scale = (double) cells(nominal) / cellsPer12VoltBlock * TABLE_CAPACITY.ratioTo(capacity);
        return new Found<>(
                blockResistance.value().times(scale),
                Batteries.TABLE,
                chemistry + ", resistance",
                new Citation(citation.source() + "; scaled by cells and capacity", citation.standing()));
    }
}
