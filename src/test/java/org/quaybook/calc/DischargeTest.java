package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Discharge.Run;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.RestVoltages;
import org.quaybook.text.Words;

class DischargeTest {

    private static final Resistance NO_RESISTANCE = new Resistance(0);

    private static SourceBank ideal(double ampereHours, double hours, double peukert) {
        return new SourceBank(
                new RestVoltage(RestVoltages.standard().of("flooded"), 6),
                new Charge(ampereHours),
                hours,
                peukert,
                NO_RESISTANCE,
                1,
                Ratio.NONE);
    }

    private static Limits to(double reserve) {
        return new Limits(new Ratio(reserve), new Voltage(1), null);
    }

    /**
     * Over the first thousandth of a charge the voltage hardly moves and a steady power is a steady current, so the time
     * is a thousandth of Peukert's.
     */
    private static double hoursAt(double amperes, SourceBank bank) {
        Ratio nearlyFull = new Ratio(0.999);
        Voltage mean = bank.rest().at(new Ratio(0.9995));
        Demand demand = Demand.steady(new Power(amperes * mean.volts()));
        return new Discharge(bank, NO_RESISTANCE)
                        .run(demand, Ratio.WHOLE, to(nearlyFull.fraction()), Pauses.RECOVER)
                        .time()
                        .hours()
                * 1000;
    }

    /**
     * Peukert's law. First line: an electrical engineering article prints 14.5 h for 100 Ah at the 1 A rate (so H =
     * 100 h), k = 1.2, 5 A (seen). Second: a general encyclopaedia prints 8.7 h for 100 Ah at 20 h, k = 1.2, 10 A (from
     * memory). The rest: at its rated current a bank lasts its rated hours whatever k is (definition of rated capacity).
     */
    @ParameterizedTest
    @CsvSource({
        "100, 100, 1.2, 5, 14.4956, 0.05",
        "100, 20, 1.2, 10, 8.7055, 0.005",
        "100, 20, 1.0, 5, 20, 1e-3",
        "100, 20, 1.25, 5, 20, 1e-3",
        "345, 20, 1.6, 17.25, 20, 1e-3",
        "420, 10, 1.3, 42, 10, 1e-3"
    })
    void peukertAtASteadyCurrent(double ah, double rate, double k, double amperes, double hours, double tolerance) {
        assertThat(hoursAt(amperes, ideal(ah, rate, k))).isCloseTo(hours, within(tolerance));
        assertThat(ah
                        / ideal(ah, rate, k)
                                .equivalent(new org.quaybook.quantity.Current(amperes))
                                .amperes())
                .isCloseTo(hours, within(tolerance));
    }

    /** Below its rated current a bank gains nothing: no published span of the law reaches there. */
    @Test
    void nothingIsGainedBelowTheRatedCurrent() {
        assertThat(hoursAt(1, ideal(100, 20, 1.3))).isCloseTo(100, within(0.01));
    }

    /**
     * Without resistance I = P / E(s), so t = H (C / (H P))^k times the integral of E^k, which between the bends of the
     * curve is a power function (calculus).
     */
    @ParameterizedTest
    @CsvSource({"1.0, 300", "1.12, 300", "1.25, 2500", "1.6, 900"})
    void withoutResistanceTheIntegralIsKnown(double k, double watts) {
        SourceBank bank = ideal(200, 20, k);
        List<Ratio> bends = bank.rest().bends();
        double integral = 0;
        for (int i = 1; i < bends.size(); i++) {
            double from = bank.rest().at(bends.get(i - 1)).volts();
            double to = bank.rest().at(bends.get(i)).volts();
            double width = bends.get(i).fraction() - bends.get(i - 1).fraction();
            integral += width * (Math.pow(to, k + 1) - Math.pow(from, k + 1)) / ((k + 1) * (to - from));
        }
        double hours = 20 * Math.pow(200 / (20 * watts), k) * integral;

        Run run = new Discharge(bank, NO_RESISTANCE)
                .run(Demand.steady(new Power(watts)), Ratio.WHOLE, to(0), Pauses.RECOVER);

        assertThat(run.time().hours()).isCloseTo(hours, within(hours * 1e-7));
        assertThat(run.ending()).isEqualTo(Ending.RESERVE);
    }

    /**
     * A power at a voltage that hardly moves: V = (E + √(E² − 4 R P)) / 2 and I = P / V (Ohm's law), the time by Peukert's
     * law in its form for an H-hour rating (general encyclopaedia, from memory). To 0.1 %.
     */
    @ParameterizedTest
    @CsvSource({"1.0, 0.004, 800", "1.2, 0.004, 800", "1.25, 0.01, 1500", "1.12, 0.02, 400"})
    void aSteadyPowerAtAFixedVoltage(double k, double ohms, double watts) {
        SourceBank bank = ideal(200, 20, k);
        double e = bank.rest().at(new Ratio(0.9995)).volts();
        double amperes = watts / ((e + Math.sqrt(e * e - 4 * ohms * watts)) / 2);
        double hours = 20 * Math.pow(200 / (20 * amperes), k);

        Run run = new Discharge(bank, new Resistance(ohms))
                .run(Demand.steady(new Power(watts)), Ratio.WHOLE, to(0.999), Pauses.RECOVER);

        assertThat(run.time().hours() * 1000).isCloseTo(hours, within(hours * 0.001));
    }

    /**
     * A resistor draws I = E / (R + r), so without Peukert's law t = C (R + r) ∫ ds / E, a logarithm between the bends of
     * the curve (Ohm's law, calculus). Run as a thousand short loads of the power that the resistor takes at the middle of
     * each. To 0.1 %.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0.01", "0.1, 0.005", "5, 0.02"})
    void aResistorAcrossTheBank(double load, double path) {
        SourceBank bank = ideal(100, 20, 1);
        List<Ratio> bends = bank.rest().bends();
        double integral = 0;
        for (int i = 1; i < bends.size(); i++) {
            double from = bank.rest().at(bends.get(i - 1)).volts();
            double to = bank.rest().at(bends.get(i)).volts();
            double width = bends.get(i).fraction() - bends.get(i - 1).fraction();
            integral += width * Math.log(to / from) / (to - from);
        }
        double hours = 100 * (load + path) * integral;

        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            double amperes = bank.rest().at(new Ratio((i + 0.5) / 1000)).volts() / (load + path);
            Demand slice = Demand.steady(new Power(amperes * amperes * load));
            sum += new Discharge(bank, new Resistance(path))
                    .run(slice, new Ratio((i + 1) / 1000.0), to(i / 1000.0), Pauses.RECOVER)
                    .time()
                    .hours();
        }

        assertThat(sum).isCloseTo(hours, within(hours * 0.001));
    }

    @Nested
    class FromSeveralCharges {

        private static final List<Ratio> TENTHS = IntStream.rangeClosed(0, 10)
                .mapToObj(tenth -> new Ratio(1 - tenth / 10.0))
                .toList();

        /** One integration for all gives what one each gives, and from less never lasts longer. */
        @ParameterizedTest
        @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
        void areTheSameRuns(long seed) {
            DrawnSystem it = DrawnSystem.of(seed);
            List<Run> runs = it.discharge().runs(it.demand(), TENTHS, it.limits(), Pauses.RECOVER);
            for (int i = 0; i < TENTHS.size(); i++) {
                Run alone = it.discharge().run(it.demand(), TENTHS.get(i), it.limits(), Pauses.RECOVER);
                assertThat(runs.get(i).time().hours())
                        .isCloseTo(alone.time().hours(), within(alone.time().hours() * 1e-6));
                assertThat(runs.get(i).ending()).isEqualTo(alone.ending());
                assertThat(runs.get(i).endsAt()).isEqualTo(alone.endsAt());
            }
            assertThat(runs.stream().map(run -> run.time().seconds()))
                    .isSortedAccordingTo(java.util.Comparator.reverseOrder());
        }

        /** Stretches cut in twenty change nothing that is printed. */
        @ParameterizedTest
        @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
        void shorterStretchesChangeNothingPrinted(long seed) {
            DrawnSystem it = DrawnSystem.of(seed);
            List<Ratio> many = IntStream.rangeClosed(0, 200)
                    .mapToObj(part -> new Ratio(1 - part / 200.0))
                    .toList();
            Run fine = it.discharge()
                    .runs(it.demand(), many, it.limits(), Pauses.DO_NOT_RECOVER)
                    .get(0);
            assertThat(printed(fine)).isEqualTo(printed(it.run(Pauses.DO_NOT_RECOVER)));
        }

        private static String printed(Run run) {
            return Words.of("en-GB").numbers().say(run.time(), Rounding.DOWN) + " "
                    + Words.of("en-GB").numbers().say(run.energy(), Rounding.UP);
        }

        /** An empty bank, a bank below its reserve, a load above collapse: no time, and the reason. */
        @Test
        void fromBelowTheEndLastsNoTime() {
            SourceBank bank = ideal(100, 20, 1.2);
            Discharge discharge = new Discharge(bank, new Resistance(0.01));
            Demand small = Demand.steady(new Power(50));
            assertThat(discharge.runs(
                            small, List.of(Ratio.NONE, new Ratio(0.2), new Ratio(0.5)), to(0.5), Pauses.RECOVER))
                    .allSatisfy(run -> {
                        assertThat(run.time().seconds()).isZero();
                        assertThat(run.ending()).isEqualTo(Ending.RESERVE);
                    });
            assertThat(discharge.runs(Demand.steady(new Power(1e6)), TENTHS, to(0), Pauses.RECOVER))
                    .allSatisfy(run -> {
                        assertThat(run.time().seconds()).isZero();
                        assertThat(run.ending()).isEqualTo(Ending.CUT_OUT);
                    });
        }
    }

    /** Time, end and energies of 200 systems by another road: the integrator of an open mathematics library. */
    @Nested
    class AgainstAnIntegrator {

        @ParameterizedTest
        @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
        void agrees(long seed) {
            DrawnSystem system = DrawnSystem.of(seed);
            Pauses pauses = seed % 2 == 0 ? Pauses.RECOVER : Pauses.DO_NOT_RECOVER;
            Run run = system.run(pauses);
            DischargeByIntegrator.Course course = new DischargeByIntegrator(system, pauses).run();

            assertThat(run.ending()).isEqualTo(course.ending());
            assertThat(run.time().hours()).isCloseTo(course.hours(), within(course.hours() * 1e-5 + 1e-9));
            assertThat(run.endsAt().fraction()).isCloseTo(course.endsAt(), within(1e-5));
            assertThat(run.drawn().ampereHours()).isCloseTo(course.drawn(), within(course.drawn() * 1e-5 + 1e-9));
            assertThat(run.energy().wattHours()).isCloseTo(course.energy(), within(course.energy() * 1e-5 + 1e-9));
        }

        /** What leaves the cells heats bank and cables or reaches the inverter: energy is conserved. */
        @ParameterizedTest
        @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
        void energyIsConserved(long seed) {
            DrawnSystem system = DrawnSystem.of(seed);
            Run run = system.run(Pauses.RECOVER);
            DischargeByIntegrator.Course course = new DischargeByIntegrator(system, Pauses.RECOVER).run();

            double balance = course.losses() + course.load();
            assertThat(run.energy().wattHours()).isCloseTo(balance, within(balance * 1e-5 + 1e-9));
        }

        /** The lots are worth drawing: every ending occurs, and some loads never start. */
        @Test
        void everyEndingIsDrawn() {
            List<Run> runs = DrawnSystem.seeds()
                    .mapToObj(seed -> DrawnSystem.of(seed).run(Pauses.RECOVER))
                    .toList();
            assertThat(runs).extracting(Run::ending).contains(Ending.values());
            assertThat(runs).anyMatch(run -> run.time().seconds() == 0);
            assertThat(runs).filteredOn(run -> run.time().seconds() > 0).hasSizeGreaterThan(150);
        }
    }

    /** What must hold for every bank and load, whatever the figures. */
    @Nested
    class Monotony {

        private double hours(SourceBank bank, Resistance supply, Demand demand, Limits limits) {
            return new Discharge(bank, supply)
                    .run(demand, Ratio.WHOLE, limits, Pauses.DO_NOT_RECOVER)
                    .time()
                    .hours();
        }

        private SourceBank with(SourceBank bank, double capacity, double resistance) {
            return new SourceBank(
                    bank.rest(),
                    bank.capacity().times(capacity),
                    bank.ratedHours(),
                    bank.peukert(),
                    bank.resistance().times(resistance),
                    bank.riseWhenLow(),
                    bank.lowBelow());
        }

        @ParameterizedTest
        @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
        void neverTheWrongWay(long seed) {
            DrawnSystem it = DrawnSystem.of(seed);
            double base = hours(it.bank(), it.supply(), it.demand(), it.limits());

            assertThat(hours(with(it.bank(), 1.3, 1), it.supply(), it.demand(), it.limits()))
                    .as("more capacity")
                    .isGreaterThanOrEqualTo(base);
            assertThat(hours(it.bank(), it.supply().times(1.5), it.demand(), it.limits()))
                    .as("longer cable")
                    .isLessThanOrEqualTo(base);
            assertThat(hours(with(it.bank(), 0.7, 1.5), it.supply(), it.demand(), it.limits()))
                    .as("worn and cold")
                    .isLessThanOrEqualTo(base);
            Demand more = new Demand(
                    it.demand().working().times(1.2),
                    it.demand().pausing().times(1.2),
                    it.demand().duty());
            assertThat(hours(it.bank(), it.supply(), more, it.limits()))
                    .as("more power")
                    .isLessThanOrEqualTo(base);
            Limits later = new Limits(
                    it.limits().reserve().times(0.5),
                    it.limits().cutOut(),
                    it.limits().protection());
            assertThat(hours(it.bank(), it.supply(), it.demand(), later))
                    .as("smaller reserve")
                    .isGreaterThanOrEqualTo(base);
        }

        /** Peukert's law is convex, so pulses cost at least as much as their mean (Jensen's inequality). */
        @ParameterizedTest
        @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
        void recoveryNeverShortens(long seed) {
            DrawnSystem it = DrawnSystem.of(seed);
            assertThat(it.run(Pauses.RECOVER).time().seconds())
                    .isGreaterThanOrEqualTo(it.run(Pauses.DO_NOT_RECOVER).time().seconds() * (1 - 1e-12));
        }
    }

    @Nested
    class AtTheEdges {

        private final SourceBank bank = new SourceBank(
                new RestVoltage(RestVoltages.standard().of("agm"), 6),
                new Charge(100),
                20,
                1.12,
                new Resistance(0.01),
                1.5,
                new Ratio(0.3));

        private Run run(double watts, Limits limits, Pauses pauses) {
            return new Discharge(bank, new Resistance(0.005))
                    .run(Demand.steady(new Power(watts)), Ratio.WHOLE, limits, pauses);
        }

        /**
         * Ohm's law and the maximum power theorem by hand, E being the rest voltage: down to a limit U through 15 mΩ come
         * U (E - U) / 15 mΩ, and never more than E² / (4 x 15 mΩ).
         */
        @Test
        void theGreatestPowerThatHoldsALimit() {
            Discharge discharge = new Discharge(bank, new Resistance(0.005));
            double rest = bank.rest().at(Ratio.WHOLE).volts();
            Power most = discharge.greatestHolding(Ratio.WHOLE, new Voltage(11));
            assertThat(most.watts()).isCloseTo(11 * (rest - 11) / 0.015, within(1e-9));
            assertThat(discharge.holds(Ratio.WHOLE, most.times(0.9999), new Voltage(11)))
                    .isTrue();
            assertThat(discharge.holds(Ratio.WHOLE, most.times(1.0001), new Voltage(11)))
                    .isFalse();
            assertThat(discharge.greatestHolding(Ratio.WHOLE, new Voltage(2)).watts())
                    .isCloseTo(rest * rest / 0.06, within(1e-9));
            assertThat(discharge
                            .greatestHolding(Ratio.WHOLE, new Voltage(rest + 1))
                            .watts())
                    .isZero();
        }

        @ParameterizedTest
        @EnumSource(Pauses.class)
        void aTinyLoadLastsLongButNotForEver(Pauses pauses) {
            Run run = run(1e-3, to(0), pauses);
            assertThat(run.time().hours()).isBetween(1e6, 1.3e6);
            assertThat(run.drawn().ampereHours()).isCloseTo(100, within(1e-6));
        }

        /** E² / (4 R) of the full bank is 2752 W: the maximum power theorem. */
        @Test
        void aLoadAboveCollapseNeverStarts() {
            Run run = run(3000, to(0), Pauses.RECOVER);
            assertThat(run.time().seconds()).isZero();
            assertThat(run.endsAt()).isEqualTo(Ratio.WHOLE);
            assertThat(run.ending()).isEqualTo(Ending.CUT_OUT);
        }

        @Test
        void aReserveOfNineTenthsLeavesATenth() {
            Run run = run(100, to(0.9), Pauses.RECOVER);
            assertThat(run.time().seconds()).isPositive();
            assertThat(run.endsAt().fraction()).isEqualTo(0.9);
        }

        @Test
        void startingAtTheReserveLastsNoTime() {
            Run run = new Discharge(bank, NO_RESISTANCE)
                    .run(Demand.steady(new Power(10)), new Ratio(0.5), to(0.5), Pauses.RECOVER);
            assertThat(run.time().seconds()).isZero();
            assertThat(run.ending()).isEqualTo(Ending.RESERVE);
        }

        @Test
        void aVoltageThatIsNeverOrAlwaysReached() {
            Discharge discharge = new Discharge(bank, NO_RESISTANCE);
            assertThat(discharge.lowestHolding(new Power(10), new Voltage(20))).isEmpty();
            assertThat(discharge.lowestHolding(new Power(10), new Voltage(5))).contains(Ratio.NONE);
        }

        /** The resistance jumps at 30 %: a load that only the lower resistance bears ends exactly there. */
        @Test
        void theJumpOfTheResistanceEndsALoad() {
            Discharge discharge = new Discharge(bank, new Resistance(0.005));
            Power load = new Power(900);
            Voltage above = discharge.at(new Ratio(0.3), load).orElseThrow().voltage();
            Voltage below = discharge.at(new Ratio(0.2999), load).orElseThrow().voltage();
            Voltage between = above.plus(below).dividedBy(2);
            Run run = discharge.run(
                    Demand.steady(load), Ratio.WHOLE, new Limits(Ratio.NONE, between, null), Pauses.RECOVER);
            assertThat(run.endsAt().fraction()).isCloseTo(0.3, within(1e-12));
            assertThat(run.ending()).isEqualTo(Ending.CUT_OUT);
        }

        @Test
        void theProtectionOpensFirst() {
            Run run = run(500, new Limits(Ratio.NONE, new Voltage(9), new Voltage(11.5)), Pauses.RECOVER);
            assertThat(run.ending()).isEqualTo(Ending.PROTECTION);
        }
    }

    /** Worked here from the same law: pins the implementation, no independent proof. */
    @Nested
    class Pinned {

        /** 2000 W at 12.0 V and 0.90 for 3 min on 100 Ah at 20 h, k = 1.25. */
        @Test
        void shortHeavyUse() {
            double amperes = 2000 / 0.9 / 12;
            double equivalent = ideal(100, 20, 1.25)
                    .equivalent(new org.quaybook.quantity.Current(amperes))
                    .amperes();
            assertThat(amperes).isCloseTo(185.19, within(0.01));
            assertThat(equivalent * 0.05).isCloseTo(22.84, within(0.02));
            assertThat(50 / (equivalent * 0.05)).isCloseTo(2.19, within(0.005));
        }

        /** Flooded block, 10 mΩ, cut-out 10.8 V, efficiency 0.90. */
        @ParameterizedTest
        @CsvSource({"800, 17.5", "1000, 31.3", "1200, 45.3", "1500, 67.9"})
        void stateOfChargeAtCutOut(double watts, double percent) {
            SourceBank bank = ideal(100, 20, 1.25);
            Ratio lowest = new Discharge(bank, new Resistance(0.01))
                    .lowestHolding(new Power(watts / 0.9), new Voltage(10.8))
                    .orElseThrow();
            assertThat(lowest.fraction() * 100).isCloseTo(percent, within(0.1));
        }

        @Test
        void twoKilowattsCutOutEvenWhenFull() {
            assertThat(new Discharge(ideal(100, 20, 1.25), new Resistance(0.01))
                            .lowestHolding(new Power(2000 / 0.9), new Voltage(10.8)))
                    .isEmpty();
        }
    }
}
