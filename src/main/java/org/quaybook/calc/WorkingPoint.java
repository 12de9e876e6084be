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
     * The least rest voltage with which a point of the way stays at or above a limit and the voltage does not collapse.
     * With U at the point, the load's terminals are at V = (U + sqrt(U² - 4 b P)) / 2 and E = U + a P / V; where the limit
     * lies below the voltage of collapse, that decides: E = 2 sqrt((a + b) P).
     *
     * @param limit voltage at the point, above 0
     * @param before all resistance between the source and the point, a
     * @param beyond resistance between the point and the load's terminals, b; 0 if the point is these terminals
     * @param power power at the load's terminals, not negative
     */
    public static Voltage leastRest(Voltage limit, Resistance before, Resistance beyond, Power power) {
        double whole = before.ohms() + beyond.ohms();
        if (whole == 0 || power.watts() == 0) {
            return limit;
        }
        double collapsing = Math.sqrt(whole * power.watts());
        if (limit.volts() <= collapsing + beyond.ohms() * power.watts() / collapsing) {
            return new Voltage(2 * collapsing);
        }
        double under = limit.volts() * limit.volts() - 4 * beyond.ohms() * power.watts();
        Voltage load = new Voltage((limit.volts() + Math.sqrt(Math.max(0, under))) / 2);
        return limit.plus(power.at(load).through(before));
    }
}
