package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;

class WorkingPointTest {

    private static WorkingPoint point(double volts, double ohms, double watts) {
        return WorkingPoint.of(new Voltage(volts), new Resistance(ohms), new Power(watts))
                .orElseThrow();
    }

    /** Kirchhoff's voltage law and the definition of power, for sources and loads drawn by lot. */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void obeysTheLawsOfTheCircuit(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        double e = DrawnSystem.logarithmic(lot, 5, 60);
        double r = DrawnSystem.logarithmic(lot, 1e-4, 1);
        double p = lot.nextDouble() * e * e / (4 * r);
        WorkingPoint point = point(e, r, p);

        double v = point.voltage().volts();
        double i = point.current().amperes();
        assertThat(v + i * r).isCloseTo(e, within(e * 1e-9));
        assertThat(v * i).isCloseTo(p, within(p * 1e-9));
        assertThat(v).as("the stable one of the two points").isGreaterThanOrEqualTo(e / 2);
    }

    /** A resistor across the source: V = E Rl / (Rl + R), the voltage divider. */
    @ParameterizedTest
    @CsvSource({"12.6, 0.01, 0.1", "25.6, 0.02, 0.02", "51.2, 0.005, 3", "12.6, 0.01, 100"})
    void agreesWithTheVoltageDivider(double e, double r, double load) {
        double v = e * load / (load + r);
        assertThat(point(e, r, v * v / load).voltage().volts()).isCloseTo(v, within(v * 1e-7));
    }

    /** Maximum power theorem: a source gives most into a load equal to its own resistance, at half its voltage. */
    @ParameterizedTest
    @CsvSource({"12.6, 0.01", "26.8, 0.004", "53.6, 0.05"})
    void givesNoMoreThanTheMaximumPowerTheoremAllows(double e, double r) {
        Power most = WorkingPoint.greatestPower(new Voltage(e), new Resistance(r));
        double intoItsEqual = Math.pow(e / 2, 2) / r;

        assertThat(most.watts()).isCloseTo(intoItsEqual, within(intoItsEqual * 1e-12));
        assertThat(point(e, r, most.watts() * (1 - 1e-12)).voltage().volts()).isCloseTo(e / 2, within(e * 1e-5));
        assertThat(WorkingPoint.of(new Voltage(e), new Resistance(r), most.times(1 + 1e-9)))
                .isEmpty();
    }

    @Test
    void aLosslessSourceKeepsItsVoltage() {
        assertThat(point(12.6, 0, 5000).voltage().volts()).isEqualTo(12.6);
        assertThat(point(12.6, 0.01, 0).current().amperes()).isZero();
    }

    /** The rest voltage that just holds a limit puts the working point on that limit. */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void theVoltageThatHoldsIsTheInverse(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        double limit = DrawnSystem.logarithmic(lot, 5, 50);
        double r = DrawnSystem.logarithmic(lot, 1e-4, 0.1);
        double p = lot.nextDouble() * limit * limit / r;
        Voltage rest = WorkingPoint.leastRest(new Voltage(limit), new Resistance(r), new Resistance(0), new Power(p));
        assertThat(point(rest.volts(), r, p).voltage().volts()).isCloseTo(limit, within(limit * 1e-6));
    }

    /** Kirchhoff's voltage law around the loop: with the least rest voltage the point on the way is just at its limit. */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void aPointOnTheWayIsJustAtItsLimit(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        double limit = DrawnSystem.logarithmic(lot, 5, 50);
        double before = DrawnSystem.logarithmic(lot, 1e-4, 0.1);
        double beyond = DrawnSystem.logarithmic(lot, 1e-4, 0.1);
        double p = DrawnSystem.logarithmic(lot, 1e-3, 1) * limit * limit / (before + beyond);
        double rest = WorkingPoint.leastRest(
                        new Voltage(limit), new Resistance(before), new Resistance(beyond), new Power(p))
                .volts();
        WorkingPoint barely = point(rest * (1 + 1e-9), before + beyond, p);
        double there = barely.voltage().volts() + barely.current().amperes() * beyond;
        assertThat(there).isGreaterThanOrEqualTo(limit * (1 - 1e-6));
        boolean collapses = WorkingPoint.of(
                        new Voltage(rest * (1 - 1e-9)), new Resistance(before + beyond), new Power(p))
                .isEmpty();
        assertThat(collapses || there < limit * (1 + 1e-6)).isTrue();
    }

    /** Without load, or without resistance, the voltage is the same everywhere. */
    @Test
    void withoutLoadTheLimitItselfHolds() {
        Voltage limit = new Voltage(10.5);
        Resistance none = new Resistance(0);
        assertThat(WorkingPoint.leastRest(limit, new Resistance(0.01), new Resistance(0.02), new Power(0)))
                .isEqualTo(limit);
        assertThat(WorkingPoint.leastRest(limit, none, none, new Power(500))).isEqualTo(limit);
    }

    @Test
    void refusesWhatMeansNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> point(0, 0.01, 10));
        assertThatIllegalArgumentException().isThrownBy(() -> point(12, 0.01, -1));
    }

    /** Worked here from the same quadratic: pins the implementation, no independent proof. */
    @Nested
    class Pinned {

        @Test
        void twoKilowattsFromTenMilliohms() {
            WorkingPoint point = point(12.6, 0.01, 2000 / 0.9);
            assertThat(point.voltage().volts()).isCloseTo(10.4794, within(0.0005));
            assertThat(point.current().amperes()).isCloseTo(212.06, within(0.01));
        }

        @Test
        void mostPowerOfTwelveVolts() {
            assertThat(WorkingPoint.greatestPower(new Voltage(12.6), new Resistance(0.01))
                            .watts())
                    .isCloseTo(3969, within(0.1));
            assertThat(point(12.6, 0.01, 1944).voltage().volts()).isCloseTo(10.8, within(1e-6));
        }

        @ParameterizedTest
        @CsvSource({"800, 11.623", "1000, 11.829", "1200, 12.035", "1500, 12.343", "2000, 12.858"})
        void restVoltageThatHolds(double watts, double volts) {
            assertThat(WorkingPoint.leastRest(
                                    new Voltage(10.8), new Resistance(0.01), new Resistance(0), new Power(watts / 0.9))
                            .volts())
                    .isCloseTo(volts, within(0.001));
        }

        @Test
        void currentAtCutOut() {
            assertThat(new Power(2000 / 0.9).at(new Voltage(10.8)).amperes()).isCloseTo(205.76, within(0.01));
        }
    }
}
