package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Conductors;
import org.quaybook.reference.NotInTable;
import org.quaybook.reference.Rulebook;

class RunRatingTest {

    private static final Conductors COPPER = Conductors.standard();
    private static final Voltage TWELVE = new Voltage(12);

    private static RunConditions laid(double metres, double insulation, boolean engineSpace, int bundled) {
        return new RunConditions(new Length(metres), new Temperature(insulation), engineSpace, bundled, true);
    }

    private static RunRating rate(String conductor, RunConditions conditions, double amperes, String rules) {
        return RunRating.of(
                Conductor.parse(conductor).orElseThrow(),
                conditions,
                RunCurrent.of(new Current(amperes)),
                TWELVE,
                Rulebook.named(rules),
                COPPER);
    }

    /**
     * 33 CFR 183.425 table 5 with its notes (seen): 2/0 AWG of 105 °C carries 330 A, in an engine space 0.85 of it. A
     * boat-cable table prints 280 A. Bundles do not count below 50 V there.
     */
    @Test
    void americanAmpacity() {
        assertThat(rate("2/0 AWG", laid(1, 105, false, 1), 100, "abyc-e11")
                        .allowed()
                        .amperes())
                .isCloseTo(330, within(0.5));
        assertThat(rate("2/0 AWG", laid(1, 105, true, 1), 100, "abyc-e11")
                        .allowed()
                        .amperes())
                .isCloseTo(280.5, within(0.5));
        assertThat(rate("2 x 2/0 AWG", laid(1, 105, false, 1), 100, "abyc-e11")
                        .allowed()
                        .amperes())
                .isCloseTo(660, within(1.0));
    }

    /** ISO 10133 annex, E = 0.0164 I L / S (formula seen, numbers our own): 20 A, 10 m out and back, 6 mm². */
    @Test
    void dropByTheEuropeanFormula() {
        RunRating oneWay = rate("6 mm2", laid(5, 70, false, 1), 20, "iso-13297");
        assertThat(2 * oneWay.dropByRule().volts()).isCloseTo(0.5467, within(0.0005));
    }

    /**
     * The American formula CM = 10.75 I L / E (from memory) asks 6271 circular mils for 10 A over 21 ft at 3 % of 12 V;
     * by the SAE areas 12 AWG (5833) is too thin and 10 AWG (9343) does, though the gauge's own 12 AWG has 6530.
     */
    @Test
    void dropByTheAmericanFormulaCountsTheSmallestAreaSold() {
        RunConditions conditions = laid(21 * 0.3048, 105, false, 1);
        assertThat(rate("12 AWG", conditions, 10, "abyc-e11").dropByRule().volts())
                .isGreaterThan(0.36);
        assertThat(rate("10 AWG", conditions, 10, "abyc-e11").dropByRule().volts())
                .isLessThan(0.36);
    }

    /** 3 AWG has no SAE area, so the gauge's own counts: 52 634 circular mils (ASTM B258, from memory). */
    @Test
    void aSizeWithoutSaeAreaCountsAsItsGauge() {
        double drop = rate("3 AWG", laid(0.3048, 105, false, 1), 100, "abyc-e11")
                .dropByRule()
                .volts();
        assertThat(drop).isCloseTo(10.75 * 100 / 52634, within(1e-5));
    }

    /**
     * What ampacity means: at its allowed current a conductor reaches its insulation's temperature, alone, in a bundle
     * and in an engine space (to 3 K, since the printed factors are rounded).
     */
    @ParameterizedTest
    @CsvSource({
        "iso-13297, 70 mm2, 105, false, 1",
        "iso-13297, 70 mm2, 105, false, 5",
        "iso-13297, 25 mm2, 70, true, 1",
        "iso-13297, 25 mm2, 125, true, 8",
        "abyc-e11, 2/0 AWG, 105, true, 1",
        "cabin, 35 mm2, 90, false, 3"
    })
    void theAllowedCurrentWarmsToTheRating(
            String rules, String conductor, double insulation, boolean engineSpace, int bundled) {
        RunConditions conditions = laid(2, insulation, engineSpace, bundled);
        double allowed = rate(conductor, conditions, 1, rules).allowed().amperes();
        assertThat(rate(conductor, conditions, allowed, rules).working().celsius())
                .isCloseTo(insulation, within(3.0));
    }

    /** IEC 60228 prints 0.565 Ω/km for 35 mm² tinned at 20 °C and a factor 0.833 back from 70 °C (seen): 0.678. */
    @Test
    void copperResistsMoreWhenWarm() {
        RunRating rating = rate("35 mm2", laid(1000, 105, false, 1), 1, "iso-13297");
        assertThat(rating.at20().ohms()).isCloseTo(0.565, within(1e-9));
        assertThat(DcRun.resistance(
                                rating.perMetre().value(), rating.conductor(), new Length(1000), new Temperature(70))
                        .ohms())
                .isCloseTo(0.678, within(0.003));
    }

    @Test
    void twoInParallelDropHalf() {
        RunConditions conditions = laid(3, 105, false, 1);
        RunRating one = rate("70 mm2", conditions, 200, "iso-13297");
        RunRating two = rate("2 x 70 mm2", conditions, 200, "iso-13297");
        assertThat(two.dropAt20().volts()).isCloseTo(one.dropAt20().volts() / 2, within(1e-12));
        assertThat(two.dropByRule().volts()).isCloseTo(one.dropByRule().volts() / 2, within(1e-12));
        assertThat(two.allowed().amperes()).isCloseTo(2 * one.allowed().amperes(), within(1e-9));
        assertThat(two.working().celsius()).isLessThan(one.working().celsius());
    }

    /**
     * 33 CFR 183.425 prints 0.85 for 105 °C insulation in an engine space of 50 °C (seen); the root of (105 - 50)/(105 -
     * 30) is 0.856 (Joule's law). Where both hold the smaller decides.
     */
    @Test
    void theAirThatIsWrittenGoesBeforeThatOfTheSpace() {
        RunConditions air = new RunConditions(
                new Length(1), new Temperature(105), false, Optional.of(new Temperature(50)), 1, true);
        assertThat(rate("2/0 AWG", air, 100, "abyc-e11").space().value()).isCloseTo(0.85, within(0.01));
        RunConditions engine =
                new RunConditions(new Length(1), new Temperature(105), true, Optional.of(new Temperature(50)), 1, true);
        assertThat(rate("2/0 AWG", engine, 100, "abyc-e11").space().value()).isEqualTo(0.85);
    }

    /** Joule's law: hotter air never lets more through, air below 30 °C gains nothing, air as hot as the rating ends all. */
    @ParameterizedTest
    @ValueSource(strings = {"iso-13297", "cabin"})
    void hotterAirNeverCarriesMore(String rules) {
        double cooler =
                rate("70 mm2", laid(2, 90, false, 1), 10, rules).allowed().amperes();
        for (double air = -20; air <= 120; air += 5) {
            RunConditions conditions = new RunConditions(
                    new Length(2), new Temperature(90), false, Optional.of(new Temperature(air)), 1, true);
            double here = rate("70 mm2", conditions, 10, rules).allowed().amperes();
            assertThat(here).isLessThanOrEqualTo(cooler);
            cooler = here;
        }
        assertThat(cooler).isZero();
    }

    @Test
    void coolInsulationHasNoPlaceInAnEngineSpace() {
        assertThatThrownBy(() -> rate("70 mm2", laid(1, 60, true, 1), 10, "iso-13297"))
                .isInstanceOf(NotInTable.class);
    }

    /** The size proposed does; the next smaller does not; longer, more current or a smaller limit never a thinner one. */
    @Nested
    class Least {

        static Stream<Arguments> lots() {
            return DrawnSystem.seeds()
                    .boxed()
                    .flatMap(seed -> Stream.of("iso-13297", "abyc-e11", "caravan", "cabin")
                            .map(rules -> Arguments.of(seed, rules)));
        }

        private RunConditions conditions(SplittableRandom lot) {
            return laid(
                    DrawnSystem.logarithmic(lot, 0.2, 15),
                    List.of(70.0, 90.0, 105.0).get(lot.nextInt(3)),
                    false,
                    1 + lot.nextInt(6));
        }

        private Optional<RunRating> least(RunConditions conditions, double amperes, double drop, Rulebook rules) {
            return RunRating.least(
                    conditions, RunCurrent.of(new Current(amperes)), TWELVE, new Voltage(drop), rules, COPPER);
        }

        @ParameterizedTest
        @MethodSource("lots")
        void justDoes(long seed, String name) {
            SplittableRandom lot = new SplittableRandom(seed);
            Rulebook rules = Rulebook.named(name);
            RunConditions conditions = conditions(lot);
            double amperes = DrawnSystem.logarithmic(lot, 5, 600);
            double drop = DrawnSystem.logarithmic(lot, 0.05, 1);
            Optional<RunRating> least = least(conditions, amperes, drop, rules);
            if (least.isEmpty()) {
                ConductorSize largest =
                        rules.ampacity().sizes().get(rules.ampacity().sizes().size() - 1);
                assertThat(RunRating.of(
                                        new Conductor(3, largest),
                                        conditions,
                                        RunCurrent.of(new Current(amperes)),
                                        TWELVE,
                                        rules,
                                        COPPER)
                                .does(new Current(amperes), new Voltage(drop)))
                        .isFalse();
                return;
            }
            RunRating chosen = least.get();
            assertThat(chosen.does(new Current(amperes), new Voltage(drop))).isTrue();
            assertThat(chosen.allowed().amperes()).isGreaterThanOrEqualTo(amperes);
            assertThat(chosen.decidingDrop().volts()).isLessThanOrEqualTo(drop);
            List<ConductorSize> sizes = rules.ampacity().sizes();
            int at = sizes.indexOf(chosen.conductor().size());
            boolean mayBeThinner = at > 0
                    && (chosen.conductor().parallel() == 1
                            || sizes.get(at - 1).compareTo(rules.parallelLeast().value()) >= 0);
            if (mayBeThinner) {
                Conductor thinner = new Conductor(chosen.conductor().parallel(), sizes.get(at - 1));
                assertThat(RunRating.of(thinner, conditions, RunCurrent.of(new Current(amperes)), TWELVE, rules, COPPER)
                                .does(new Current(amperes), new Voltage(drop)))
                        .isFalse();
            }
        }

        @ParameterizedTest
        @MethodSource("lots")
        void neverThinnerForMore(long seed, String name) {
            SplittableRandom lot = new SplittableRandom(seed);
            Rulebook rules = Rulebook.named(name);
            RunConditions conditions = conditions(lot);
            double amperes = DrawnSystem.logarithmic(lot, 5, 300);
            double drop = DrawnSystem.logarithmic(lot, 0.05, 1);
            double copper = copper(least(conditions, amperes, drop, rules));
            RunConditions longer = new RunConditions(
                    new Length(conditions.length().metres() * 1.4),
                    conditions.insulation(),
                    conditions.engineSpace(),
                    conditions.bundled(),
                    conditions.tinned());

            assertThat(copper(least(longer, amperes, drop, rules))).isGreaterThanOrEqualTo(copper);
            assertThat(copper(least(conditions, amperes * 1.4, drop, rules))).isGreaterThanOrEqualTo(copper);
            assertThat(copper(least(conditions, amperes, drop / 1.4, rules))).isGreaterThanOrEqualTo(copper);
        }

        /** Order of proposal: single conductors before two in parallel before three before none. */
        private double copper(Optional<RunRating> least) {
            return least.map(it -> it.conductor().parallel() * 1000
                            + it.conductor().size().area().squareMillimetres())
                    .orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** Worked here from tables that are themselves from memory: pins the implementation, no independent proof. */
    @Nested
    class Pinned {

        /** 70 mm² class 5 tinned (0.277 Ω/km), 206 A, 3 m out and back. */
        @Test
        void realDropAgainstTheFormula() {
            RunRating rating = rate("70 mm2", laid(3, 105, false, 1), 206, "iso-13297");
            assertThat(rating.dropByRule().volts()).isCloseTo(0.1448, within(0.0005));
            assertThat(rating.dropAt20().volts()).isCloseTo(0.1712, within(0.0005));
        }

        @Test
        void anEngineSpaceAsksForTheNextSize() {
            assertThat(rate("70 mm2", laid(1, 105, false, 1), 205.8, "iso-13297")
                            .allowed()
                            .amperes())
                    .isCloseTo(330, within(0.1));
            assertThat(rate("70 mm2", laid(1, 105, true, 1), 205.8, "iso-13297")
                            .allowed()
                            .amperes())
                    .isCloseTo(283.8, within(0.1));
            assertThat(rate("95 mm2", laid(1, 105, true, 1), 205.8, "iso-13297")
                            .allowed()
                            .amperes())
                    .isCloseTo(335.4, within(0.1));
        }
    }
}
