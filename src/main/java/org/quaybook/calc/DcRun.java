package org.quaybook.calc;

import org.quaybook.quantity.Area;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Conductors;
import org.quaybook.reference.DropFormula;

/** The resistance and drop of a DC cable run. */
public final class DcRun {

    private static final Temperature AMPACITY_AMBIENT = new Temperature(30);

    private DcRun() {}

    /** Resistance at a conductor temperature, R20 (1 + 0.00393 (T - 20)), of parallel conductors over a length. */
    public static Resistance resistance(
            Resistance perMetreAt20, Conductor conductor, Length length, Temperature temperature) {
        return perMetreAt20.times(length.metres() * Conductors.temperatureFactor(temperature) / conductor.parallel());
    }

    /**
     * The temperature that a conductor reaches: at its allowed current it warms from the table's ambient of 30 °C to its
     * insulation rating, and the rise goes with the square of the current (Joule's law; steady state).
     *
     * @param current current through the run
     * @param allowed current that the run may carry at 30 °C in its bundle, above 0
     * @param ambient where it runs
     * @param rating insulation rating, above 30 °C
     */
    public static Temperature workingTemperature(
            Current current, Current allowed, Temperature ambient, Temperature rating) {
        double load = current.ratioTo(allowed);
        return ambient.plusKelvin(rating.kelvinAbove(AMPACITY_AMBIENT) * load * load);
    }

    /**
     * Drop over one run by the rulebook's own formula, E = k I L / S.
     *
     * @param current current in one conductor
     * @param length of this run, one way: the formula's length out and back is the sum of both poles
     */
    public static Voltage dropByRule(DropFormula formula, Current current, Length length, Area size) {
        return new Voltage(formula.ohmSquareMillimetresPerMetre()
                * current.amperes()
                * length.metres()
                / size.squareMillimetres());
    }
}
