package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;
import org.quaybook.figures.AtShoreFigures.Fit;
import org.quaybook.figures.TogetherFigures.Order;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseFamily;
import org.quaybook.job.Job;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;

class FiguresTest {

    private static final String LITHIUM = "lantern-moth";
    private static final String GLASS_MAT = "second-biscuit";
    private static final String VENTED = "persimmon-tug";

    /** More than are gone through in pairs. */
    private static final String PLATE = "0.56 mΩ (plate)";

    private static final String LIGHTS = IntStream.rangeClosed(1, 40)
            .mapToObj(i -> "  - { name: Light " + i + ", power: 10 W (plate) }\n")
            .collect(Collectors.joining());

    /** What every figure of every job must have, whatever it says. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void everyFigureIsNamedOnceFiniteAndWorkedFromWhatIsThere(String demo) {
        Set<String> before = new HashSet<>();
        for (Figure<?> figure : ChangedDemo.of(demo).figures().all()) {
            assertThat(figure.key()).matches("[a-z0-9.A-Z-]+");
            assertThat(figure.value().canonical()).isFinite();
            Working working = figure.working();
            if (working.formula() != Formula.SUM) {
                assertThat(working.inputs()).as(figure.key()).isNotEmpty();
            }
            for (Input input : working.inputs()) {
                if (input.origin() instanceof Input.FromFigure from) {
                    assertThat(before).as("reached before " + figure.key()).contains(from.key());
                }
            }
            assertThat(before.add(figure.key())).as(figure.key()).isTrue();
        }
    }

    /** A value that the job states is never said to be usual practice. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void whatTheJobStatesIsSaidToComeFromTheJob(String demo) {
        for (Figure<?> figure : ChangedDemo.of(demo).figures().all()) {
            for (Input input : figure.working().inputs()) {
                if (List.of("t_use", "P_mean", "t", "L", "limit", "C").contains(input.symbol())) {
                    assertThat(input.origin())
                            .as(figure.key() + " " + input.symbol())
                            .isNotInstanceOf(Input.Usual.class);
                }
            }
        }
    }

    /** A joint's drop and warmth and the voltage at the inverter, at handover and a day later. */
    private static final String READ_TWICE = """
            tests:
              - { test: rest-voltage, result: 26.6 V, on: 2026-05-12 }
              - { test: inverter-voltage, at: 90 A, result: 26.0 V, on: 2026-05-12 }
              - { test: joint-drop, of: [bank, F1], at: 90 A, result: 9 mV, on: 2026-05-12 }
              - { test: joint-temperature, of: [F1], at: 90 A, result: 28 °C, ambient: 20 °C, on: 2026-05-12 }
              - { test: joint-temperature, of: [F1], at: 60 A, result: 24 °C, ambient: 20 °C, on: 2026-05-13 }
            """;

    /** Jobs of which each formula has a figure in one. */
    static List<ChangedDemo> jobsOfEveryFormula() {
        return List.of(
                ChangedDemo.of(
                        LITHIUM,
                        "earths:\n",
                        "earths:\n  - { id: E9, kind: protective, from: a, to: b, of: A1, fitted: 4 mm2 }\n",
                        "kind: electronics",
                        "kind: electronics, leakage: 2 mA"),
                ChangedDemo.of(LITHIUM),
                ChangedDemo.of(
                        VENTED,
                        "fuses:\n",
                        "fuses:\n  - { id: F2, role: branch, conductor: 16 mm2, load: 60 A, rating: 80 A, through: [B1] }\n",
                        "kind: alternator,",
                        "kind: alternator, through: [F1],"),
                ChangedDemo.of(LITHIUM, "  standing-draw:", "  charge-limit: 100 A\n  standing-draw:"),
                ChangedDemo.of("hut-seventeen"),
                ChangedDemo.of(
                        VENTED,
                        "appliances:\n",
                        "appliances:\n" + LIGHTS,
                        "bank:\n",
                        "bank:\n  charge-voltage: 29.6 V\n",
                        "name: Shore charger,",
                        "name: Shore charger, through: [B1, B2], cable: 16 mm2, length: 2 m,"),
                ChangedDemo.of(
                        GLASS_MAT,
                        "    resistance: 11",
                        "    # resistance: 11",
                        "fuses:\n",
                        "fuses:\n  - { id: F2, protects: [], role: string, conductor: 25 mm2, rating: 110 A }\n"),
                ChangedDemo.of(GLASS_MAT, "  idle: 7 W", "  idle: 120 W", ", rating: 125 A", ""),
                ChangedDemo.of(
                        VENTED,
                        "  idle:",
                        "  input-limit: 6 A\n  idle:",
                        "charging:\n",
                        "charging:\n  - { kind: shore-charger, name: Second charger, current: 10 A, fed-by: shore }\n"),
                ChangedDemo.of(VENTED, "  series: 12", "  health: 90 %\n  series: 12"),
                ChangedDemo.of(VENTED, PLATE, PLATE + "\n    short-circuit: 5 kA (plate)"),
                ChangedDemo.of(LITHIUM, "    resistance: 6 mΩ", "    short-circuit: 3 kA"),
                ChangedDemo.of(LITHIUM, "  efficiency: { best: 94 % (plate), full: 90 % (plate) }\n", ""),
                ChangedDemo.of(LITHIUM, "best: 94 % (plate), full: 90 % (plate)", "best: 88 %, full: not seen"),
                ChangedDemo.of(LITHIUM, "best: 94 % (plate), full: 90 % (plate)", "best: not seen, full: 95 %"),
                ChangedDemo.of(LITHIUM, "  short-time:", "  # short-time:"),
                ChangedDemo.of(LITHIUM, "  - { test: voltage-drop", "  # - { test: voltage-drop"),
                ChangedDemo.of(LITHIUM, "tests:\n", READ_TWICE),
                ChangedDemo.of(VENTED, "  where: deckhouse, aft", "  locker: 45 °C\n  where: deckhouse, aft"),
                ChangedDemo.of(
                        LITHIUM, "discharge: 150 A (plate)", "discharge: 150 A (plate)\n    peak: 300 A (plate)"),
                ChangedDemo.of(GLASS_MAT, "power: 700 W (plate),", "power: 700 W (plate), wished-time: 2 h,"),
                ChangedDemo.of(
                        GLASS_MAT,
                        "power: 700 W (plate),",
                        "power: 700 W (plate), wished-time: 80 min,",
                        "cut-out: 10.5 V",
                        "cut-out: 11.4 V"));
    }

    /** What nothing uses would be dead. */
    @Test
    void everyFormulaIsUsed() {
        Set<Formula> used = new HashSet<>();
        for (ChangedDemo job : jobsOfEveryFormula()) {
            job.figures().all().forEach(figure -> used.add(figure.working().formula()));
        }
        assertThat(used).containsExactlyInAnyOrder(Formula.values());
    }

    /**
     * The demos against figures worked by hand with a calculator: flat efficiencies, mean voltages, no temperature.
     * Where the two differ by more than a few per cent docs/demo-jobs.md says why.
     */
    @ParameterizedTest
    @CsvSource({
        "lantern-moth, bank.capacity, 690, 0",
        "lantern-moth, bank.energy, 17700, 50",
        "lantern-moth, bank.usable-energy, 14100, 50",
        "lantern-moth, inverter.nominal-current, 139, 0.5",
        "lantern-moth, inverter.worst-current, 165, 0.5",
        "lantern-moth, supply.drop-at-20, 0.08, 0.005",
        "lantern-moth, supply.joint-drop, 0.13, 0.005",
        "lantern-moth, supply.bank-drop, 0.33, 0.06",
        "lantern-moth, bank.short-circuit, 14800, 250",
        "lantern-moth, absence.to-reserve, 180000, 20000",
        "second-biscuit, bank.capacity, 345, 0",
        "second-biscuit, bank.energy, 4200, 100",
        "second-biscuit, bank.usable-energy, 2100, 50",
        "second-biscuit, supply.drop-at-20, 0.64, 0.02",
        "second-biscuit, inverter.worst-current, 87, 0.5",
        "second-biscuit, supply.joint-drop, 0.07, 0.005",
        "second-biscuit, appliance.heat-gun.alarm-below, 0.6, 0.05",
        "second-biscuit, appliance.bread-machine.time, 32400, 1000",
        "second-biscuit, appliance.laptop.time, 86400, 18000",
        "persimmon-tug, bank.energy, 10000, 100",
        "persimmon-tug, inverter.nominal-current, 93, 0.5",
        "persimmon-tug, inverter.worst-current, 106, 0.5",
        "persimmon-tug, bank.short-circuit, 4200, 50",
        "persimmon-tug, appliance.navigation-computer.time, 82800, 12000",
        "persimmon-tug, vent.boost-flow, 5.0, 0.05",
        "persimmon-tug, vent.boost-opening, 14100, 20",
        "persimmon-tug, vent.float-flow, 1.3, 0.05",
        "persimmon-tug, vent.float-opening, 3500, 50",
        "long-way-round, bank.energy, 3800, 50",
        "long-way-round, inverter.nominal-current, 142, 0.5",
        "long-way-round, inverter.worst-current, 168, 0.5",
        "long-way-round, appliance.hair-dryer.time, 8400, 400",
        "long-way-round, appliance.bicycle-chargers.time, 23400, 1800",
        "long-way-round, appliance.breathing-machine.share-per-use, 0.187, 0.04",
        "hut-seventeen, bank.energy, 32000, 200",
        "hut-seventeen, bank.usable-energy, 24000, 200",
        "hut-seventeen, inverter.nominal-current, 106, 0.5",
        "hut-seventeen, supply.drop-at-20, 0.09, 0.01",
        "hut-seventeen, bank.short-circuit, 9900, 150",
        "hut-seventeen, absence.idle-per-day, 0.0375, 0.0015",
        "hut-seventeen, absence.to-reserve, 777600, 160000",
        "hut-seventeen, appliance.well-pump.start-power, 6000, 60",
        "marmalade-meridian, bank.capacity, 800, 0",
        "marmalade-meridian, bank.energy, 19000, 250",
        "marmalade-meridian, bank.usable-energy, 9600, 50",
        "marmalade-meridian, inverter.nominal-current, 130, 0.5",
        "marmalade-meridian, inverter.worst-current, 144, 0.5",
        "marmalade-meridian, supply.drop-at-20, 0.10, 0.01",
        "marmalade-meridian, bank.short-circuit, 7900, 50",
        "marmalade-meridian, appliance.refrigerator-and-ice-maker.time, 162000, 25000",
        "marmalade-meridian, vent.boost-flow, 9.6, 0.05",
        "marmalade-meridian, vent.boost-opening, 26900, 50"
    })
    void theDemosAsWorkedByHand(String demo, String key, double byHand, double tolerance) {
        assertThat(ChangedDemo.of(demo).value(key)).isCloseTo(byHand, within(tolerance + 1e-9));
    }

    /** Series adds volts, parallel adds ampere-hours: four 6 V 225 Ah by three, 24 V and 675 Ah (a magazine, seen). */
    @Test
    void seriesAndParallel() {
        ChangedDemo job = ChangedDemo.of(
                VENTED,
                "voltage: 2 V",
                "voltage: 6 V",
                "capacity: 420 Ah",
                "capacity: 225 Ah",
                "series: 12",
                "series: 4",
                "parallel: 1",
                "parallel: 3\n  take-off: busbar");
        assertThat(job.value("bank.nominal-voltage")).isEqualTo(24);
        assertThat(job.value("bank.system-voltage")).isEqualTo(24);
        assertThat(job.value("bank.capacity")).isEqualTo(675);
    }

    /** Capacity in the cold, IEC 60896 form (from memory): 1 - λ (25 °C - T), on 80 % of what it had when new. */
    @Test
    void wornAndCold() {
        assertThat(ChangedDemo.of(VENTED).value("bank.capacity-worn"))
                .isCloseTo(420 * 0.8 * (1 - 0.008 * 20), within(1e-9));
        assertThat(ChangedDemo.of(VENTED, "reserve: 50 %", "reserve: 50 %\n  health: 60 %")
                        .value("bank.capacity-worn"))
                .isCloseTo(420 * 0.6 * (1 - 0.008 * 20), within(1e-9));
    }

    /** What a plate or a table says holds for a new block; what was measured is as it is. */
    @Test
    void aUsedBlockResistsMoreUnlessItWasMeasured() {
        ChangedDemo told =
                ChangedDemo.of(GLASS_MAT, "  series: 1", "  health: 90 %\n  series: 1", "(measured", "(told");
        assertThat(told.value("bank.block-resistance-now")).isCloseTo(11e-3 * 1.25, within(1e-12));
        ChangedDemo measured = ChangedDemo.of(GLASS_MAT, "  series: 1", "  health: 90 %\n  series: 1");
        assertThat(measured.figures().all()).noneMatch(figure -> figure.key().equals("bank.block-resistance-now"));
        assertThat(measured.value("bank.resistance"))
                .isEqualTo(ChangedDemo.of(GLASS_MAT).value("bank.resistance"));
    }

    /**
     * IEC 60896 ends a life at 80 % of capacity (from memory), where a block resists half as much again as when new (common
     * practice, no source): a bank of 90 or 80 % comes to where a new one comes, one of 60 % is past it. Twelve blocks of
     * 0.56 mΩ and eleven links of 0.2 mΩ, 20 K below 25 °C.
     */
    @Test
    void whatAUsedBankHasAgedItDoesNotAgeAgain() {
        double cold = 1 + 0.012 * 20;
        double dueForRenewal = 1.5 * (12 * 0.56e-3 + 11 * 0.2e-3) * cold;
        assertThat(ChangedDemo.of(VENTED).value("bank.resistance-worn")).isCloseTo(dueForRenewal, within(1e-12));
        for (String used : List.of("90 %", "80 %")) {
            assertThat(ChangedDemo.of(VENTED, "reserve: 50 %", "reserve: 50 %\n  health: " + used)
                            .value("bank.resistance-worn"))
                    .as(used)
                    .isCloseTo(dueForRenewal, within(1e-12));
        }
        assertThat(ChangedDemo.of(VENTED, "reserve: 50 %", "reserve: 50 %\n  health: 60 %")
                        .value("bank.resistance-worn"))
                .isCloseTo((12 * 0.56e-3 * 2 + 11 * 0.2e-3) * cold, within(1e-12));
        // Nobody knows how much of its ageing a measured block has behind it.
        assertThat(ChangedDemo.of(GLASS_MAT, "  series: 1", "  health: 80 %\n  series: 1")
                        .value("bank.resistance-worn"))
                .isEqualTo(ChangedDemo.of(GLASS_MAT).value("bank.resistance-worn"));
    }

    /** Kirchhoff's voltage law: twelve blocks have eleven links between them, each with its two joints at least. */
    @Test
    void linksBetweenBlocksInSeriesCount() {
        ChangedDemo job = ChangedDemo.of(VENTED);
        double blocks = 12 * job.value("bank.block-resistance");
        assertThat(job.value("bank.string-resistance")).isCloseTo(blocks + 11 * 0.2e-3, within(1e-12));
        assertThat(job.value("bank.resistance")).isCloseTo(blocks + 11 * 0.2e-3, within(1e-12));
        assertThat(ChangedDemo.of(
                                VENTED,
                                "  series: 12",
                                "  series-links: { size: 70 mm2, length: 200 mm }\n  series: 12")
                        .value("bank.series-link-resistance"))
                .isCloseTo(0.2e-3 + 0.277e-3 * 0.2 * (1 + 0.00393 * 50), within(1e-12));
    }

    /**
     * Taken off at opposite ends, the first of three equal strings gives (r + l) / (3 r + 2 l): the closed form of the
     * ladder by Kirchhoff's laws.
     */
    @Test
    void whatMovingTheTakeOffWouldGain() {
        ChangedDemo job = ChangedDemo.of(GLASS_MAT);
        double r = job.value("bank.block-resistance");
        double l = job.value("bank.link-resistance");
        assertThat(job.value("bank.worst-share-opposite-ends"))
                .isCloseTo((r + l) / (3 * r + 2 * l), within(1e-12))
                .isLessThan(job.value("bank.worst-share"));
    }

    /**
     * Ohm's law: four blocks of 5 mΩ in parallel at 12.6 V give 10 080 A at their posts and 5600 A behind 1 mΩ (worked
     * here). The fuse of this job sits behind 170 mm of 25 mm²; IEC 60228 class 5 has 0.780 Ω/km for it (from memory).
     */
    @Test
    void theShortBehindAFuse() {
        ChangedDemo job = ChangedDemo.of(GLASS_MAT);
        double bank = job.value("bank.fault-resistance");
        double cable = 0.780e-3 * 0.170;
        assertThat(job.value("fuse.F1.must-interrupt"))
                .isCloseTo(job.value("bank.rest-at-100") / (bank + cable), within(1e-6))
                .isLessThan(job.value("bank.short-circuit"));
        assertThat(ChangedDemo.of(GLASS_MAT, "  links:", "  # links:").value("bank.fault-resistance"))
                .isCloseTo(0.9 * 11e-3 / 3, within(1e-12));
    }

    /**
     * IEC 61660-1 (from memory) takes 0.9 of a battery's resistance for its largest short, whoever states it. Worked here: twelve
     * blocks of 0.56 mΩ in series; the drop of the same bank meets the whole 0.56 mΩ.
     */
    @ParameterizedTest
    @ValueSource(strings = {"0.56 mΩ (plate)", "0.56 mΩ (measured)", "0.56 mΩ"})
    void theLargestShort(String resistance) {
        ChangedDemo job = ChangedDemo.of(VENTED, PLATE, resistance);
        assertThat(job.value("bank.block-resistance-least")).isCloseTo(0.504e-3, within(1e-12));
        assertThat(job.value("bank.short-circuit"))
                .isCloseTo(job.value("bank.rest-at-100") / (12 * 0.504e-3), within(1e-6));
        assertThat(job.value("bank.block-resistance")).isCloseTo(0.56e-3, within(1e-12));
    }

    /**
     * The maker's short-circuit current decides where it is larger than 0.9 of the stated resistance allows, and alone where no
     * resistance is stated: Ohm's law. IEC 60896-21 has makers of valve-regulated batteries state both (from memory).
     */
    @Test
    void theShortThatTheMakerStates() {
        ChangedDemo larger = ChangedDemo.of(VENTED, PLATE, PLATE + "\n    short-circuit: 5 kA (plate)");
        assertThat(larger.value("bank.short-circuit")).isCloseTo(5000, within(1e-6));
        assertThat(larger.value("bank.block-resistance")).isCloseTo(0.56e-3, within(1e-12));
        ChangedDemo smaller = ChangedDemo.of(VENTED, PLATE, PLATE + "\n    short-circuit: 3 kA (plate)");
        assertThat(smaller.value("bank.short-circuit"))
                .isEqualTo(ChangedDemo.of(VENTED).value("bank.short-circuit"));
        ChangedDemo alone = ChangedDemo.of(LITHIUM, "    resistance: 6 mΩ", "    short-circuit: 3 kA");
        assertThat(alone.value("bank.short-circuit")).isCloseTo(3 * 3000, within(1e-6));
        assertThat(alone.value("bank.block-resistance"))
                .isEqualTo(ChangedDemo.of(LITHIUM, "    resistance: 6", "    # resistance: 6")
                        .value("bank.block-resistance"));
    }

    /**
     * A fuse must break at the highest voltage of charging. Lead-acid handbooks, from memory: equalising of flooded cells up
     * to 2.67 V, absorption of glass mat up to 2.47 V, at 25 °C; 5 and 4 mV more a cell for each kelvin below. Lithium iron
     * phosphate: 3.65 V a cell, makers' usual limit, whatever the temperature.
     */
    @Test
    void theVoltageThatAFuseMustBreak() {
        assertThat(ChangedDemo.of(GLASS_MAT).value("bank.highest-voltage"))
                .isCloseTo(6 * (2.4667 + 0.004 * 15), within(0.001));
        assertThat(ChangedDemo.of(VENTED).value("bank.highest-voltage"))
                .isCloseTo(12 * (2.6667 + 0.005 * 20), within(0.001));
        assertThat(ChangedDemo.of(LITHIUM).value("bank.highest-voltage")).isCloseTo(8 * 3.65, within(1e-9));
        assertThat(ChangedDemo.of(VENTED, "temperature: 5 °C", "temperature: 40 °C")
                        .value("bank.highest-voltage"))
                .isCloseTo(32, within(1e-9));
    }

    /** What the sources are set to goes before what is usual, and rises in the cold as that does. */
    @Test
    void theVoltageThatTheSourcesAreSetTo() {
        assertThat(ChangedDemo.of(VENTED, "bank:\n", "bank:\n  charge-voltage: 29.6 V\n")
                        .value("bank.highest-voltage"))
                .isCloseTo(29.6 + 12 * 0.005 * 20, within(1e-9));
    }

    /**
     * ΔU = 2 I ρ L / S (Ohm's law): 90 A over 4 m of 25 mm² and back. 0.795 mΩ/m at 20 °C is the IEC 60228 value of tinned
     * strands (class 5, seen); copper gains 0.393 % a kelvin.
     */
    @Test
    void theDropOfAChargersCable() {
        ChangedDemo job = ChangedDemo.of(
                LITHIUM,
                "current: 90 A, rated: 90 A",
                "current: 90 A, rated: 90 A, cable: 25 mm2, length: 4 m, route: engine-space");
        double warm = job.value("charging.engine-alternator.cable-temperature");
        assertThat(warm).isGreaterThan(50);
        assertThat(job.value("charging.engine-alternator.drop"))
                .isCloseTo(2 * 90 * 0.795e-3 * 4 * (1 + 0.00393 * (warm - 20)), within(0.001));
        assertThat(job.value("charging.engine-alternator.drop-share"))
                .isCloseTo(job.value("charging.engine-alternator.drop") / 24, within(1e-9));
    }

    /** Margins are shares: what may flow over what does. */
    /** Ohm's law by hand: 55 A and 20 A that charge under way pass the cables of the inverter together, each with its joints. */
    @Test
    void chargersThatShareTheCablesLoseMore() {
        String alternator = "kind: alternator,";
        String with = "kind: alternator, cable: 16 mm2, length: 4 m, ";
        String beside = "charging:\n  - { kind: solar, through: [B1, B2], current: 20 A }\n";
        ChangedDemo own = ChangedDemo.of(VENTED, alternator, with + "through: [bank],", "charging:\n", beside);
        ChangedDemo both = ChangedDemo.of(VENTED, alternator, with + "through: [F1, B1, B2],", "charging:\n", beside);
        String key = "charging.engine-alternator.drop";
        double way = both.value("supply.resistance");
        assertThat(both.value("charging.engine-alternator.own-drop")).isEqualTo(own.value(key));
        assertThat(both.value(key)).isCloseTo(own.value(key) + (55 + 20) * way, within(1e-9));
        assertThat(both.value(key + "-share")).isCloseTo(both.value(key) / 24, within(1e-9));
    }

    @Test
    void marginsOfCableAndFuse() {
        ChangedDemo job = ChangedDemo.of(VENTED);
        assertThat(job.value("cable.B1.margin") * job.value("inverter.worst-current"))
                .isCloseTo(job.value("cable.B1.allowed"), within(1e-9));
        assertThat(job.value("fuse.F1.margin") * 150).isCloseTo(job.value("fuse.F1.most"), within(1e-9));
        assertThat(job.value("fuse.F1.loading") * 150).isCloseTo(job.value("inverter.worst-current"), within(1e-9));
    }

    /** A string fuse carries the string's share; a block that fails is fed by the others (Kirchhoff's current law). */
    @Test
    void fusesOfStrings() {
        ChangedDemo job = ChangedDemo.of(
                GLASS_MAT,
                "fuses:\n",
                "fuses:\n  - { id: F2, protects: [], role: string, conductor: 25 mm2, family: class-t, rating: 110 A }\n");
        assertThat(job.value("fuse.F2.load"))
                .isCloseTo(job.value("inverter.worst-current") * job.value("bank.worst-share"), within(1e-9));
        assertThat(job.value("fuse.F2.must-interrupt"))
                .isCloseTo(job.value("bank.short-circuit") * 2 / 3, within(1e-9));
        assertThat(job.value("selectivity.F2-F1.ratio"))
                .isCloseTo(110 / job.value("bank.worst-share") / 125, within(1e-9));
        ChangedDemo besideBranch = ChangedDemo.of(GLASS_MAT, "fuses:\n", """
                fuses:
                  - { id: F2, protects: [], role: string, conductor: 25 mm2, family: class-t, rating: 110 A }
                  - { id: F3, role: branch, conductor: 16 mm2, load: 60 A, rating: 80 A }
                """);
        assertThat(besideBranch.value("fuse.F2.load"))
                .isCloseTo((job.value("inverter.worst-current") + 60) * job.value("bank.worst-share"), within(1e-9));
    }

    /** What shares the feed of the inverter adds up in it (Kirchhoff's current law). */
    @Nested
    class SharedFeed {

        private final double inverter = ChangedDemo.of(VENTED).value("inverter.worst-current");

        private ChangedDemo with(String branches, String... more) {
            List<String> replacements = new ArrayList<>(List.of("fuses:\n", "fuses:\n" + branches));
            replacements.addAll(List.of(more));
            return ChangedDemo.of(VENTED, replacements.toArray(String[]::new));
        }

        private static String branch(String id, int amperes, String through) {
            return "  - { id: " + id + ", role: branch, conductor: 16 mm2, load: " + amperes
                    + " A, rating: 80 A, through: [" + through + "] }\n";
        }

        @Test
        void fuseAndCablesCarryTheBranch() {
            ChangedDemo alone = ChangedDemo.of(VENTED);
            ChangedDemo job = with(branch("F2", 40, "F1, B1"));
            Figures figures = job.figures();
            assertThat(figures.supply().runs().get(0).carried().value().amperes())
                    .isCloseTo(inverter + 40, within(1e-9));
            assertThat(figures.supply().runs().get(1).carried().value().amperes())
                    .isCloseTo(inverter, within(1e-9));
            assertThat(figures.fuses().get(1).load().value().amperes()).isCloseTo(inverter + 40, within(1e-9));
            assertThat(job.value("fuse.F1.least")).isCloseTo((inverter + 40) / 0.8, within(1e-9));
            assertThat(job.value("supply.drop-at-20"))
                    .isCloseTo(
                            alone.value("supply.drop-at-20")
                                    + 40
                                            * figures.supply()
                                                    .runs()
                                                    .get(0)
                                                    .rating()
                                                    .at20()
                                                    .ohms(),
                            within(1e-9));
            assertThat(figures.bankLoad().most().value().amperes()).isCloseTo(inverter + 40, within(1e-9));
        }

        /** What passes a cable passes the fuse in it, though the job names the cable alone. */
        @Test
        void theFuseInASharedCable() {
            assertThat(with(branch("F2", 40, "B1")).value("fuse.F1.least"))
                    .isCloseTo((inverter + 40) / 0.8, within(1e-9));
            assertThat(with(branch("F2", 40, "B2")).value("fuse.F1.least")).isCloseTo(inverter / 0.8, within(1e-9));
        }

        /** At the bank itself nothing is shared, but the bank gives both. */
        @Test
        void atTheBank() {
            Figures figures = with(branch("F2", 40, "bank")).figures();
            assertThat(figures.fuses().get(1).load().value().amperes()).isCloseTo(inverter, within(1e-9));
            assertThat(figures.bankLoad().most().value().amperes()).isCloseTo(inverter + 40, within(1e-9));
        }

        /** What is behind another branch is part of that one's current. */
        @Test
        void aBranchBehindABranch() {
            Figures figures =
                    with(branch("F2", 40, "F1, B1") + branch("F3", 10, "F2")).figures();
            assertThat(figures.bankLoad().most().value().amperes()).isCloseTo(inverter + 40, within(1e-9));
            assertThat(figures.selectivity().stream()
                            .map(it -> it.upstream().id() + it.downstream().id()))
                    .containsExactlyInAnyOrder("F1F2", "F2F3");
        }

        /** What charges flows the other way: only where it is more than what is drawn does it decide. */
        @Test
        void aCharger() {
            String alternator = "current: 55 A, rated: 80 A";
            ChangedDemo little = with("", "kind: alternator,", "kind: alternator, through: [F1, B1, B2],");
            assertThat(little.value("cable.B1.carried")).isCloseTo(inverter, within(1e-9));
            ChangedDemo much = with(
                    "",
                    "kind: alternator,",
                    "kind: alternator, through: [F1, B1, B2],",
                    alternator,
                    "current: 180 A, rated: 300 A");
            assertThat(much.value("cable.B1.carried")).isCloseTo(180, within(1e-9));
            assertThat(much.value("supply.drop-by-rule")).isCloseTo(little.value("supply.drop-by-rule"), within(1e-9));
            assertThat(much.value("cable.B1.temperature")).isGreaterThan(little.value("cable.B1.temperature"));
        }

        /** Between fuse and cable: the cable bears what the fuse lets through and what the charger gives. */
        @Test
        void aChargerBetweenFuseAndCable() {
            ChangedDemo job = with("", "kind: alternator,", "kind: alternator, through: [F1],");
            assertThat(job.value("fuse.F1-B1.left")).isCloseTo(job.value("cable.B1.allowed") - 55, within(1e-9));
            assertThat(job.value("fuse.F1.most"))
                    .isLessThan(ChangedDemo.of(VENTED).value("fuse.F1.most"));
        }

        /** A switch carries what is behind it, and a switch of the bank all that is not connected before it. */
        @Test
        void theSwitch() {
            Job job = with(branch("F2", 40, "B1")).job();
            Figures figures = with(branch("F2", 40, "B1")).figures();
            assertThat(figures.most(job.isolators().get(0))
                            .orElseThrow()
                            .value()
                            .amperes())
                    .isCloseTo(inverter + 40, within(1e-9));
            ChangedDemo bank =
                    with(branch("F2", 40, "B2") + branch("F3", 20, "bank"), "isolates: [B1]", "isolates: [bank]");
            assertThat(bank.figures()
                            .most(bank.job().isolators().get(0))
                            .orElseThrow()
                            .value()
                            .amperes())
                    .isCloseTo(inverter + 40, within(1e-9));
        }
    }

    /** What branches draw on average runs beside everything else (Kirchhoff's current law). */
    @Nested
    class AverageOfBranches {

        private static final String PANEL =
                "fuses:\n  - { id: F2, role: branch, feeds: Cabin lights, conductor: 16 mm2, load: 40 A, rating: 80 A, through: [bank]";

        private static ChangedDemo branches(String demo, String rest) {
            return ChangedDemo.of(demo, "fuses:\n", PANEL + rest);
        }

        /** As if the same current always drew on the bank. */
        @Test
        void shortensEveryTime() {
            ChangedDemo job = branches(VENTED, ", average: 6 A }\n");
            ChangedDemo standing = ChangedDemo.of(VENTED, "  reserve:", "  standing-draw: 6 A\n  reserve:");
            ChangedDemo alone = ChangedDemo.of(VENTED);
            for (String key : List.of(
                    "appliance.navigation-computer.time",
                    "appliance.navigation-computer.time-worn",
                    "absence.idle-to-reserve",
                    "absence.off-to-reserve",
                    "day.dark-days")) {
                assertThat(job.value(key)).as(key).isCloseTo(standing.value(key), within(1e-9 * standing.value(key)));
                assertThat(job.value(key)).as(key).isLessThan(alone.value(key));
            }
            assertThat(job.value("day.use")).isCloseTo(alone.value("day.use") + 6 * 24 * 24, within(1e-6));
        }

        /** Through the inverter's own cables it takes of the inverter's voltage what it loses there: Ohm's law. */
        @Test
        void lowersTheVoltageOfTheInverterBehindSharedCables() {
            ChangedDemo atBank = branches(VENTED, ", average: 20 A }\n");
            ChangedDemo shared = ChangedDemo.of(
                    VENTED,
                    "fuses:\n",
                    "fuses:\n" + PANEL.replace("fuses:\n", "").replace("[bank]", "[F1, B1, B2]")
                            + ", average: 20 A }\n");
            SupplyFigures supply = shared.figures().supply();
            assertThat(shared.figures().absence().draw().beside().lost().volts())
                    .isCloseTo(20 * supply.resistance().value().ohms(), within(1e-12));
            assertThat(atBank.figures().absence().draw().beside().lost().volts())
                    .isZero();
            assertThat(shared.value("day.dark-days")).isLessThan(atBank.value("day.dark-days"));
        }

        /**
         * Ohm's and Kirchhoff's laws by hand: where the alarm begins, the rest voltage less what the branch and the idle
         * inverter lose in bank, cables and joints is the alarm's; at the reserve with the most that it may draw, too.
         */
        @ParameterizedTest
        @CsvSource({"'F1, B1, B2', 1", "'B1', 0", "bank, -1"})
        void itsLargestCurrentPullsTheInverterDown(String through, int shares) {
            ChangedDemo job = ChangedDemo.of(
                    GLASS_MAT,
                    "fuses:\n",
                    "fuses:\n  - { id: F2, role: branch, feeds: Windlass, conductor: 16 mm2, load: 60 A, average: 20 A, rating: 80 A, through: ["
                            + through + "] }\n",
                    "alarm: 11.5 V",
                    "alarm: 11.8 V",
                    "  reserve:",
                    "  standing-draw: 2 A\n  reserve:");
            SupplyFigures supply = job.figures().supply();
            double bank = job.value("bank.resistance");
            double way = job.value("supply.resistance");
            double first = supply.runs().get(0).rating().atWorking().ohms()
                    + supply.runs().get(0).joints() * 1e-4;
            double shared = shares > 0 ? way : shares == 0 ? first : 0;
            double alarm = job.value("inverter.alarm");
            double inverter = job.value("absence.most-load") / alarm;
            double below = job.value("branch.F2.alarm-below");
            double rest =
                    job.figures().bank().asItIs().rest().at(new Ratio(below)).volts();
            assertThat(below).isBetween(0.31, 0.99);
            assertThat(rest - (60 + 2 + inverter) * bank - 60 * shared - inverter * way)
                    .isCloseTo(alarm, within(1e-9));
            double most = job.value("branch.F2.most-quiet");
            double atReserve = job.value("bank.rest-at-50");
            double left = atReserve - (2 + inverter) * bank - inverter * way - alarm;
            assertThat(most).isCloseTo(Math.max(0, left / (bank + shared)), within(1e-9));
        }

        /** What is behind a branch passes what that one passes. */
        @Test
        void passesWhatItIsBehind() {
            ChangedDemo behind = ChangedDemo.of(
                    VENTED,
                    "fuses:\n",
                    "fuses:\n" + PANEL.replace("fuses:\n", "").replace("[bank]", "[B1]")
                            + " }\n  - { id: F3, role: branch, conductor: 4 mm2, load: 5 A, average: 2 A, through: [F2] }\n");
            SupplyFigures supply = behind.figures().supply();
            assertThat(behind.figures().absence().draw().beside().shared().ohms())
                    .isCloseTo(
                            supply.runs().get(0).rating().atWorking().ohms()
                                    + supply.runs().get(0).joints() * 1e-4,
                            within(1e-12));
        }

        /**
         * Ohm's law by hand: of the most that a full bank gives the inverter at its cut-out, U (E - U) / R, a pair leaves so much;
         * what always draws and is a little more forbids it, a little less does not.
         */
        @Test
        void countsForWhatMayRunTogether() {
            String[] weak = {"alarm: 11.5 V", "alarm: 11.95 V", "cut-out: 10.5 V", "cut-out: 11.9 V"};
            Figures figures = ChangedDemo.of(GLASS_MAT, weak).figures();
            TogetherFigures pair = figures.pairs().stream()
                    .filter(TogetherFigures::allowed)
                    .max(Comparator.comparing(it -> it.power().value()))
                    .orElseThrow();
            double rest = figures.bank().restFull().value().volts();
            double most = 11.9
                    * (rest - 11.9)
                    / (figures.bank().resistance().value().ohms()
                            + figures.supply().resistance().value().ohms());
            double left = (most
                            - figures.inverter()
                                    .losses()
                                    .inputFor(pair.power().value())
                                    .watts())
                    / rest;
            assertThat(left).isPositive();
            for (double share : new double[] {0.98, 1.02}) {
                List<String> changes = new ArrayList<>(List.of(weak));
                changes.add("  reserve:");
                changes.add(String.format(Locale.ROOT, "  standing-draw: %.4f A\n  reserve:", share * left));
                TogetherFigures same =
                        ChangedDemo.of(GLASS_MAT, changes.toArray(String[]::new)).figures().pairs().stream()
                                .filter(it -> names(it).equals(names(pair)))
                                .findFirst()
                                .orElseThrow();
                assertThat(same.power().value()).isEqualTo(pair.power().value());
                assertThat(same.allowed()).isEqualTo(share < 1);
            }
        }

        private static List<String> names(TogetherFigures pair) {
            return List.of(
                    pair.first().appliance().name(), pair.second().appliance().name());
        }

        /** What the idle inverter takes in a day is its own, not the lights'. */
        @Test
        void leavesTheInvertersShareAlone() {
            assertThat(branches(VENTED, ", average: 6 A }\n").value("absence.idle-per-day"))
                    .isEqualTo(ChangedDemo.of(VENTED).value("absence.idle-per-day"));
        }

        /** Chargers feed it before the bank, those on the mains too. */
        @Test
        void chargersFeedItFirst() {
            ChangedDemo job = branches(VENTED, ", average: 6 A }\n");
            ChangedDemo alone = ChangedDemo.of(VENTED);
            assertThat(job.value("charging.shore-charger.left-for-bank"))
                    .isCloseTo(alone.value("charging.shore-charger.left-for-bank") - 6, within(1e-9));
            assertThat(job.value("charging.engine-alternator.left-for-bank"))
                    .isLessThan(alone.value("charging.engine-alternator.left-for-bank") - 5.9);
        }

        @Test
        void countsABranchBehindABranchOnce() {
            String behind =
                    ", average: 6 A }\n  - { id: F3, role: branch, conductor: 4 mm2, load: 5 A, average: 2 A, through: [F2] }\n";
            assertThat(branches(VENTED, behind).value("bank.steady-draw")).isEqualTo(6);
            SteadyDraw partly = branches(VENTED, behind.substring(", average: 6 A".length()))
                    .figures()
                    .absence()
                    .draw();
            assertThat(partly.current().amperes()).isEqualTo(2);
            assertThat(partly.uncounted()).isEmpty();
        }

        @Test
        void knowsWhatNobodyWrote() {
            SteadyDraw draw = branches(VENTED, " }\n").figures().absence().draw();
            assertThat(draw.whole()).isEmpty();
            assertThat(draw.uncounted()).extracting(Fuse::id).containsExactly("F2");
        }
    }

    /** What the job leaves open is taken on the safe side. */
    @Nested
    class LeftOpen {

        /** A short is worst at the least resistance of its usual span, a sag at the usual one. */
        @Test
        void aResistanceNobodyStated() {
            ChangedDemo job = ChangedDemo.of(LITHIUM, "    resistance: 6", "    # resistance: 6");
            double block = job.value("bank.block-resistance");
            assertThat(job.value("bank.block-resistance-least")).isCloseTo(block * 2 / 5, within(1e-12));
            assertThat(job.value("bank.short-circuit")).isCloseTo(27.0 * 3 / (block * 2 / 5), within(1e-6));
        }

        @Test
        void aTakeOffNobodyHasSeen() {
            assertThat(ChangedDemo.of(GLASS_MAT, "take-off: same-end", "take-off: not seen")
                            .value("bank.worst-share"))
                    .isEqualTo(ChangedDemo.of(GLASS_MAT).value("bank.worst-share"));
        }

        @Test
        void linksNobodyWroteDownHaveTheirJoints() {
            ChangedDemo job = ChangedDemo.of(GLASS_MAT, "  links:", "  # links:");
            assertThat(job.value("bank.link-resistance")).isEqualTo(0.2e-3);
            assertThat(job.value("bank.unevenness")).isGreaterThan(1);
        }

        @Test
        void theBestEfficiencyOnly() {
            ChangedDemo job =
                    ChangedDemo.of(LITHIUM, "best: 94 % (plate), full: 90 % (plate)", "best: 88 %, full: not seen");
            assertThat(job.value("inverter.full-efficiency")).isEqualTo(0.88);
            assertThat(job.value("inverter.full-input")).isCloseTo(3200 / 0.88, within(1e-6));
        }

        @Test
        void theFullLoadEfficiencyOnly() {
            ChangedDemo job =
                    ChangedDemo.of(LITHIUM, "best: 94 % (plate), full: 90 % (plate)", "best: not seen, full: 95 %");
            assertThat(job.value("inverter.best-efficiency")).isEqualTo(0.95);
        }

        @Test
        void noEfficiencyAndNoIdleDraw() {
            ChangedDemo job =
                    ChangedDemo.of(GLASS_MAT, "  efficiency:", "  # efficiency:", "  idle: 7 W", "  # idle: 7 W");
            assertThat(job.value("inverter.idle")).isEqualTo(8);
            assertThat(job.value("inverter.full-efficiency")).isEqualTo(0.919);
        }

        /** The table of idle draws ends at 5 kW; a larger inverter that states its own needs no table. */
        @Test
        void anInverterBeyondTheTable() {
            String[] large = {"continuous: 3.2 kW", "continuous: 9.2 kW", "power: 6 kW", "power: 12 kW"};
            assertThat(ChangedDemo.of(LITHIUM, large).value("inverter.idle")).isEqualTo(18);
            assertThat(ChangedDemo.of(LITHIUM, large[0], large[1], large[2], large[3], "  idle:", "  # idle:")
                            .outcome()
                            .problems())
                    .extracting(Diagnostic::rule)
                    .containsExactly("figures.not-in-table");
        }

        /** Left out, the conductor is the least that does, and the fuse the least that suits it. */
        @Test
        void conductorAndFuse() {
            ChangedDemo job = ChangedDemo.of(
                    GLASS_MAT, "fitted: 25 mm2, ", "", "fitted: 25 mm2, ", "", "family: class-t, rating: 125 A, ", "");
            Figures figures = job.figures();
            assertThat(figures.supply().runs()).allSatisfy(run -> {
                assertThat(run.fitted()).isFalse();
                assertThat(run.rating().conductor()).hasToString("50 mm²");
            });
            assertThat(figures.supply().decidingDrop().value())
                    .isLessThanOrEqualTo(figures.supply().allowedDrop().value());
            FuseFigures fuse = figures.fuses().get(0);
            assertThat(fuse.family()).contains(FuseFamily.CLASS_T);
            assertThat(fuse.rating().orElseThrow().value().amperes()).isEqualTo(110);
        }

        /** The return that no fuse names carries the current of the feed and decides when it is thinner. */
        @Test
        void aReturnThatNoFuseNames() {
            assertThat(ChangedDemo.of(VENTED, "2.3 m (measured), fitted: 70", "2.3 m (measured), fitted: 25")
                            .value("fuse.F1.most"))
                    .isEqualTo(140);
        }
    }

    @Nested
    class WithoutFigures {

        private List<String> rules(ChangedDemo job) {
            Figures.Outcome outcome = job.outcome();
            assertThat(outcome.figures()).isNull();
            return outcome.problems().stream().map(Diagnostic::rule).toList();
        }

        @Test
        void everyValueNobodyHasSeenIsTold() {
            assertThat(rules(ChangedDemo.of(
                            LITHIUM,
                            "capacity: 230 Ah (plate)",
                            "capacity: not seen",
                            "cut-out: 21.5 V",
                            "cut-out: not seen")))
                    .containsExactly("figures.needs-value", "figures.needs-value");
        }

        @Test
        void aSizeThatTheRulebookDoesNotHold() {
            assertThat(rules(ChangedDemo.of(LITHIUM, "fitted: 2 x 70 mm2", "fitted: 300 mm2")))
                    .containsExactly("figures.not-in-table");
        }

        /** What no table holds is told where it stands: at the top of the file nobody would find it. */
        @ParameterizedTest
        @CsvSource(delimiter = '|', textBlock = """
                fitted: 2 x 70 mm2 | fitted: 60 mm2           | cables[0].fitted
                links: { size: 70  | links: { size: 60        | bank.links.size
                fitted: 120 mm2    | fitted: 110 mm2          | earths[0].fitted
                voltage: 25.6 V    | voltage: 25 V            | bank.block.voltage
                protects: [B1], f   | role: branch, conductor: 11 mm2, load: 5 A, f | fuses[0].conductor
                """)
        void whatNoTableHoldsIsToldWhereItStands(String before, String after, String path) {
            assertThat(ChangedDemo.of(LITHIUM, before, after).outcome().problems())
                    .singleElement()
                    .satisfies(problem -> {
                        assertThat(problem.rule()).isEqualTo("figures.not-in-table");
                        assertThat(problem.place().path()).isEqualTo(path);
                        assertThat(problem.place().position().line()).isGreaterThan(1);
                    });
        }

        @Test
        void noConductorDoes() {
            assertThat(rules(ChangedDemo.of(GLASS_MAT, "4.6 m (measured), fitted: 25 mm2", "90 m (measured)")))
                    .containsExactly("figures.no-conductor");
        }

        @Test
        void noCables() {
            String first = "cables:\n  - {";
            assertThat(rules(ChangedDemo.of(
                            GLASS_MAT,
                            first,
                            "cables: []\n  # - {",
                            "  - { id: B2",
                            "  # - { id: B2",
                            "protects: [B1]",
                            "protects: []",
                            "isolates: [B1]",
                            "isolates: []",
                            "of: [B1, B2], ",
                            "")))
                    .containsExactly("figures.no-cables");
        }
    }

    @Nested
    class Absence {

        /** Pulses are judged at their peak: what stays on by a thermostat cuts out where its full power does. */
        @Test
        void aThermostatIsJudgedWhileItHeats() {
            String always = "kind: heating, per-use: 3 h, uses-per-day: 0.5";
            ChangedDemo left =
                    ChangedDemo.of(GLASS_MAT, always, always + ", left-on: yes", "cut-out: 10.5 V", "cut-out: 11.4 V");
            Figures figures = left.figures();
            ApplianceFigures alone = figures.appliances().get(1);
            assertThat(figures.absence().toEmpty().value().seconds())
                    .isLessThan(figures.absence().idleToReserve().value().seconds());
            assertThat(figures.absence().toReserve().value().seconds())
                    .isCloseTo(alone.time().value().seconds(), within(1.0));
        }

        @Test
        void nothingLeftOnIsTheIdleDraw() {
            AbsenceFigures absence = ChangedDemo.of(GLASS_MAT).figures().absence();
            assertThat(absence.leftOn()).isEmpty();
            assertThat(absence.toReserve().value())
                    .isEqualTo(absence.idleToReserve().value());
        }
    }

    @Nested
    class Together {

        /** Within the inverter's rating, but even a full bank far away cannot hold its voltage. */
        @Test
        void aPairThatTheBankCannotCarry() {
            ChangedDemo job = ChangedDemo.of(
                    GLASS_MAT,
                    "alarm: 11.5 V",
                    "alarm: 11.95 V",
                    "cut-out: 10.5 V",
                    "cut-out: 11.9 V",
                    "resistance: 11 mΩ",
                    "resistance: 12 mΩ");
            TogetherFigures pair = job.figures().pairs().stream()
                    .filter(it -> it.first().appliance().name().equals("Heat gun")
                            && it.second().appliance().name().equals("Sewing machine"))
                    .findFirst()
                    .orElseThrow();
            assertThat(pair.power().value()).isEqualTo(new Power(790));
            assertThat(pair.allowed()).isFalse();
        }

        /** 2.95 x 2 kW beside 180 W is more than 6 kW: a start that comes back by itself forbids it, arithmetic by hand. */
        @Test
        void aStartThatComesBackFitsOrForbids() {
            Figures figures =
                    ChangedDemo.of(LITHIUM, "start: 1.2,", "start: 2.95,").figures();
            assertThat(order(figures, "Washing machine", "Slow cooker")).isEqualTo(Order.NEVER);
            assertThat(order(figures, "Washing machine", "Laptop")).isEqualTo(Order.ANY);
        }

        /** A start of 1.8 kW x 3.3 = 5.94 kW finds room before 180 W and not beside them, arithmetic by hand. */
        @Test
        void whatCannotStartBesideMustStartBefore() {
            Figures figures = ChangedDemo.of(
                            LITHIUM,
                            "Induction ring, power: 1.8 kW (plate), kind: heating,",
                            "Induction ring, power: 1.8 kW (plate), kind: heating, start: 3.3, start-time: 500 ms,")
                    .figures();
            assertThat(order(figures, "Induction ring", "Slow cooker")).isEqualTo(Order.FIRST);
            assertThat(order(figures, "Induction ring", "Washing machine")).isEqualTo(Order.NEVER);
        }

        private Order order(Figures figures, String... names) {
            return figures.pairs().stream()
                    .filter(pair -> Set.of(names)
                            .equals(Set.of(
                                    pair.first().appliance().name(),
                                    pair.second().appliance().name())))
                    .findFirst()
                    .orElseThrow()
                    .order();
        }

        /** Currents by definition of power: 700 W and 450 W at 230 V are 3.04 A and 1.96 A of the 6 A there are. */
        @Test
        void whatFitsAWeakSupply() {
            AtShoreFigures shore = ChangedDemo.of(GLASS_MAT).figures().atShore().orElseThrow();
            assertThat(shore.available().value().amperes()).isEqualTo(6);
            assertThat(shore.appliances().get(0).current().value().amperes()).isCloseTo(700 / 230.0, within(1e-9));
            assertThat(shore.appliances().get(0).fit()).isEqualTo(Fit.ALWAYS);
            assertThat(shore.pairs().get(0).fit()).isEqualTo(Fit.WITHOUT_CHARGING);
            AtShoreFigures held = ChangedDemo.of(LITHIUM).figures().atShore().orElseThrow();
            assertThat(held.charging().amperes()).isZero();
            assertThat(held.appliances().get(0).fit()).isEqualTo(Fit.NEVER);
        }

        @Test
        void theInvertersRatingHolds() {
            assertThat(ChangedDemo.of(LITHIUM).figures().pairs())
                    .filteredOn(pair -> !pair.allowed())
                    .extracting(pair -> pair.first().appliance().name() + " + "
                            + pair.second().appliance().name())
                    .containsExactly("Induction ring + Washing machine");
        }
    }

    /** Monotone as a whole: a change for the worse in the job never makes a running time longer. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "temperature: 10 °C | temperature: -10 °C",
                "capacity: 115 Ah | capacity: 90 Ah",
                "resistance: 11 mΩ | resistance: 15 mΩ",
                "length: 4.6 m | length: 8 m",
                "reserve: 50 % | reserve: 70 %",
                "best: 91 % (assumed), full: 87.5 % | best: 88 % (assumed), full: 84 %",
                "reserve: 50 % | reserve: 50 %\n  health: 70 %"
            })
    void worseNeverLastsLonger(String found, String instead) {
        List<ApplianceFigures> before = ChangedDemo.of(GLASS_MAT).figures().appliances();
        List<ApplianceFigures> after = ChangedDemo.of(GLASS_MAT, found, instead.replace("\\n", "\n"))
                .figures()
                .appliances();
        for (int i = 0; i < before.size(); i++) {
            assertThat(after.get(i).time().value())
                    .isLessThanOrEqualTo(before.get(i).time().value());
            assertThat(after.get(i).wornTime().value())
                    .isLessThanOrEqualTo(before.get(i).wornTime().value());
        }
        assertThat(after.stream().map(it -> it.sharePerUse().map(Figure::value).orElse(Ratio.NONE)))
                .allSatisfy(share -> assertThat(share.fraction()).isBetween(0.0, 1.0));
    }
}
