package org.quaybook.calc;

import java.util.Optional;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;

/**
 * Where a source with inner resistance and a constant-power load meet.
 *
 * @param voltage at the load's terminals
 * @param current drawn
 */
public record WorkingPoint(Voltage voltage, Current current) {

    /**
     * Solves V (E - V) / R = P for the higher voltage, V = (E + sqrt(E² - 4 R P)) / 2: Ohm's and Kirchhoff's laws.
     *
     * @param rest source voltage without load, above 0
     * @param resistance all resistance between source and load
     * @param power power at the load's terminals, not negative
     * @return empty if the source cannot give that power at any voltage, P &gt; E² / (4 R): the voltage collapses
     */
    public static Optional<WorkingPoint> of(Voltage rest, Resistance resistance, Power power) {
        if (rest.volts() <= 0 || power.watts() < 0) {
            throw new IllegalArgumentException("no working point for " + power + " from " + rest);
        }
        double under = rest.volts() * rest.volts() - 4 * resistance.ohms() * power.watts();
        if (under < 0) {
            return Optional.empty();
        }
        Voltage voltage = new Voltage((rest.volts() + Math.sqrt(under)) / 2);
        return Optional.of(new WorkingPoint(voltage, power.at(voltage)));
    }

    /** The most power that a source can give at any voltage, E² / (4 R): the maximum power theorem. */
    public static Power greatestPower(Voltage rest, Resistance resistance) {
        return new Power(rest.volts() * rest.volts() / (4 * resistance.ohms()));
    }

    /**
     * The rest voltage at which a load just pulls its terminals down to a limit, E = V + R P / V.
     *
     * @param limit voltage at the load's terminals, above 0
     */
    public static Voltage restVoltageThatHolds(Voltage limit, Resistance resistance, Power power) {
        return limit.plus(power.at(limit).through(resistance));
    }
}
