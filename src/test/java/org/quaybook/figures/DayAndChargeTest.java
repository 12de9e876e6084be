package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.figures.AbsenceFigures.Setting;
import org.quaybook.quantity.Ratio;

/**
 * Charging, the usual day, absence, the return of shore power and the generator's size, from the job file to the figures. The
 * expected values are worked by hand from the definitions of power, charge and energy, each beside its check.
 */
class DayAndChargeTest {

    private static final String LITHIUM = "lantern-moth";
    private static final String GLASS_MAT = "second-biscuit";
    private static final String CABIN = "hut-seventeen";
    private static final String AMERICAN = "marmalade-meridian";

    /** Definition of power and power factor: 8 cells of 3.575 V and 50 A, 85 % and 0.95, on 230 V and on 120 V. */
    @Test
    void inputOfACharger() {
        ReturnFigures lithium = ChangedDemo.of(
                        LITHIUM, "  input-limit: 6 A", "  # input-limit: 6 A", "current: 60 A", "current: 50 A")
                .figures()
                .shoreReturn()
                .orElseThrow();
        assertThat(lithium.charger().value().amperes())
                .isCloseTo(8 * 14.3 / 4 * 50 / (0.85 * 0.95 * 230), within(1e-9));
        assertThat(lithium.leftOn().value().amperes()).isCloseTo(240.0 / 230, within(1e-9));
        assertThat(lithium.heater()).contains("Induction ring");
        assertThat(lithium.heating().value().amperes()).isCloseTo(1800.0 / 230, within(1e-9));
        assertThat(lithium.supply().value().amperes()).isEqualTo(6);
        assertThat(lithium.spare().value().amperes()).isZero();
        // What fits takes the supply to the last ampere.
        assertThat(lithium.fits().value().amperes() * 28.6 / (0.85 * 0.95 * 230)
                        + lithium.leftOn().value().amperes())
                .isCloseTo(6, within(1e-9));
        ReturnFigures american =
                ChangedDemo.of(AMERICAN).figures().shoreReturn().orElseThrow();
        assertThat(american.voltage().value().volts()).isEqualTo(120);
    }

    /** The charger's own efficiency and power factor go before the usual ones. */
    @Test
    void aStatedEfficiencyGoesFirst() {
        double usual = ChangedDemo.of(GLASS_MAT).value("charging.shore-charger.input");
        double stated = ChangedDemo.of(GLASS_MAT, "fed-by: shore", "fed-by: shore, efficiency: 95 %, power-factor: 1")
                .value("charging.shore-charger.input");
        assertThat(stated).isCloseTo(usual * 0.85 * 0.95 / 0.95, within(1e-9));
    }

    /** An input limit of 6 A at 230 V: 1380 VA, times 0.85 and 0.95, over 28.6 V are 39 A instead of 60 A. */
    @Test
    void anInputLimitHoldsTheChargerBack() {
        assertThat(ChangedDemo.of(LITHIUM).value("charging.shore-charger.current"))
                .isCloseTo(6 * 230 * 0.85 * 0.95 / 28.6, within(1e-9));
    }

    /**
     * Definition of power: 16 cells of 3.575 V and 50 A through 85 % and 0.95, the freezer's 110 W and the router's 12 W that
     * stay on, and the pump of 1.1 kW starting at 5.5 times.
     */
    @Test
    void sizeOfTheGenerator() {
        GeneratorFigures it = ChangedDemo.of(CABIN).figures().generator().orElseThrow();
        double charger = 57.2 * 50 / (0.85 * 0.95);
        assertThat(it.charger().value().watts()).isCloseTo(charger, within(1e-6));
        assertThat(it.leftOn().value().watts()).isCloseTo(122, within(1e-9));
        assertThat(it.needed().value().watts()).isCloseTo(charger + 122 + 1100, within(1e-6));
        assertThat(it.start().value().watts()).isCloseTo(charger + 122 + 6050, within(1e-6));
        assertThat(it.shortTime().value()).isEqualTo(it.power().value());
        assertThat(it.fits().value().amperes()).isCloseTo((4800 - 122 - 1100) * 0.85 * 0.95 / 57.2, within(1e-6));
        // No charger hangs on it yet: 29.2 V at 12 cells, 1.4 kW kept for the toaster oven, 400 W for the refrigerator;
        // 85 % and 0.95 are common
        // practice.
        assertThat(ChangedDemo.of("marmalade-meridian").value("generator.fits"))
                .isCloseTo(3200 * 0.85 * 0.95 / 29.2, within(1e-6));
        // A small set holds its charger back.
        ChangedDemo small = ChangedDemo.of(CABIN, "power: 4.8 kW", "power: 2 kW");
        assertThat(small.value("charging.generator-charger.current"))
                .isCloseTo(2000 * 0.85 * 0.95 / 57.2, within(1e-6));
        assertThat(small.figures().charging().get(1).toFull().orElseThrow().value())
                .isGreaterThan(ChangedDemo.of(CABIN)
                        .figures()
                        .charging()
                        .get(1)
                        .toFull()
                        .orElseThrow()
                        .value());
    }

    /** What starts hardest while it stays on counts once: the freezer's 110 W six times, the router beside it. */
    @Test
    void whatStaysOnCanStartToo() {
        ChangedDemo job = ChangedDemo.of(CABIN, "name: Well pump, power: 1.1 kW", "name: Well pump, power: 100 W");
        double charger = 57.2 * 50 / (0.85 * 0.95);
        assertThat(job.value("generator.start")).isCloseTo(charger + 660 + 12, within(1e-6));
    }

    /** The freezer's start of 660 W adds 550 W to what stays on, the pump's of 600 W all of it. */
    @Test
    void theStartThatAddsMostDecides() {
        ChangedDemo job =
                ChangedDemo.of(CABIN, "power: 1.1 kW (plate), kind: motor, start: 5.5", "power: 100 W, start: 6");
        double charger = 57.2 * 50 / (0.85 * 0.95);
        assertThat(job.value("generator.start")).isCloseTo(charger + 122 + 600, within(1e-6));
    }

    /** An input limit below the supply is the most that a charger and what stays on can share. */
    @Test
    void anInputLimitBoundsWhatFits() {
        ChangedDemo job = ChangedDemo.of(LITHIUM, "input-limit: 6 A", "input-limit: 4 A");
        assertThat(job.value("return.fits"))
                .isCloseTo((4 - job.value("return.left-on")) * 230 * 0.85 * 0.95 / 28.6, within(1e-9));
    }

    /** Who checks what a source can charge beside its loads finds each letter of the formula among the inputs. */
    @Test
    void whatFitsCanBeWorkedFromItsInputs() {
        assertThat(symbols(ChangedDemo.of(CABIN), "generator.fits")).containsExactly("P", "P_on", "P₁", "η", "λ", "U");
        assertThat(symbols(ChangedDemo.of("marmalade-meridian"), "generator.fits"))
                .containsExactly("P", "P_on", "P₁", "η", "λ", "U");
        assertThat(symbols(ChangedDemo.of("marmalade-meridian"), "return.fits"))
                .containsExactly("I", "I_on", "U_mains", "η", "λ", "U");
    }

    private static List<String> symbols(ChangedDemo job, String key) {
        return job.figure(key).working().inputs().stream().map(Input::symbol).toList();
    }

    /**
     * Textbook form of standby drain, days = charge / (standby + C s / 720 h): 552 Ah usable of 690 Ah, 45 mA, 2 % a month;
     * without the 45 mA a time at most.
     */
    @Test
    void theInverterOff() {
        AbsenceFigures it = ChangedDemo.of(LITHIUM).figures().absence();
        assertThat(it.offToReserve().value().hours()).isCloseTo(552 / (0.045 + 690 * 0.02 / 720), within(1e-6));
        assertThat(it.offToEmpty().value().hours()).isCloseTo(690 / (0.045 + 690 * 0.02 / 720), within(1e-6));
        AbsenceFigures unknown = ChangedDemo.of(LITHIUM, "  standing-draw:", "  # standing-draw:")
                .figures()
                .absence();
        assertThat(unknown.draw().standing()).isEmpty();
        assertThat(unknown.offToReserve().value().hours()).isCloseTo(0.8 * 720 / 0.02, within(1e-6));
        assertThat(ChangedDemo.of(LITHIUM, "standing-draw: 45 mA (measured)", "standing-draw: not seen")
                        .figures()
                        .absence()
                        .draw()
                        .standing())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind: automatic | kind: automatic | TAKES_OVER",
                "when-shore-fails: take-over | when-shore-fails: stay-off | STAYS_OFF",
                "when-shore-fails: take-over | when-shore-fails: not seen | NOT_KNOWN",
                "kind: automatic | kind: manual | BY_HAND",
                "kind: automatic | kind: none | ALWAYS_ON_INVERTER",
                "kind: automatic | kind: not seen | NOT_KNOWN"
            })
    void whatHappensWhenShoreFails(String found, String instead, Setting setting) {
        AbsenceFigures it = ChangedDemo.of(LITHIUM, found, instead).figures().absence();
        assertThat(it.setting()).isEqualTo(setting);
        // Each case lasts longer than the one before: left on, idle, off; the reserve before empty.
        assertThat(it.toReserve().value()).isLessThan(it.idleToReserve().value());
        assertThat(it.idleToReserve().value()).isLessThan(it.offToReserve().value());
        assertThat(it.toReserve().value()).isLessThan(it.toEmpty().value());
        assertThat(it.idleToReserve().value()).isLessThan(it.idleToEmpty().value());
    }

    /**
     * What always draws shortens every running time, so that what alone stays on lasts as long in the table of running
     * times as in the one of absence. Definition of energy: the times are as the powers taken.
     */
    @Test
    void whatAlwaysDrawsCountsInRunningTimesToo() {
        Figures with = ChangedDemo.of(LITHIUM).figures();
        Figures without = ChangedDemo.of(LITHIUM, "  standing-draw:", "  # standing-draw:")
                .figures();
        ApplianceFigures left = leftOn(with);
        assertThat(left.time().value()).isEqualTo(with.absence().toReserve().value());
        assertThat(left.running().wornTime().value())
                .isEqualTo(with.absence().toReserveWorn().value());
        double load = left.load().value().watts();
        assertThat(left.time().value().ratioTo(leftOn(without).time().value()))
                .isCloseTo(load / (load + 0.045 * 27.0), within(1e-4));
        // 18 W at the inverter and 45 mA at the posts, integrated by another program over the curve of rest voltages
        // (Ohm's and Kirchhoff's laws): 2 737 862 s to the reserve. As a power it takes a hair more, never less.
        assertThat(with.absence().idleToReserve().value().seconds()).isBetween(0.998 * 2_737_862, 2_737_862.0);
    }

    private static ApplianceFigures leftOn(Figures figures) {
        return figures.appliances().stream()
                .filter(it ->
                        figures.absence().leftOn().equals(List.of(it.appliance().name())))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A maker's limit goes before the table, and the hardest worked string's share decides for the bank (Kirchhoff's laws).
     * One that does not say for which temperature holds warm: cells take less in the cold (table of charging rates).
     */
    @Test
    void whatTheBankTakes() {
        ChangedDemo usual = ChangedDemo.of(LITHIUM, "temperature: 1 °C", "temperature: 12 °C");
        double fairOverWorst = 1.0 / 3 / usual.value("bank.worst-share");
        assertThat(fairOverWorst).isLessThan(1);
        assertThat(usual.value("bank.charge-limit")).isCloseTo(0.5 * 690 * fairOverWorst, within(1e-9));
        assertThat(usual.value("bank.charge-limit-cold")).isCloseTo(0.2 * 690 * fairOverWorst, within(1e-9));
        ChangedDemo makers = ChangedDemo.of(
                LITHIUM,
                "temperature: 1 °C",
                "temperature: 12 °C",
                "  standing-draw:",
                "  charge-limit: 100 A\n  standing-draw:");
        assertThat(makers.value("bank.charge-limit"))
                .isCloseTo(100 / makers.value("bank.worst-share"), within(1e-9))
                .isLessThanOrEqualTo(300.0);
        assertThat(makers.value("bank.charge-limit-cold")).isEqualTo(usual.value("bank.charge-limit-cold"));
        ChangedDemo makersCold = ChangedDemo.of(
                LITHIUM,
                "temperature: 1 °C",
                "temperature: 12 °C",
                "  standing-draw:",
                "  charge-limit: 100 A\n  charge-limit-cold: 80 A\n  standing-draw:");
        assertThat(makersCold.value("bank.charge-limit-cold"))
                .isCloseTo(80 / makers.value("bank.worst-share"), within(1e-9));
        // The job's bank gets to 1 °C and may be charged above 2 °C.
        Figures cold = ChangedDemo.of(LITHIUM).figures();
        assertThat(cold.bankCharging().coldLimit().value().amperes()).isZero();
        assertThat(cold.charging().get(0).recharge().orElseThrow().toFullCold()).isEmpty();
        assertThat(ChangedDemo.of(GLASS_MAT).value("bank.charge-limit-cold"))
                .isEqualTo(ChangedDemo.of(GLASS_MAT).value("bank.charge-limit"));
    }

    /** Definition of energy: a plan of uses at stated times holds what a plan of spread uses does. */
    @Test
    void timesOfDayMoveTheUseAndKeepTheEnergy() {
        ChangedDemo spread = ChangedDemo.of(LITHIUM);
        ChangedDemo stated =
                ChangedDemo.of(LITHIUM, "per-use: 20 min, uses-per-day: 2", "per-use: 20 min, at: [06:30, 06:50]");
        assertThat(stated.value("day.use")).isCloseTo(spread.value("day.use"), within(0.01 * spread.value("day.use")));
        assertThat(stated.value("day.dark-charge-at-08")).isLessThan(spread.value("day.dark-charge-at-08"));
    }

    /** What several alternators give is their sum. */
    @Test
    void alternatorsTogether() {
        Figures it = ChangedDemo.of(
                        LITHIUM,
                        "  - { kind: solar",
                        "  - { kind: alternator, name: Second, current: 30 A }\n  - { kind: solar")
                .figures();
        assertThat(it.chargingTogether()).singleElement().satisfies(together -> {
            assertThat(together.way()).isEqualTo(ChargeFigures.Way.ENGINE_RUNNING);
            assertThat(together.recharge().current().value().amperes()).isEqualTo(120);
            assertThat(together.recharge().toFull().orElseThrow().value())
                    .isLessThan(it.charging().get(1).toFull().orElseThrow().value());
        });
    }

    /** Under way the inverter goes on feeding what stays on: its mean input over the nominal voltage is missing. */
    @Test
    void loadsAreTakenOffTheAlternator() {
        Figures it = ChangedDemo.of(LITHIUM).figures();
        RechargeFigures alternator = it.charging().get(1).recharge().orElseThrow();
        assertThat(alternator.left().value().amperes())
                .isCloseTo(90 - it.absence().load().value().watts() / 25.6, within(1e-9));
        RechargeFigures shore = it.charging().get(0).recharge().orElseThrow();
        // A use takes less than a day, and a day less than all above the reserve.
        assertThat(shore.afterUses())
                .isNotEmpty()
                .allSatisfy(use -> assertThat(use.time().value())
                        .isLessThan(shore.afterDay().orElseThrow().value()));
        assertThat(shore.afterDay().orElseThrow().value())
                .isLessThan(shore.toFull().orElseThrow().value());
    }

    /**
     * Kirchhoff's current law at the inlet, definition of power and power factor: of 6 A at 230 V the dehumidifier's 240 W come
     * first, and 85 % of 0.95 of the rest reach 8 cells at 3.575 V. That is what the supply is said to bear beside it, too. The
     * 45 mA that always draw come off what is left for the bank.
     */
    @Test
    void whatStaysOnComesFirstThroughAnInputLimit() {
        double perAmpere = 230 * 0.85 * 0.95 / 28.6;
        double free = 6 * perAmpere;
        double beside = (6 - 240.0 / 230) * perAmpere;
        ChangedDemo lithium = ChangedDemo.of(LITHIUM);
        assertThat(lithium.value("charging.shore-charger.left-for-bank")).isCloseTo(beside - 0.045, within(1e-9));
        assertThat(lithium.value("return.fits")).isCloseTo(beside, within(1e-9));
        // 552 Ah above the reserve, 98 % of each ampere-hour kept, hardly any tail at this current.
        assertThat(lithium.value("charging.shore-charger.to-full") / 3600)
                .isBetween(552 / (0.98 * beside), 1.02 * 552 / (0.98 * beside));
        // It works a quarter of the time: then 32.2 A, else 39.0 A.
        assertThat(ChangedDemo.of(LITHIUM, "240 W (measured)", "240 W (measured), average: 60 W (measured)")
                        .value("charging.shore-charger.left-for-bank"))
                .isCloseTo(0.25 * beside + 0.75 * free - 0.045, within(1e-9));
        assertThat(ChangedDemo.of(LITHIUM, "left-on: yes", "left-on: no").value("charging.shore-charger.left-for-bank"))
                .isCloseTo(free - 0.045, within(1e-9));
        // 24 A at 120 V let the whole charger through while the refrigerator rests, and 20.7 A while it works.
        assertThat(ChangedDemo.of(AMERICAN).value("charging.charger.left-for-bank"))
                .isCloseTo(0.6 * 70 + 0.4 * (24 - 400.0 / 120) * 120 * 0.85 * 0.95 / 29.2, within(1e-6));
    }

    /** Kirchhoff's current law: two chargers behind one input limit get together what one of them would get alone. */
    @Test
    void chargersShareAnInputLimit() {
        Figures it = ChangedDemo.of(
                        LITHIUM,
                        "  - { kind: alternator",
                        "  - { kind: shore-charger, name: Second, current: 50 A, fed-by: shore }\n  - { kind: alternator")
                .figures();
        assertThat(it.chargingTogether()).singleElement().satisfies(together -> {
            assertThat(together.way()).isEqualTo(ChargeFigures.Way.AT_SHORE);
            assertThat(together.recharge().left().value().amperes())
                    .isCloseTo((6 - 240.0 / 230) * 230 * 0.85 * 0.95 / 28.6 - 0.045, within(1e-9));
        });
    }

    /** Definition of power: 2 kW of the generator less the freezer's 110 W and the router's 12 W while both draw. */
    @Test
    void whatStaysOnComesFirstOnAGenerator() {
        double drawing = (45.0 + 12) / (110 + 12);
        assertThat(ChangedDemo.of(CABIN, "power: 4.8 kW", "power: 2 kW")
                        .value("charging.generator-charger.left-for-bank"))
                .isCloseTo((2000 - drawing * 122) * 0.85 * 0.95 / 57.2, within(1e-6));
        // The larger set carries both.
        assertThat(ChangedDemo.of(CABIN).value("charging.generator-charger.left-for-bank"))
                .isCloseTo(50, within(1e-9));
    }

    @Test
    void aWornBankLastsNoLongerAndADayIsNeverNaN() {
        for (String demo : new String[] {LITHIUM, GLASS_MAT, CABIN, AMERICAN, "persimmon-tug", "long-way-round"}) {
            DayFigures day = ChangedDemo.of(demo).figures().day();
            assertThat(day.darkDaysWorn().value())
                    .isLessThanOrEqualTo(day.darkDays().value());
            assertThat(day.courses()).allSatisfy(course -> {
                assertThat(course.charge()).hasSizeLessThanOrEqualTo(13);
                assertThat(course.charge().get(0).value()).isEqualTo(Ratio.WHOLE);
                assertThat(course.charge())
                        .allSatisfy(charge -> assertThat(charge.value())
                                .isGreaterThanOrEqualTo(course.lowest().value()));
            });
        }
    }
}
