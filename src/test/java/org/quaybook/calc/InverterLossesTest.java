package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.reference.Inverters;

class InverterLossesTest {

    private static InverterLosses fit(double rated, double idle, double best, double full) {
        return InverterLosses.fit(new Power(rated), new Power(idle), new Ratio(best), new Ratio(full));
    }

    /** The three figures that the fit was made from come back, found by trying a thousand loads. */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void givesBackWhatItWasMadeFrom(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        double rated = DrawnSystem.logarithmic(lot, 100, 20000);
        double idle = rated * DrawnSystem.logarithmic(lot, 0.0005, 0.01);
        double best = 0.88 + lot.nextDouble(0.09);
        double full = best - 0.001 - lot.nextDouble(0.06);
        InverterLosses losses = fit(rated, idle, best, full);

        assertThat(losses.inputFor(new Power(0)).watts()).isCloseTo(idle, within(idle * 1e-12));
        if (losses.proportional() > 0) {
            double found = 0;
            for (int i = 1; i <= 1000; i++) {
                found = Math.max(
                        found, losses.efficiencyAt(new Power(rated * i / 1000)).fraction());
            }
            assertThat(found).isCloseTo(best, within(2e-4));
            assertThat(losses.bestEfficiency().fraction()).isCloseTo(best, within(1e-9));
            assertThat(losses.agreesWith(new Ratio(best))).isTrue();
        }
        assertThat(losses.efficiencyAt(losses.continuous()).fraction()).isCloseTo(full, within(1e-9));
    }

    /**
     * More output always asks for more input (conservation of energy), and never less than the output itself; the output
     * for an input is the way back, and idling leaves none.
     */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void inputRisesWithOutput(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        InverterLosses losses = fit(1000, lot.nextDouble(200), 0.7 + lot.nextDouble(0.29), 0.5 + lot.nextDouble(0.2));
        double before = -1;
        for (double watts = 0; watts <= 2000; watts += 50) {
            double input = losses.inputFor(new Power(watts)).watts();
            assertThat(input).isGreaterThan(before).isGreaterThanOrEqualTo(watts);
            assertThat(losses.outputFor(new Power(input)).watts()).isCloseTo(watts, within(1e-9 * (1 + input)));
            before = input;
        }
        assertThat(losses.outputFor(new Power(losses.idle().watts() / 2)).watts())
                .isZero();
    }

    /**
     * European efficiency by the weights of EN 50530 (seen): of the usual curve and of the fit to that curve's idle, best
     * and full-load figures. Of an inverter with 90 % at every load it is 90 %.
     */
    @Test
    void europeanEfficiencyOfTheUsualCurve() {
        Inverters table = Inverters.standard();
        InverterLosses losses = fit(1000, 8, 0.935, 0.919);
        double curve = european(load -> table.curve().stream()
                .filter(point -> point.load().equals(load))
                .findFirst()
                .orElseThrow()
                .value()
                .fraction());
        double fitted = european(
                load -> losses.efficiencyAt(new Power(1000 * load.fraction())).fraction());

        assertThat(fitted).isCloseTo(curve, within(0.002));
        assertThat(european(load -> 0.90)).isCloseTo(0.90, within(1e-12));
    }

    private static double european(ToDoubleFunction<Ratio> efficiency) {
        return Inverters.standard().weights().stream()
                .mapToDouble(point -> point.value().fraction() * efficiency.applyAsDouble(point.load()))
                .sum();
    }

    /** An idle draw of a tenth does not go with 95 %: the full-load figure is kept and the disagreement told. */
    @Test
    void figuresThatCannotAllBeTrue() {
        InverterLosses losses = fit(300, 30, 0.95, 0.90);
        assertThat(losses.agreesWith(new Ratio(0.95))).isFalse();
        assertThat(losses.efficiencyAt(new Power(300)).fraction()).isLessThanOrEqualTo(0.90 + 1e-12);
        assertThat(losses.bestEfficiency().fraction()).isLessThan(0.95);
    }

    @Test
    void refusesWhatMeansNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> fit(1000, 8, 0.90, 0.91));
        assertThatIllegalArgumentException().isThrownBy(() -> fit(1000, 8, 1, 0.91));
        assertThatIllegalArgumentException().isThrownBy(() -> fit(0, 8, 0.95, 0.91));
        assertThat(fit(1000, 8, 0.9, 0.9).efficiencyAt(new Power(0))).isEqualTo(Ratio.NONE);
    }
}
