package org.quaybook.calc;

import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;

/**
 * What an inverter loses: an idle part, a part proportional to its output and a part that grows with its square,
 * {@code loss = idle + proportional P + quadratic P²}, P in watts.
 *
 * @param continuous rated output
 * @param idle input without load
 * @param proportional loss per watt of output
 * @param quadratic loss per squared watt of output, 1/W
 */
public record InverterLosses(Power continuous, Power idle, double proportional, double quadratic) {

    public InverterLosses {
        if (continuous.watts() <= 0 || idle.watts() < 0 || proportional < 0 || quadratic < 0) {
            throw new IllegalArgumentException(
                    "no inverter loses " + idle + ", " + proportional + ", " + quadratic + " at " + continuous);
        }
    }

    /**
     * The losses that agree with the idle draw, the efficiency at full output and the best efficiency.
     *
     * <p>Own derivation: with p² = idle / continuous and y² = quadratic continuous, 1/eta(x) = 1 + a + p²/x + y² x has
     * its least value 1 + a + 2 p y at x = p / y. Subtracting it from 1/eta(1) gives (y - p)² = 1/full - 1/best.
     *
     * @param best highest efficiency, above 0 and below 1
     * @param full efficiency at continuous output, not above best
     * @throws IllegalArgumentException if full is above best
     * @return the fit; where the idle draw is so large that {@code best} cannot be reached, the proportional part is 0,
     *     the efficiency at full output is kept and {@link #agreesWith} tells so
     */
    public static InverterLosses fit(Power continuous, Power idle, Ratio best, Ratio full) {
        if (full.fraction() <= 0 || best.fraction() >= 1 || full.fraction() > best.fraction()) {
            throw new IllegalArgumentException("no inverter has " + full + " at full output and " + best + " at best");
        }
        double p = Math.sqrt(idle.ratioTo(continuous));
        double y = p + Math.sqrt(1 / full.fraction() - 1 / best.fraction());
        double proportional = 1 / best.fraction() - 1 - 2 * p * y;
        double quadratic = y * y / continuous.watts();
        if (proportional < 0) {
            double rest = 1 / full.fraction() - 1 - p * p;
            return new InverterLosses(continuous, idle, 0, Math.max(0, rest) / continuous.watts());
        }
        return new InverterLosses(continuous, idle, proportional, quadratic);
    }

    /** Input power that an output power needs, idle part included. */
    public Power inputFor(Power output) {
        double watts = output.watts();
        return new Power(watts + idle.watts() + proportional * watts + quadratic * watts * watts);
    }

    /** The output that an input power is enough for, the root of {@link #inputFor}; 0 if it does not even cover the idle part. */
    public Power outputFor(Power input) {
        double above = input.watts() - idle.watts();
        double linear = 1 + proportional;
        return new Power(above <= 0 ? 0 : 2 * above / (linear + Math.sqrt(linear * linear + 4 * quadratic * above)));
    }

    /** Output over input; 0 without load. */
    public Ratio efficiencyAt(Power output) {
        return output.watts() <= 0
                ? Ratio.NONE
                : new Ratio(output.watts() / inputFor(output).watts());
    }

    /** The highest efficiency over all loads up to the continuous output. */
    public Ratio bestEfficiency() {
        double load =
                quadratic == 0 ? continuous.watts() : Math.min(continuous.watts(), Math.sqrt(idle.watts() / quadratic));
        return efficiencyAt(new Power(Math.max(load, 1e-9)));
    }

    /** Whether the fit meets a stated best efficiency within half a per cent. */
    public boolean agreesWith(Ratio best) {
        return Math.abs(bestEfficiency().fraction() - best.fraction()) < 0.005;
    }
}
