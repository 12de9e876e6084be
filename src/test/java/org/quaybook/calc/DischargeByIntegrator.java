package org.quaybook.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.quaybook.calc.Discharge.Pauses;

/**
 * A discharge stepped through time by the Hipparchus library: its linear interpolation for the rest voltage, its Brent
 * solver for the current, its Dormand-Prince integrator with event search for the end. Shares no line with the code under
 * test.
 */
final class DischargeByIntegrator {

    /**
     * How it went; times in hours, energies in watt-hours.
     *
     * @param losses in the bank and in the supply
     * @param load at the inverter's terminals
     */
    record Course(
            double hours, double endsAt, Ending ending, double drawn, double energy, double losses, double load) {}

    private final DrawnSystem system;
    private final Pauses pauses;
    private final UnivariateFunction rest;

    DischargeByIntegrator(DrawnSystem system, Pauses pauses) {
        this.system = system;
        this.pauses = pauses;
        var rows = system.bank().rest().cell().rows();
        this.rest = new LinearInterpolator()
                .interpolate(
                        rows.stream()
                                .mapToDouble(row -> row.stateOfCharge().fraction())
                                .toArray(),
                        rows.stream()
                                .mapToDouble(row -> row.perCell().volts()
                                        * system.bank().rest().cells())
                                .toArray());
    }

    private double rest(double soc) {
        return rest.value(Math.min(1, Math.max(0, soc)));
    }

    private double inner(double soc) {
        SourceBank bank = system.bank();
        return bank.resistance().ohms() * (soc < bank.lowBelow().fraction() ? bank.riseWhenLow() : 1);
    }

    /** The smaller current at which source and load meet; at the point of most power where they never do. */
    private double current(double soc, double watts) {
        double e = rest(soc);
        double r = inner(soc) + system.supply().ohms();
        double mostCurrent = e / (2 * r);
        UnivariateFunction missing = amperes -> (e - r * amperes) * amperes - watts;
        return missing.value(mostCurrent) <= 0
                ? mostCurrent
                : new BracketingNthOrderBrentSolver(1e-14, 1e-12, 5).solve(1000, missing, 0, mostCurrent);
    }

    private double counted(double amperes) {
        SourceBank bank = system.bank();
        double rated = bank.capacity().ampereHours() / bank.ratedHours();
        return amperes <= rated ? amperes : rated * Math.pow(amperes / rated, bank.peukert());
    }

    private double[] derivatives(double soc) {
        double duty = system.demand().duty().fraction();
        double working = current(soc, system.demand().working().watts());
        double pausing = current(soc, system.demand().pausing().watts());
        double mean = duty * working + (1 - duty) * pausing;
        double counts =
                pauses == Pauses.RECOVER ? counted(mean) : duty * counted(working) + (1 - duty) * counted(pausing);
        double r = inner(soc) + system.supply().ohms();
        return new double[] {
            -counts / system.bank().capacity().ampereHours(),
            mean,
            mean * rest(soc),
            r * (duty * working * working + (1 - duty) * pausing * pausing),
            duty * system.demand().working().watts()
                    + (1 - duty) * system.demand().pausing().watts()
        };
    }

    Course run() {
        double watts = system.demand().working().watts();
        List<Watch> watches = new ArrayList<>();
        watches.add(
                new Watch(Ending.RESERVE, soc -> soc - system.limits().reserve().fraction()));
        watches.add(new Watch(
                Ending.CUT_OUT,
                soc -> rest(soc)
                        - current(soc, watts) * (inner(soc) + system.supply().ohms())
                        - system.limits().cutOut().volts()));
        var protection = system.limits().protection();
        if (protection != null) {
            watches.add(new Watch(
                    Ending.PROTECTION, soc -> rest(soc) - current(soc, watts) * inner(soc) - protection.volts()));
        }
        for (Watch watch : watches) {
            if (watch.margin.applyAsDouble(1) < 0) {
                return new Course(0, 1, watch.ending, 0, 0, 0, 0);
            }
        }
        double longest = system.bank().capacity().ampereHours() / counted(current(1, watts * 1e-9 + meanWatts())) * 3;
        var integrator = new DormandPrince853Integrator(longest * 1e-12, longest / 200, 1e-9, 1e-9);
        watches.forEach(watch -> integrator.addEventDetector(watch.every(longest / 300)));
        ODEStateAndDerivative end = integrator.integrate(
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 5;
                    }

                    @Override
                    public double[] computeDerivatives(double hours, double[] state) {
                        return derivatives(state[0]);
                    }
                },
                new ODEState(0, new double[] {1, 0, 0, 0, 0}),
                longest * 10);
        double[] state = end.getPrimaryState();
        Ending ending = watches.stream()
                .filter(watch -> watch.met)
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing ended it"))
                .ending;
        return new Course(end.getTime(), state[0], ending, state[1], state[2], state[3], state[4]);
    }

    private double meanWatts() {
        double duty = system.demand().duty().fraction();
        return duty * system.demand().working().watts()
                + (1 - duty) * system.demand().pausing().watts();
    }

    /** Stops the integration where a margin falls to nothing. */
    private static final class Watch {
        private final Ending ending;
        private final DoubleUnaryOperator margin;
        private boolean met;

        Watch(Ending ending, DoubleUnaryOperator margin) {
            this.ending = ending;
            this.margin = margin;
        }

        ODEEventDetector every(double interval) {
            return new ODEEventDetector() {
                @Override
                public AdaptableInterval getMaxCheckInterval() {
                    return AdaptableInterval.of(interval);
                }

                @Override
                public int getMaxIterationCount() {
                    return 200;
                }

                @Override
                public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
                    return new BracketingNthOrderBrentSolver(0, interval * 1e-9, 0, 5);
                }

                @Override
                public ODEEventHandler getHandler() {
                    return (state, detector, increasing) -> {
                        met = true;
                        return Action.STOP;
                    };
                }

                @Override
                public double g(ODEStateAndDerivative state) {
                    return margin.applyAsDouble(state.getPrimaryState()[0]);
                }
            };
        }
    }
}
