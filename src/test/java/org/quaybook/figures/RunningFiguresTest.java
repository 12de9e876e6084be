package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.calc.Demand;
import org.quaybook.calc.Discharge;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.calc.Ending;
import org.quaybook.calc.Limits;
import org.quaybook.figures.ApplianceFigures.Verdict;
import org.quaybook.figures.RunningFigures.FromRow;
import org.quaybook.figures.RunningFigures.Warning;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;

/** Running times from lower charges, as a range, after the alarm, of several at once, in a hot place, and as a wish. */
class RunningFiguresTest {

    private static final String LITHIUM = "lantern-moth";
    private static final String GLASS_MAT = "second-biscuit";
    private static final String VENTED = "persimmon-tug";
    private static final String HEAT_GUN = "name: Heat gun, power: 700 W (plate),";
    private static final String HOT = "  where: deckhouse, aft";

    private static RunningFigures heatGun(String... replacements) {
        return ChangedDemo.of(GLASS_MAT, replacements)
                .figures()
                .appliances()
                .get(0)
                .running();
    }

    private static double seconds(Figure<org.quaybook.quantity.TimeSpan> figure) {
        return figure.value().seconds();
    }

    /** What must hold for every load of every demo, as it is and made worse. */
    @ParameterizedTest
    @CsvSource({
        "lantern-moth, 3.2 kW, 3.2 kW",
        "second-biscuit, 800 W, 800 W",
        "persimmon-tug, 2.0 kW, 2.0 kW",
        "second-biscuit, alarm: 11.5 V, alarm: 12.6 V",
        "second-biscuit, reserve: 50 %, reserve: 90 %",
        "second-biscuit, reserve: 50 %, reserve: 0 %",
        "persimmon-tug, cut-out: 21.0 V, cut-out: 21.9 V",
        "second-biscuit, cut-out: 10.5 V, cut-out: 11.4 V"
    })
    void holdsForEveryLoad(String demo, String found, String instead) {
        assertSound(ChangedDemo.of(demo, found, instead).figures());
    }

    /** The same for sloops drawn by lot: empty or huge banks, loads that collapse them, wishes of all lengths. */
    @ParameterizedTest
    @MethodSource("seeds")
    void holdsForSloopsDrawnByLot(long seed) {
        Figures figures = drawn(seed, 1, 1, 25);
        assertSound(figures);
        assertNotLonger(drawn(seed, 0.8, 1, 25), figures, "less capacity");
        assertNotLonger(drawn(seed, 1, 1.5, 25), figures, "longer cables");
        assertNotLonger(drawn(seed, 1, 1, -10), figures, "colder");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static Figures drawn(long seed, double capacity, double length, int celsius) {
        SplittableRandom lot = new SplittableRandom(seed);
        double cutOut = 9.5 + lot.nextDouble() * 2.5;
        return ChangedDemo.of(
                        GLASS_MAT,
                        "capacity: 115 Ah",
                        number("capacity: %.3f Ah", logarithmic(lot, 5, 2000) * capacity),
                        "resistance: 11 mΩ",
                        number("resistance: %.4f mΩ", logarithmic(lot, 0.1, 100)),
                        "parallel: 3",
                        "parallel: " + lot.nextInt(1, 12),
                        "reserve: 50 %",
                        "reserve: " + lot.nextInt(0, 91) + " %",
                        "temperature: 10 °C",
                        "temperature: " + celsius + " °C",
                        "alarm: 11.5 V",
                        number("alarm: %.3f V", cutOut + lot.nextDouble() * 0.9),
                        "cut-out: 10.5 V",
                        number("cut-out: %.3f V\n  locker: " + lot.nextInt(0, 80) + " °C", cutOut),
                        "restart: 12.4 V",
                        "restart: 12.9 V",
                        "length: 4.6 m",
                        number("length: %.3f m", 4.6 * length),
                        "length: 4.8 m",
                        number("length: %.3f m", 4.8 * length),
                        "power: 700 W (plate),",
                        number(
                                "power: %.3f W (plate), wished-time: " + lot.nextInt(1, 3000) + " min,",
                                logarithmic(lot, 5, 1000)))
                .figures();
    }

    private static String number(String form, double value) {
        return String.format(Locale.ROOT, form, value);
    }

    private static double logarithmic(SplittableRandom lot, double least, double most) {
        return least * Math.pow(most / least, lot.nextDouble());
    }

    private static void assertNotLonger(Figures worse, Figures better, String how) {
        for (int i = 0; i < better.appliances().size(); i++) {
            assertThat(worse.appliances().get(i).time().value())
                    .as(how)
                    .isLessThanOrEqualTo(better.appliances().get(i).time().value());
            assertThat(worse.appliances().get(i).wornTime().value())
                    .as(how + ", worn")
                    .isLessThanOrEqualTo(better.appliances().get(i).wornTime().value());
        }
    }

    private static void assertSound(Figures figures) {
        List<RunningFigures> all = new ArrayList<>();
        figures.appliances().forEach(it -> all.add(it.running()));
        figures.groups().forEach(it -> all.add(it.running()));
        Ratio reserve = figures.bank().reserve().value();
        for (RunningFigures it : all) {
            it.range().ifPresent(range -> {
                assertThat(range.least().value()).isLessThanOrEqualTo(it.time().value());
                assertThat(range.most().value())
                        .isGreaterThanOrEqualTo(it.time().value());
            });
            assertThat(it.range().isPresent()).isEqualTo(seconds(it.time()) > 0);
            assertThat(it.from())
                    .allSatisfy(row -> assertThat(row.stateOfCharge()).isGreaterThan(reserve));
            assertThat(it.from().stream().map(row -> row.time().value()))
                    .isSortedAccordingTo(Comparator.reverseOrder())
                    .allSatisfy(time ->
                            assertThat(time).isLessThanOrEqualTo(it.time().value()));
            assertThat(it.from().stream()
                            .map(FromRow::voltage)
                            .flatMap(Optional::stream)
                            .map(Figure::value))
                    .isSortedAccordingTo(Comparator.reverseOrder())
                    .allSatisfy(volts -> assertThat(volts)
                            .isLessThanOrEqualTo(
                                    it.runningVoltage().orElseThrow().value()));
            it.warning()
                    .flatMap(Warning::toPlanOn)
                    .ifPresent(left -> assertThat(left.value())
                            .isLessThanOrEqualTo(
                                    it.warning().orElseThrow().time().value()));
            it.wish()
                    .ifPresent(wish -> assertThat(wish.granted())
                            .isEqualTo(
                                    it.wornTime().value().compareTo(wish.time().value()) >= 0));
        }
    }

    /** Two of three quarters of a lithium bank give as much less as their charge, the voltage being nearly level. */
    @Test
    void fromLessLastsLessInProportion() {
        RunningFigures ring =
                ChangedDemo.of(LITHIUM).figures().appliances().get(0).running();
        FromRow half = ring.from().stream()
                .filter(row -> row.stateOfCharge().fraction() == 0.5)
                .findFirst()
                .orElseThrow();
        assertThat(seconds(half.time()) / seconds(ring.time())).isCloseTo(0.3 / 0.8, within(0.01));
    }

    @Nested
    class AsARange {

        /**
         * Without Peukert's law and far from the cut-out t = C U / P, so the relative spreads of capacity (10 %, plate) and
         * power (5 %, measured) add as squares (GUM 5.1.6): 11.2 % of the dehumidifier's time.
         */
        @Test
        void ofAQuotient() {
            RunningFigures it =
                    ChangedDemo.of(LITHIUM).figures().appliances().get(4).running();
            double relative = Math.sqrt(0.1 * 0.1 + 0.05 * 0.05);
            double time = seconds(it.time());
            assertThat(1 - seconds(it.range().orElseThrow().least()) / time).isCloseTo(relative, within(0.004));
            assertThat(seconds(it.range().orElseThrow().most()) / time - 1).isCloseTo(relative, within(0.004));
        }

        /** The better the inputs are known, the narrower. */
        @Test
        void isNarrowerWhereMoreIsMeasured() {
            double plate = width(heatGun());
            double measured = width(heatGun(
                    "capacity: 115 Ah (plate)", "capacity: 115 Ah (measured)", "700 W (plate)", "700 W (measured)"));
            double assumed = width(heatGun(
                    "capacity: 115 Ah (plate)", "capacity: 115 Ah (assumed)", "700 W (plate)", "700 W (assumed)"));
            assertThat(measured).isLessThan(plate);
            assertThat(plate).isLessThan(assumed);
        }

        private double width(RunningFigures it) {
            return seconds(it.range().orElseThrow().most())
                    - seconds(it.range().orElseThrow().least());
        }

        /** A load that only just runs may not run at all. */
        @Test
        void mayBeginAtNothing() {
            RunningFigures it = heatGun("alarm: 11.5 V", "alarm: 11.9 V", "cut-out: 10.5 V", "cut-out: 11.9 V");
            assertThat(seconds(it.time())).isPositive();
            assertThat(seconds(it.range().orElseThrow().least())).isZero();
        }
    }

    @Nested
    class AfterTheAlarm {

        /** From full to the dark is from full to the alarm and from there to the dark. */
        @Test
        void isTheRestOfTheTime() {
            ChangedDemo job = ChangedDemo.of(GLASS_MAT);
            Figures figures = job.figures();
            RunningFigures it = figures.appliances().get(0).running();
            Discharge now = new Discharge(
                    figures.bank().asItIs(), figures.supply().resistance().value());
            Demand demand = Demand.steady(figures.appliances().get(0).load().value());
            Limits dark = new Limits(Ratio.NONE, figures.inverter().cutOut().value(), null);
            Limits alarm = new Limits(
                    it.alarmBelow().orElseThrow().value(),
                    figures.inverter().cutOut().value(),
                    null);
            double toTheDark =
                    now.run(demand, Ratio.WHOLE, dark, Pauses.RECOVER).time().seconds();
            double toTheAlarm =
                    now.run(demand, Ratio.WHOLE, alarm, Pauses.RECOVER).time().seconds();
            assertThat(seconds(it.warning().orElseThrow().time()))
                    .isCloseTo(toTheDark - toTheAlarm, within(toTheDark * 1e-6));
            assertThat(it.warning().orElseThrow().ending()).isEqualTo(Ending.CUT_OUT);
            assertThat(it.warning().orElseThrow().aboveReserve()).isTrue();
        }

        @Test
        void anAlarmThatWaitsWarnsLater() {
            double atOnce = seconds(heatGun().warning().orElseThrow().time());
            RunningFigures late = heatGun("alarm: 11.5 V", "alarm: 11.5 V\n  alarm-delay: 10 s");
            assertThat(seconds(late.warning().orElseThrow().time())).isCloseTo(atOnce - 10, within(1e-6));
            assertThat(seconds(heatGun(
                                    "alarm: 11.5 V",
                                    "alarm: 10.5 V\n  alarm-delay: 600 s",
                                    "cut-out: 10.5",
                                    "cut-out: 10.4")
                            .warning()
                            .orElseThrow()
                            .time()))
                    .isNotNegative();
        }

        /** A heavy load's alarm that comes below the reserve only, and a light one's that never comes. */
        @Test
        void soundsOnlyBelowTheReserve() {
            Figures figures = ChangedDemo.of(VENTED).figures();
            assertThat(figures.groups().get(0).running().warning().orElseThrow().aboveReserve())
                    .isFalse();
            assertThat(figures.appliances().get(0).running().warning())
                    .as("not even when empty")
                    .isEmpty();
        }

        /** A load that only the bank of today carries warns as that bank lets it; no such time is one to plan on. */
        @Test
        void ofALoadThatTheWornBankCannotCarry() {
            Figures figures = ChangedDemo.of(
                            GLASS_MAT, "alarm: 11.5 V", "alarm: 11.9 V", "cut-out: 10.5 V", "cut-out: 11.85 V")
                    .figures();
            ApplianceFigures it = figures.appliances().get(0);
            assertThat(it.verdict()).isEqualTo(Verdict.NOT_WHEN_WORN);
            assertThat(it.running().warning().orElseThrow().wornTime()).isEmpty();
            assertThat(seconds(it.running().warning().orElseThrow().time())).isPositive();
            assertThat(it.running().warning().orElseThrow().toPlanOn()).isEmpty();
        }

        @Test
        void whatCannotRunDoesNotWarn() {
            assertThat(heatGun("power: 700 W", "power: 801 W").warning()).isEmpty();
        }
    }

    @Nested
    class InTheHeat {

        /** 2 % for each of 10 K above 40 °C (from memory): a fifth less. */
        @Test
        void givesLess() {
            ChangedDemo job = ChangedDemo.of(VENTED, HOT, "  locker: 50 °C\n" + HOT);
            assertThat(job.value("inverter.continuous-hot")).isCloseTo(1600, within(1e-9));
            assertThat(job.value("inverter.short-time-hot")).isCloseTo(3200, within(1e-9));
            assertThat(job.value("inverter.full-input"))
                    .as("conductors bear the rated output")
                    .isEqualTo(ChangedDemo.of(VENTED).value("inverter.full-input"));
            assertThat(job.figures().appliances().get(2).verdict()).isEqualTo(Verdict.START_TOO_LARGE);
        }

        @Test
        void asTheMakerSays() {
            assertThat(ChangedDemo.of(
                                    VENTED,
                                    HOT,
                                    "  locker: 50 °C\n  derate-above: 45 °C\n  derate-per-kelvin: 1 %\n" + HOT)
                            .value("inverter.continuous-hot"))
                    .isCloseTo(1900, within(1e-9));
        }

        @Test
        void neverLessThanNothing() {
            Figures figures = ChangedDemo.of(VENTED, HOT, "  locker: 80 °C\n  derate-per-kelvin: 10 %\n" + HOT)
                    .figures();
            assertThat(figures.inverter().output().value().watts()).isZero();
            assertThat(figures.appliances())
                    .extracting(ApplianceFigures::verdict)
                    .containsOnly(Verdict.TOO_LARGE);
        }

        @ParameterizedTest
        @ValueSource(strings = {"40 °C", "-5 °C", "not seen"})
        void isNoMatterBelow(String locker) {
            InverterFigures inverter = ChangedDemo.of(VENTED, HOT, "  locker: " + locker + "\n" + HOT)
                    .figures()
                    .inverter();
            assertThat(inverter.continuousHot()).isEmpty();
            assertThat(inverter.output()).isEqualTo(inverter.continuous());
        }
    }

    @Nested
    class Starts {

        private static final String DELAYS = "  cut-out-delay: 2 s\n  cut-out-at-once: 19.0 V\n";

        /** The grinder starts in 300 ms: the inverter waits 2 s unless the voltage falls to 19.0 V. */
        @Test
        void shorterThanTheDelayNeedHoldLess() {
            ApplianceFigures now = ChangedDemo.of(VENTED).figures().appliances().get(2);
            ApplianceFigures waits = ChangedDemo.of(VENTED, HOT, DELAYS + HOT)
                    .figures()
                    .appliances()
                    .get(2);
            assertThat(now.startLimit().key()).isEqualTo("inverter.cut-out");
            assertThat(waits.startLimit().key()).isEqualTo("inverter.cut-out-at-once");
            assertThat(waits.startsDownTo().orElseThrow().value())
                    .isLessThan(now.startsDownTo().orElseThrow().value());
        }

        @ParameterizedTest
        @CsvSource({
            "start-time: 300 ms, start-time: 2 s",
            "'start-time: 300 ms, ', ''",
            "cut-out-at-once: 19.0 V, cut-out-at-once: not seen",
            "cut-out-delay: 2 s, cut-out-delay: not seen"
        })
        void holdTheCutOutWhereAnythingIsMissing(String found, String instead) {
            ApplianceFigures it = ChangedDemo.of(VENTED, HOT, DELAYS + HOT, found, instead)
                    .figures()
                    .appliances()
                    .get(2);
            assertThat(it.startLimit().key()).isEqualTo("inverter.cut-out");
        }

        /** At the lowest charge it may start at, U I is the power asked for and E − U falls over the resistance. */
        @Test
        void drawTheCurrentOfTheWorkingPoint() {
            Figures figures = ChangedDemo.of(VENTED).figures();
            ApplianceFigures it = figures.appliances().get(2);
            double amperes = it.startCurrent().orElseThrow().value().amperes();
            double volts = it.startLoad().value().watts() / amperes;
            double ohms = figures.bank().resistance().value().ohms()
                    + figures.supply().resistance().value().ohms();
            assertThat(volts + amperes * ohms)
                    .isCloseTo(figures.bank().restAtReserve().value().volts(), within(1e-9));
        }

        /** The string with the largest share opens first: 200 A of one block at a share of 36 % are 550 A of the bank. */
        @Test
        void theHardestWorkedStringOpensFirst() {
            ChangedDemo job = ChangedDemo.of(LITHIUM, "discharge: 150 A", "peak: 200 A\n    discharge: 150 A");
            assertThat(job.value("bank.protection-peak")).isCloseTo(200 / job.value("bank.worst-share"), within(1e-9));
            assertThat(job.value("bank.protection-peak")).isLessThan(600);
        }
    }

    @Nested
    class Together {

        private static final String PAIR = "\ntogether:\n  - { appliances: [Heat gun, Sewing machine] }\n\ntests:";

        /** Two that run without a pause are one of their power. */
        @Test
        void areOneLoadOfTheirSum() {
            GroupFigures both = ChangedDemo.of(GLASS_MAT, "\ntests:", PAIR)
                    .figures()
                    .groups()
                    .get(0);
            ApplianceFigures one = ChangedDemo.of(GLASS_MAT, "power: 700 W", "power: 790 W")
                    .figures()
                    .appliances()
                    .get(0);
            assertThat(both.power().value()).isEqualTo(new Power(790));
            assertThat(both.startPower().value()).isEqualTo(new Power(880));
            assertThat(both.verdict()).isEqualTo(Verdict.RUNS);
            assertThat(seconds(both.running().time())).isCloseTo(seconds(one.time()), within(1e-6));
            assertThat(seconds(both.running().wornTime())).isCloseTo(seconds(one.wornTime()), within(1e-6));
            assertThat(both.running().alarmBelow().orElseThrow().value())
                    .isEqualTo(one.alarmBelow().orElseThrow().value());
        }

        @Test
        void lastNoLongerThanTheThirstiestAlone() {
            Figures figures = ChangedDemo.of(LITHIUM).figures();
            GroupFigures group = figures.groups().get(0);
            assertThat(group.names()).containsExactly("Washing machine", "Dehumidifier");
            assertThat(group.members())
                    .allSatisfy(member -> assertThat(group.running().time().value())
                            .isLessThan(member.time().value()));
        }

        @Test
        void needTwoDifferentAppliances() {
            assertThat(ChangedDemo.of(LITHIUM, "[Washing machine, Dehumidifier]", "[Dehumidifier]")
                            .figures()
                            .groups())
                    .isEmpty();
        }
    }

    @Nested
    class AsAWish {

        private String[] wished(String time, String... more) {
            List<String> all = new ArrayList<>(List.of(HEAT_GUN, HEAT_GUN + " wished-time: " + time + ","));
            all.addAll(List.of(more));
            return all.toArray(String[]::new);
        }

        private RunningFigures.Wished wish(String time, String... more) {
            return heatGun(wished(time, more)).wish().orElseThrow();
        }

        /** The strings that would do, fitted, do; one fewer does not. */
        @ParameterizedTest
        @ValueSource(strings = {"20 min", "80 min", "2 h", "3 h", "9 h"})
        void theStringsThatWouldDoDo(String time) {
            int strings = (int) wish(time)
                    .strings()
                    .map(Figure::value)
                    .map(Count::number)
                    .orElseThrow()
                    .doubleValue();
            assertThat(wish(time, "parallel: 3", "parallel: " + strings).granted())
                    .isTrue();
            if (strings > 1) {
                assertThat(wish(time, "parallel: 3", "parallel: " + (strings - 1))
                                .granted())
                        .isFalse();
            }
        }

        /** Blocks of that capacity with the resistance of today give the wish to the second. */
        @ParameterizedTest
        @CsvSource({"80 min, 4800", "2 h, 7200", "3 h, 10800"})
        void theCapacityThatWouldDoGivesTheTime(String time, double due) {
            double ampereHours = wish(time).capacity().orElseThrow().value().ampereHours() / 3;
            RunningFigures larger =
                    heatGun("capacity: 115 Ah", String.format(java.util.Locale.ROOT, "capacity: %.6f Ah", ampereHours));
            assertThat(seconds(larger.wornTime())).isCloseTo(due, within(0.01));
        }

        /** Where the voltage ends it, the conductor that would do does, and the next smaller one does not. */
        @Test
        void theCableThatWouldDoDoes() {
            String[] cutOut = {"cut-out: 10.5 V", "cut-out: 11.4 V"};
            RunningFigures.Wished wish = wish("80 min", cutOut);
            assertThat(wish.granted()).isFalse();
            assertThat(wish.conductor().orElseThrow()).hasToString("50 mm²");
            assertThat(wish("80 min", cutOut[0], cutOut[1], "fitted: 25", "fitted: 50", "fitted: 25", "fitted: 50")
                            .granted())
                    .isTrue();
            assertThat(wish("80 min", cutOut[0], cutOut[1], "fitted: 25", "fitted: 35", "fitted: 25", "fitted: 35")
                            .granted())
                    .isFalse();
        }

        /** Where the reserve ends it a cable gains nothing worth telling; beyond that not even a perfect one does. */
        @Test
        void noCableHelps() {
            assertThat(wish("3 h").resistance()).isEmpty();
            assertThat(wish("3 h", "cut-out: 10.5 V", "cut-out: 11.4 V").resistance())
                    .isEmpty();
        }

        @Test
        void whatTheInverterCannotGiveNoBankHelps() {
            RunningFigures.Wished wish = wish("3 h", "power: 700 W", "power: 801 W");
            assertThat(wish.granted()).isFalse();
            assertThat(wish.strings()).isEmpty();
            assertThat(wish.capacity()).isEmpty();
            assertThat(wish.resistance()).isEmpty();
        }
    }

    /** One block, and forty: every figure is a finite number, which {@code Quantity} makes sure of, and times are right. */
    @Nested
    class Extremes {

        @Test
        void oneBlock() {
            Figures figures =
                    ChangedDemo.of(GLASS_MAT, "parallel: 3", "parallel: 1").figures();
            assertThat(figures.appliances().get(3).time().value().seconds()).isPositive();
        }

        @Test
        void fortyBlocks() {
            Figures figures = ChangedDemo.of(
                            GLASS_MAT,
                            "series: 1",
                            "series: 4",
                            "parallel: 3",
                            "parallel: 10",
                            "alarm: 11.5 V",
                            "alarm: 46.0 V",
                            "cut-out: 10.5 V",
                            "cut-out: 42.0 V",
                            "restart: 12.4 V",
                            "restart: 49.6 V")
                    .figures();
            double time = figures.appliances().get(0).time().value().seconds();
            double three = ChangedDemo.of(GLASS_MAT)
                    .figures()
                    .appliances()
                    .get(0)
                    .time()
                    .value()
                    .seconds();
            assertThat(time / three)
                    .as("at least as many times as there are blocks, and Peukert's gain")
                    .isGreaterThan(40.0 / 3);
        }

        @ParameterizedTest
        @ValueSource(strings = {"0.5 W", "50 kW"})
        void theSmallestAndTheLargestLoad(String power) {
            RunningFigures it = heatGun("power: 700 W", "power: " + power);
            assertThat(seconds(it.time())).isNotNegative();
            assertThat(it.ending()).isNotNull();
        }
    }
}
