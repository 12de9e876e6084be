package org.quaybook.calc;

import org.quaybook.quantity.AirFlow;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.reference.Ventilation;

/**
 * Ventilation that keeps hydrogen below its explosion limit (IEC 62485-2, formerly EN 50272-2).
 *
 * @param flow air flow needed
 * @param opening free area of each of the two openings, at an air speed of 0.1 m/s
 */
public record GasVentilation(AirFlow flow, Area opening) {

    /**
     * Q = v q s n Igas C / 1000 and A = 28 Q, the constants from the table.
     *
     * @param cellsInSeries cells of one string, at least 1; strings in parallel count in the capacity
     * @param gassing current that makes gas for each Ah of capacity
     * @param capacity capacity of all strings together
     */
    public static GasVentilation of(int cellsInSeries, Current gassing, Charge capacity, Ventilation constants) {
        if (cellsInSeries < 1 || gassing.amperes() < 0) {
            throw new IllegalArgumentException(cellsInSeries + " cells gassing " + gassing);
        }
        double flow = constants.flowCubicMetresPerAmpereHour().value()
                * cellsInSeries
                * gassing.amperes()
                * capacity.ampereHours();
        double squareCentimetres = constants.openingSquareCentimetresPerFlow().value() * flow;
        return new GasVentilation(new AirFlow(flow), new Area(squareCentimetres * 100));
    }
}
