package org.quaybook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.quaybook.diag.Severity.DECIDE;
import static org.quaybook.diag.Severity.FORBIDS;
import static org.quaybook.diag.Severity.NOTE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.diag.Severity;
import org.quaybook.figures.ChangedDemo;
import org.quaybook.text.Words;

/**
 * Every check on a job that fails it and on one that passes it, one thing changed between the two. The limits are those of
 * the source that the check names ({@link Check#citation()}).
 */
class FindingsTest {

    private static final String LITHIUM = "lantern-moth";
    private static final String GLASS_MAT = "second-biscuit";
    private static final String AMERICAN = "marmalade-meridian";
    private static final String VENTED = "persimmon-tug";
    private static final String CABIN = "hut-seventeen";

    /** One check, a job that fails it and one that passes it. */
    record Case(Check check, Severity severity, ChangedDemo fails, ChangedDemo passes) {}

    static List<Finding> findings(ChangedDemo demo) {
        return Findings.of(demo.job(), demo.figures(), demo.tables());
    }

    private static Case change(Check check, Severity severity, String demo, String... replacements) {
        return new Case(check, severity, ChangedDemo.of(demo, replacements), ChangedDemo.of(demo));
    }

    private static Case mend(Check check, Severity severity, String demo, String... replacements) {
        return new Case(check, severity, ChangedDemo.of(demo), ChangedDemo.of(demo, replacements));
    }

    /** A test of the barge that fails the check, and one in its place that passes it. */
    private static Case added(Check check, Severity severity, String failing, String passing) {
        String leakage = "  - { test: leakage";
        return new Case(
                check,
                severity,
                ChangedDemo.of(LITHIUM, leakage, "  - { " + failing + " }\n" + leakage),
                ChangedDemo.of(LITHIUM, leakage, "  - { " + passing + " }\n" + leakage));
    }

    static Stream<Case> cases() {
        return Stream.of(dc(), loads(), charging(), mains(), tests(), fitting(), evidence())
                .flatMap(List::stream);
    }

    private static List<Case> fitting() {
        String petrol = "petrol-aboard: no";
        return List.of(
                change(Check.BLOCKS_MIXED, FORBIDS, LITHIUM, "  series: 1", "  blocks-alike: no\n  series: 1"),
                change(Check.LINKS_UNEQUAL, DECIDE, LITHIUM, "  series: 1", "  links-alike: no\n  series: 1"),
                change(Check.WING_NUTS, FORBIDS, LITHIUM, "  lugs-per-stud: 2", "  wing-nuts: yes"),
                change(Check.LUGS_CROWDED, DECIDE, LITHIUM, "lugs-per-stud: 2", "lugs-per-stud: 5"),
                change(Check.PROTECTION_SILENT, DECIDE, LITHIUM, "alarm-before: yes", "alarm-before: no"),
                new Case(
                        Check.ENGINE_SPACE_INSULATION,
                        FORBIDS,
                        ChangedDemo.of(AMERICAN, "105 °C, route: outside-engine-space", "60 °C, route: engine-space"),
                        ChangedDemo.of(AMERICAN, "105 °C, route: outside-engine-space", "75 °C, route: engine-space")),
                change(
                        Check.LUG_ORDER,
                        DECIDE,
                        LITHIUM,
                        "  lugs-per-stud: 2",
                        "  largest-lug-lowest: no\n  lugs-per-stud: 2"),
                change(Check.ONE_POLE_BREAKER, DECIDE, LITHIUM, "curve: B,", "curve: B, two-pole: no,"),
                change(
                        Check.NEUTRAL_TO_CASE,
                        FORBIDS,
                        LITHIUM,
                        "name: Slow cooker,",
                        "name: Slow cooker, neutral-to-case: yes,"),
                change(
                        Check.NEUTRAL_TO_CASE,
                        FORBIDS,
                        LITHIUM,
                        "name: Water heater, power",
                        "name: Water heater, neutral-to-case: yes, power"),
                new Case(
                        Check.MICROWAVE_INPUT,
                        DECIDE,
                        ChangedDemo.of(
                                LITHIUM,
                                "name: Slow cooker, power: 180 W (plate), average: 130 W (assumed), kind: heating",
                                "name: Microwave, power: 800 W (plate), kind: microwave"),
                        ChangedDemo.of(
                                LITHIUM,
                                "name: Slow cooker, power: 180 W (plate), average: 130 W (assumed), kind: heating",
                                "name: Microwave, power: 1.3 kW (plate), kind: microwave")),
                change(
                        Check.BLACK_NEGATIVE,
                        NOTE,
                        AMERICAN,
                        "to: inverter -, length: 2.1 m",
                        "to: inverter -, colour: black, length: 2.1 m"),
                change(Check.AC_DC_TOGETHER, DECIDE, LITHIUM, "joints: 4,", "joints: 4, with-ac: yes,"),
                change(Check.INVERTER_FAR, NOTE, LITHIUM, "length: 1.6 m", "length: 3.1 m"),
                change(
                        Check.IGNITION_PROTECTION,
                        FORBIDS,
                        LITHIUM,
                        petrol,
                        "petrol-aboard: yes",
                        "  pass-through:",
                        "  ignition-protected: no\n  pass-through:"),
                new Case(
                        Check.IGNITION_UNKNOWN,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, petrol, "petrol-aboard: yes"),
                        ChangedDemo.of(
                                LITHIUM,
                                petrol,
                                "petrol-aboard: yes",
                                "  pass-through:",
                                "  ignition-protected: yes\n  pass-through:")),
                // 5 kW at 120 V are 41.7 A.
                change(
                        Check.GENERATOR_PASS_THROUGH,
                        DECIDE,
                        AMERICAN,
                        "  breaker: 30 A\n  neutral-bond",
                        "  neutral-bond"),
                change(
                        Check.GENERATOR_PASS_THROUGH,
                        FORBIDS,
                        AMERICAN,
                        "  breaker: 30 A\n  neutral-bond",
                        "  breaker: 40 A\n  neutral-bond"),
                change(Check.PASS_THROUGH_UNKNOWN, NOTE, LITHIUM, "  pass-through: 30 A\n", ""),
                change(Check.SHORE_BREAKER_UNKNOWN, DECIDE, LITHIUM, "  breaker: 16 A\n", ""),
                // 2.31 kW at 230 V are 10.04 A.
                new Case(
                        Check.CIRCUIT_LOAD,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "1.8 kW (plate), kind", "2.31 kW (plate), circuit: A2, kind"),
                        ChangedDemo.of(LITHIUM, "1.8 kW (plate), kind", "2.30 kW (plate), circuit: A2, kind")),
                new Case(
                        Check.RELIED_ON_PAST,
                        DECIDE,
                        ChangedDemo.of(
                                LITHIUM, "power: 180 W (plate),", "power: 180 W, circuit: A3, must-not-fail: yes,"),
                        ChangedDemo.of(
                                LITHIUM, "power: 180 W (plate),", "power: 180 W, circuit: A1, must-not-fail: yes,")),
                change(Check.CIRCUIT_UNJUDGED, NOTE, VENTED, "cable: 2.5 mm2, source: inverter", "source: inverter"),
                change(
                        Check.CIRCUITS_UNKNOWN,
                        DECIDE,
                        GLASS_MAT,
                        "ac-circuits:\n  - { id: A1, name: Cabin sockets, breaker: 10 A, curve: B, cable: 2.5 mm2,"
                                + " source: inverter, rcd: R1 }\n",
                        "",
                        "earth-continuity, of: [A1]",
                        "earth-continuity",
                        "polarity, of: [A1]",
                        "polarity"),
                change(
                        Check.SOURCE_MISSING,
                        DECIDE,
                        LITHIUM,
                        "source: shore, rcd: R1 }",
                        "source: generator, rcd: R1 }"),
                new Case(
                        Check.SHORE_VOLTAGE,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "  inlet: 16 A\n", "  inlet: 16 A\n  voltage: 120 V\n"),
                        ChangedDemo.of(LITHIUM, "  inlet: 16 A\n", "  inlet: 16 A\n  voltage: 220 V\n")),
                change(Check.FITTED_UNKNOWN, DECIDE, GLASS_MAT, "rating: 125 A, distance", "distance"),
                change(
                        Check.FITTED_UNKNOWN,
                        DECIDE,
                        GLASS_MAT,
                        "length: 4.8 m (measured), fitted: 25 mm2,",
                        "length: 4.8 m (measured),"),
                change(Check.METAL_HULL_UNKNOWN, DECIDE, GLASS_MAT, "metal-hull: no", "metal-hull: not seen"),
                change(
                        Check.LINKS_UNKNOWN,
                        NOTE,
                        GLASS_MAT,
                        "  links: { size: 25 mm2, length: 0.25 m (measured) }\n",
                        ""),
                change(Check.SOURCE_MISSING, DECIDE, "hut-seventeen", "fed-by: generator", "fed-by: shore"),
                change(
                        Check.SOURCE_MISSING,
                        DECIDE,
                        "hut-seventeen",
                        "where: kitchen, shore-on: inverter",
                        "where: kitchen, shore-on: shore"),
                change(Check.SHORE_CABLE_UNKNOWN, NOTE, LITHIUM, "  cable: 2.5 mm2\n  rcd", "  rcd"),
                change(Check.PETROL_UNKNOWN, DECIDE, LITHIUM, petrol, "petrol-aboard: not seen"),
                change(
                        Check.SHORE_BREAKER_DISTANCE_UNKNOWN,
                        DECIDE,
                        LITHIUM,
                        "breaker-distance:",
                        "# breaker-distance:"),
                change(Check.PASS_THROUGH, FORBIDS, LITHIUM, "pass-through: 30 A", "pass-through: 10 A"),
                change(
                        Check.GALVANIC_ISOLATOR,
                        DECIDE,
                        LITHIUM,
                        "galvanic-isolator: yes",
                        "galvanic-isolator: not seen"),
                change(
                        Check.SEARCH_MODE,
                        NOTE,
                        LITHIUM,
                        "  pass-through:",
                        "  search-mode: { on: yes, threshold: 20 W }\n  pass-through:"),
                change(Check.IDLE_DRAIN, NOTE, GLASS_MAT, "idle: 7 W", "idle: 12 W"),
                change(Check.HEATING_ON_BATTERY, NOTE, GLASS_MAT, "per-use: 3 h", "per-use: 5 h"));
    }

    private static List<Case> evidence() {
        return List.of(
                new Case(
                        Check.AC_AFTER_DC,
                        DECIDE,
                        ChangedDemo.of(
                                GLASS_MAT,
                                "0.52 V, by: T. Brackenwhistle, on: 2026-06-08",
                                "0.52 V, by: T. Brackenwhistle, on: 2026-06-07"),
                        ChangedDemo.of(GLASS_MAT)),
                change(Check.POLARITY_NOT_TESTED, DECIDE, LITHIUM, "  - { test: polarity", "  # - { test: polarity"),
                change(Check.EARTH_NOT_TESTED, DECIDE, LITHIUM, "  - { test: earth", "  # - { test: earth"),
                change(
                        Check.INSULATION_NOT_TESTED,
                        DECIDE,
                        LITHIUM,
                        "  - { test: insulation",
                        "  # - { test: insulation"),
                change(
                        Check.SHORE_LOSS_NOT_REHEARSED,
                        DECIDE,
                        LITHIUM,
                        "  - { test: shore-lost",
                        "  # - { test: shore-lost"),
                new Case(
                        Check.BYPASS_NOT_OPERATED,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "  pass-through:", "  bypass: { where: AC board }\n  pass-through:"),
                        ChangedDemo.of(
                                LITHIUM,
                                "  pass-through:",
                                "  bypass: { where: AC board, tested: yes }\n  pass-through:")),
                mend(Check.LEAKAGE_MEASURED, DECIDE, AMERICAN, "result: 11 mA", "result: 9 mA"),
                mend(
                        Check.LEAKAGE_MEASURED,
                        DECIDE,
                        AMERICAN,
                        "  - { test: shore-lost",
                        "  - { test: leakage, source: shore, result: 6 mA, on: 2026-10-02 }\n  - { test: shore-lost"),
                change(Check.MEASUREMENT_DUE, NOTE, LITHIUM, "length: 1.6 m (measured)", "length: 1.6 m (told)"),
                change(Check.SERIAL_MISSING, NOTE, LITHIUM, "  serial: INV", "  # serial: INV"));
    }

    private static List<Case> dc() {
        return List.of(
                change(Check.MAIN_FUSE_MISSING, FORBIDS, GLASS_MAT, "fuses:\n  - {", "fuses: []\n  # - {"),
                // A fuse in the return protects nothing of the feed.
                change(Check.MAIN_FUSE_MISSING, FORBIDS, GLASS_MAT, "protects: [B1]", "protects: [B2]"),
                new Case(
                        Check.FUSE_SELECTIVITY,
                        NOTE,
                        secondFuse(LITHIUM, "role: branch, conductor: 50 mm2, load: 60 A, rating: 150 A"),
                        secondFuse(LITHIUM, "role: branch, conductor: 50 mm2, load: 60 A, rating: 110 A")),
                new Case(
                        Check.STRING_FUSES,
                        NOTE,
                        ChangedDemo.of(GLASS_MAT),
                        secondFuse(GLASS_MAT, "role: string, conductor: 25 mm2, rating: 110 A")),
                // Two fuses in one cable: the one near the battery is far enough, so the other may sit anywhere.
                new Case(
                        Check.FUSE_DISTANCE,
                        FORBIDS,
                        secondFuse(LITHIUM, "role: branch, conductor: 50 mm2, load: 60 A, distance: 250 mm"),
                        ChangedDemo.of(
                                LITHIUM,
                                "fuses:\n",
                                "fuses:\n  - { id: F2, protects: [B1], family: class-t, rating: 225 A, distance: 900 mm }\n")),
                change(Check.FUSE_DISTANCE, FORBIDS, LITHIUM, "distance: 150 mm", "distance: 210 mm"),
                change(Check.FUSE_DISTANCE_UNKNOWN, DECIDE, LITHIUM, "distance: 150 mm (measured), ", ""),
                change(Check.FUSE_INTERRUPTING, FORBIDS, LITHIUM, "family: class-t", "family: mrbf"),
                new Case(
                        Check.FUSE_VOLTAGE,
                        FORBIDS,
                        fortyEightVolts("family: class-t", "family: mega"),
                        fortyEightVolts("family: class-t", "family: nh-gg")),
                // 12 cells of lead are equalised with 32.4 V, in the cold with more; a family of 32 V does not break
                // that.
                new Case(Check.FUSE_VOLTAGE, FORBIDS, chargedWith("32.4 V"), chargedWith("29.6 V")),
                // 16 cells of lithium iron phosphate are charged with 57.2 V or with up to 58.4 V, and lead is not
                // always
                // equalised: what nobody has written is asked. Families of 58 V and of 32 V bear the lower of the two.
                new Case(
                        Check.FUSE_VOLTAGE_UNWRITTEN,
                        DECIDE,
                        fortyEightVolts("family: class-t", "family: mrbf"),
                        fortyEightVolts("family: class-t", "family: nh-gg")),
                new Case(
                        Check.FUSE_VOLTAGE_UNWRITTEN,
                        DECIDE,
                        ChangedDemo.of(VENTED, "family: class-t", "family: anl"),
                        chargedWith("32.4 V")),
                new Case(
                        Check.FUSE_VOLTAGE_UNWRITTEN,
                        DECIDE,
                        ChangedDemo.of(VENTED, "family: class-t", "family: anl"),
                        ChangedDemo.of(VENTED, "family: class-t", "family: anl, interrupting: 6 kA")),
                new Case(Check.CHARGE_UNJUDGED, NOTE, ChangedDemo.of(LITHIUM), allChargersWithCables()),
                // 90 A over 6 m of 25 mm² and back lose some 0.9 V of 24 V; 4 %; over 3 m half of that.
                new Case(
                        Check.CHARGE_DROP,
                        NOTE,
                        alternatorCable("cable: 25 mm2, length: 6 m"),
                        alternatorCable("cable: 25 mm2, length: 3 m")),
                new Case(
                        Check.CHARGE_DROP,
                        DECIDE,
                        alternatorCable("cable: 25 mm2, length: 20 m"),
                        alternatorCable("cable: 25 mm2, length: 3 m")),
                change(Check.FUSE_FAMILY_UNKNOWN, DECIDE, LITHIUM, "family: class-t, ", ""),
                // What the fuse itself states counts where no family of the table would do.
                change(Check.FUSE_INTERRUPTING, FORBIDS, LITHIUM, "family: class-t, ", "interrupting: 1 kA, "),
                change(Check.FUSE_OVER_CABLE, FORBIDS, VENTED, "rating: 150 A", "rating: 300 A"),
                // The return is protected by the fuse of the feed: thinner than the feed, it decides.
                change(
                        Check.FUSE_OVER_CABLE,
                        FORBIDS,
                        VENTED,
                        "2.3 m (measured), fitted: 70",
                        "2.3 m (measured), fitted: 25"),
                change(Check.FUSE_UNDER_LOAD, DECIDE, LITHIUM, "rating: 225 A", "rating: 200 A"),
                change(
                        Check.CABLE_AMPACITY,
                        FORBIDS,
                        VENTED,
                        "2.2 m (measured), fitted: 70",
                        "2.2 m (measured), fitted: 16"),
                // 84 °C of air leave 90 °C insulation a third of its current (Joule's law).
                change(Check.CABLE_AMPACITY, FORBIDS, VENTED, "fitted: 70 mm2", "fitted: 70 mm2, ambient: 84 °C"),
                change(Check.PARALLEL_UNEVEN, FORBIDS, LITHIUM, "alike: yes", "alike: no"),
                change(Check.PARALLEL_UNPROVED, NOTE, LITHIUM, "alike: yes", "alike: not seen"),
                change(Check.PARALLEL_THIN, DECIDE, VENTED, "fitted: 70 mm2", "fitted: 4 x 6 mm2, alike: yes"),
                // Two conductors a pole, both poles together: ISO 13297 Annex A counts bundles from four on (read); the
                // factor 0.7 is from memory. 2 x 25 mm² bear the fuse of 225 A apart and not together.
                new Case(
                        Check.BUNDLE_UNWRITTEN,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "fitted: 2 x 70 mm2", "fitted: 2 x 25 mm2"),
                        ChangedDemo.of(
                                LITHIUM,
                                "fitted: 2 x 70 mm2",
                                "fitted: 2 x 35 mm2",
                                "alike: yes,",
                                "alike: yes, bundled: 2,")),
                mend(Check.SUPPLY_DROP, DECIDE, GLASS_MAT, "fitted: 25", "fitted: 95", "fitted: 25", "fitted: 95"),
                change(Check.SUPPLY_DROP, DECIDE, VENTED, "length: 2.2 m", "length: 30 m"),
                change(Check.SUPPLY_DROP, FORBIDS, VENTED, "length: 2.2 m", "length: 80 m"),
                new Case(Check.TRANSFORMER_BOND, FORBIDS, transformer("no", "no"), transformer("yes", "no")),
                new Case(Check.TRANSFORMER_EARTH, DECIDE, transformer("yes", "yes"), transformer("yes", "no")),
                new Case(Check.TRANSFORMER_UNKNOWN, DECIDE, transformer("yes", "not seen"), transformer("yes", "no")),
                new Case(Check.TRANSFORMER_UNKNOWN, DECIDE, transformer("not seen", "no"), transformer("yes", "no")),
                // Behind a transformer no RCD ashore sees two ties.
                new Case(
                        Check.NEUTRAL_BUS_COMMON,
                        DECIDE,
                        ChangedDemo.of(AMERICAN),
                        ChangedDemo.of(
                                AMERICAN,
                                "shore:\n",
                                "shore:\n  transformer: { neutral-tied: yes, shore-earth-goes-on: no }\n")),
                change(
                        Check.SUPPLY_ONE_POLE,
                        FORBIDS,
                        VENTED,
                        "from: battery -, to: inverter -",
                        "from: battery +, to: inverter +"),
                change(Check.ISOLATOR_MISSING, FORBIDS, LITHIUM, "isolates: [B1]", "isolates: [shore]"),
                change(Check.ISOLATOR_TOOL, FORBIDS, VENTED, "tool-free: yes", "tool-free: no"),
                // 56 A and more for a third of 166 A, 83 A and more beside a branch of 80 A; 80 % of 100 A are 80 A.
                new Case(Check.PROTECTION_CURRENT, DECIDE, besideBranch("load: 80 A"), besideBranch("load: 40 A")),
                new Case(
                        Check.BRANCH_AVERAGE,
                        DECIDE,
                        smallBranch("load: 30 A"),
                        smallBranch("load: 30 A, average: 0 A")),
                // 106 A of the inverter need a fuse of 132 A; with 30 A beside it the 150 A of the demo are too few.
                new Case(
                        Check.WAY_UNKNOWN,
                        DECIDE,
                        smallBranch("load: 30 A"),
                        smallBranch("load: 30 A, through: [bank]")),
                new Case(
                        Check.WAY_ONE_POLE,
                        NOTE,
                        smallBranch("load: 30 A, through: [F1, B1]"),
                        smallBranch("load: 30 A, through: [F1, B1, B2]")),
                new Case(
                        Check.WAY_ONE_POLE,
                        NOTE,
                        ChangedDemo.of(VENTED, "kind: alternator,", "kind: alternator, through: [B2],"),
                        ChangedDemo.of(VENTED, "kind: alternator,", "kind: alternator, through: [F1],")),
                new Case(
                        Check.FUSE_UNDER_LOAD,
                        DECIDE,
                        smallBranch("load: 30 A, through: [F1]"),
                        smallBranch("load: 30 A")),
                // 106 A and 40 A may pass a switch of 140 A; one of the whole bank has them counted already.
                new Case(
                        Check.WAY_UNKNOWN,
                        DECIDE,
                        smallBranch(
                                "load: 42 A",
                                "rating: 150 A",
                                "rating: 200 A",
                                "rating: 200 A, isolates: [B1]",
                                "rating: 140 A, isolates: [B1]"),
                        smallBranch(
                                "load: 40 A",
                                "rating: 150 A",
                                "rating: 200 A",
                                "rating: 200 A, isolates: [B1]",
                                "rating: 150 A, isolates: [bank, B1]")),
                // The plus stays live behind an open minus.
                change(Check.ISOLATOR_MISSING, FORBIDS, LITHIUM, "isolates: [B1]", "isolates: [B2]"),
                // 166 A for a third of the strings each, and more for the hardest worked.
                new Case(
                        Check.DISCHARGE_RATE,
                        DECIDE,
                        ChangedDemo.of(
                                LITHIUM, "    discharge: 150 A (plate)\n", "", "capacity: 230 Ah", "capacity: 50 Ah"),
                        ChangedDemo.of(LITHIUM, "capacity: 230 Ah", "capacity: 50 Ah")),
                // Makers of glass mat charge a 12 V block with 14.8 V at most, of lithium with 3.65 V a cell (from
                // memory).
                new Case(Check.CHARGE_VOLTAGE_HIGH, DECIDE, setTo(GLASS_MAT, "15.0 V"), setTo(GLASS_MAT, "14.8 V")),
                new Case(Check.CHARGE_VOLTAGE_HIGH, FORBIDS, setTo(LITHIUM, "29.3 V"), setTo(LITHIUM, "29.2 V")),
                change(Check.RESERVE_LOW, DECIDE, GLASS_MAT, "reserve: 50 %", "reserve: 40 %"),
                // The inverter of the barge draws up to 166 A.
                change(Check.ISOLATOR_RATING, FORBIDS, LITHIUM, "rating: 200 A", "rating: 150 A"),
                new Case(
                        Check.ISOLATOR_RATING,
                        FORBIDS,
                        alternatorCable("cable: 35 mm2", "isolates: [B1]", "isolates: [B1, F2]"),
                        alternatorCable("cable: 35 mm2")),
                new Case(
                        Check.ISOLATOR_RATING,
                        FORBIDS,
                        ChangedDemo.of(
                                LITHIUM, "rating: 200 A", "rating: 150 A", "isolates: [B1]", "isolates: [inverter]"),
                        ChangedDemo.of(LITHIUM, "isolates: [B1]", "isolates: [inverter]")),
                change(Check.ISOLATOR_RATING_UNKNOWN, NOTE, LITHIUM, "rating: 200 A, ", ""),
                mend(Check.TAKE_OFF_UNEVEN, DECIDE, GLASS_MAT, "take-off: same-end", "take-off: opposite-ends"),
                change(Check.STRINGS_MANY, NOTE, GLASS_MAT, "parallel: 3", "parallel: 4"),
                // 6 mΩ at 27 V are some 4.5 kA (Ohm's law).
                new Case(
                        Check.SHORT_CIRCUIT_UNLIKELY,
                        DECIDE,
                        ChangedDemo.of(
                                LITHIUM, "    resistance: 6 mΩ", "    short-circuit: 1.4 kA\n    resistance: 6 mΩ"),
                        ChangedDemo.of(
                                LITHIUM, "    resistance: 6 mΩ", "    short-circuit: 1.6 kA\n    resistance: 6 mΩ")),
                change(Check.PROTECTION_CURRENT, DECIDE, LITHIUM, "discharge: 150 A", "discharge: 60 A"),
                new Case(
                        Check.PROTECTION_PEAK,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "discharge: 150 A", "peak: 30 A\n    discharge: 30 A"),
                        ChangedDemo.of(LITHIUM, "discharge: 150 A", "peak: 60 A\n    discharge: 30 A")),
                change(Check.PROTECTION_CUT_OUT, FORBIDS, LITHIUM, "cut-out: 20.0 V", "cut-out: 22.0 V"),
                // At the same voltage either may be first.
                change(Check.PROTECTION_CUT_OUT, FORBIDS, LITHIUM, "cut-out: 20.0 V", "cut-out: 21.5 V"),
                change(Check.PROTECTION_CASCADE, NOTE, LITHIUM, "discharge: 150 A", "discharge: 80 A"),
                change(Check.VENTILATION, FORBIDS, VENTED, "inlet: 150 cm2", "inlet: 140 cm2"),
                change(Check.VENTILATION, FORBIDS, GLASS_MAT, "outlet: 40 cm2", "outlet: 23 cm2"),
                new Case(
                        Check.VENT_FAN,
                        FORBIDS,
                        ChangedDemo.of(VENTED, "inlet: 150 cm2", "fan: 5.0 m³/h, inlet: 150 cm2"),
                        ChangedDemo.of(VENTED, "inlet: 150 cm2", "fan: 5.1 m³/h, inlet: 20 cm2")),
                change(Check.VENT_PLACES, DECIDE, VENTED, "inlet: 150 cm2", "inlet-place: high, inlet: 150 cm2"),
                change(Check.VENT_OUTSIDE_UNKNOWN, DECIDE, VENTED, ", leads-to: open deck", ""),
                change(Check.VENT_INSIDE, FORBIDS, VENTED, "inlet: 150 cm2", "outside: no, inlet: 150 cm2"),
                change(Check.VENT_INSIDE, DECIDE, GLASS_MAT, "inlet: 40 cm2", "outside: no, inlet: 40 cm2"),
                change(Check.VENTILATION_UNKNOWN, DECIDE, GLASS_MAT, "  vent: {", "  # vent: {"),
                change(Check.VENTILATION_UNKNOWN, FORBIDS, VENTED, "  vent: {", "  # vent: {"),
                change(Check.TORQUE_MISSING, DECIDE, LITHIUM, "  torque: 12 Nm (m", "  # torque: 12 Nm (m"),
                change(Check.STACK_ORDER, FORBIDS, LITHIUM, "stack: lug, flat", "stack: flat washer, lug, flat"));
    }

    private static ChangedDemo protective(String keys) {
        return ChangedDemo.of(
                VENTED,
                "earths:\n",
                "earths:\n  - { id: E9, kind: protective, from: socket, to: earth bus, of: A1, " + keys + " }\n");
    }

    private static ChangedDemo secondFuse(String demo, String keys) {
        String distance = keys.contains("distance") ? "" : ", distance: 100 mm";
        return ChangedDemo.of(
                demo, "fuses:\n", "fuses:\n  - { id: F2, protects: [], family: class-t, " + keys + distance + " }\n");
    }

    private static ChangedDemo setTo(String demo, String voltage) {
        return ChangedDemo.of(demo, "bank:\n", "bank:\n  charge-voltage: " + voltage + "\n");
    }

    private static ChangedDemo dependedOn(String perUse) {
        return ChangedDemo.of(LITHIUM, "kind: heating, per-use: 6 h", "must-not-fail: yes, per-use: " + perUse);
    }

    private static ChangedDemo chargedWith(String voltage) {
        return ChangedDemo.of(
                VENTED, "family: class-t", "family: anl", "bank:\n", "bank:\n  charge-voltage: " + voltage + "\n");
    }

    private static ChangedDemo fortyEightVolts(String fitted, String instead) {
        return ChangedDemo.of(
                LITHIUM,
                "voltage: 25.6 V",
                "voltage: 51.2 V",
                "alarm: 23.0 V",
                "alarm: 46.0 V",
                "cut-out: 21.5 V",
                "cut-out: 43.0 V",
                "restart: 25.0 V",
                "restart: 50.0 V",
                fitted,
                instead);
    }

    private static ChangedDemo besideDehumidifier(String leftOn) {
        return ChangedDemo.of(
                LITHIUM,
                "name: Laptop,",
                "name: Laptop, wished-time: 60 h,",
                "start-time: 500 ms, left-on: yes",
                "start-time: 500 ms, " + leftOn);
    }

    private static List<Case> loads() {
        String slowCooker = "name: Slow cooker, power: 180 W (plate), average: 130 W (assumed), kind: heating";
        return List.of(
                mend(Check.ALARM_EARLY, DECIDE, GLASS_MAT, "alarm: 11.5 V", "alarm: 11.0 V"),
                // 150 A through bank and 9.4 m of 25 mm² are nearly 2 V of 12.1 V at half charge, 60 A some 0.8 V.
                new Case(
                        Check.BRANCH_CUTS_OUT,
                        DECIDE,
                        windlass("load: 150 A, average: 0 A, through: [F1, B1, B2]"),
                        windlass("load: 150 A, average: 0 A, through: [bank]")),
                new Case(
                        Check.BRANCH_ALARMS,
                        NOTE,
                        windlass("load: 60 A, average: 0 A, through: [F1, B1, B2]"),
                        windlass("load: 20 A, average: 0 A, through: [bank]")),
                change(Check.CUT_OUT_EARLY, DECIDE, GLASS_MAT, "cut-out: 10.5 V", "cut-out: 11.4 V"),
                change(Check.APPLIANCE_TOO_LARGE, DECIDE, GLASS_MAT, "power: 700 W", "power: 801 W"),
                change(Check.START_TOO_LARGE, DECIDE, VENTED, "start: 3,", "start: 3.7,"),
                // 2.0 kW start with 3.0 of 3.2 kW; beside 240 W it is 3.24 kW, which is had for 3 s.
                new Case(
                        Check.TOGETHER_START_LONG,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "start: 1.2, start-time: 500 ms", "start: 1.5, start-time: 4 s"),
                        ChangedDemo.of(LITHIUM, "start: 1.2, start-time: 500 ms", "start: 1.5, start-time: 2 s")),
                new Case(
                        Check.TOGETHER_START_LONG,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "start: 1.2, start-time: 500 ms", "start: 1.5, start-time: 4 s"),
                        ChangedDemo.of(LITHIUM, "start: 1.2, start-time: 500 ms", "start: 1.4, start-time: 4 s")),
                change(Check.START_TOO_LONG, DECIDE, VENTED, "start-time: 300 ms", "start-time: 6 s"),
                change(
                        Check.CUTS_OUT_WHEN_FULL,
                        DECIDE,
                        GLASS_MAT,
                        "alarm: 11.5 V",
                        "alarm: 12.3 V",
                        "cut-out: 10.5 V",
                        "cut-out: 12.1 V"),
                // It runs, but its start pulls a full bank below the cut-out.
                change(
                        Check.CUTS_OUT_WHEN_FULL,
                        DECIDE,
                        VENTED,
                        "cut-out: 21.0 V",
                        "cut-out: 21.9 V",
                        "resistance: 0.56",
                        "resistance: 1.7"),
                change(
                        Check.TOGETHER_TOO_LARGE,
                        DECIDE,
                        LITHIUM,
                        "[Washing machine, Dehumidifier]",
                        "[Washing machine, Induction ring]"),
                change(
                        Check.TOGETHER_TOO_LARGE,
                        DECIDE,
                        LITHIUM,
                        "[Washing machine, Dehumidifier] }",
                        "[Washing machine, Dehumidifier] }",
                        "power: 240 W (measured), kind: motor, start: 4",
                        "power: 240 W (measured), kind: motor, start: 11.9",
                        "power: 6 kW",
                        "power: 4.8 kW"),
                new Case(
                        Check.TOGETHER_CUTS_OUT,
                        DECIDE,
                        twoAtOnce("cut-out: 10.5 V", "cut-out: 11.9 V"),
                        twoAtOnce("cut-out: 10.5 V", "cut-out: 10.5 V")),
                new Case(Check.MUST_NOT_FAIL, DECIDE, dependedOn("40 h"), dependedOn("6 h")),
                new Case(Check.WISHED_TIME, NOTE, wished("95 min"), wished("70 min")),
                new Case(Check.WISHED_TIME, DECIDE, wished("3 h"), wished("70 min")),
                // By itself the laptop runs for days; the dehumidifier that stays on leaves less.
                new Case(
                        Check.WISHED_TIME,
                        DECIDE,
                        besideDehumidifier("left-on: yes"),
                        besideDehumidifier("left-on: no")),
                change(
                        Check.INVERTER_DERATED,
                        NOTE,
                        VENTED,
                        "  where: deckhouse, aft",
                        "  locker: 45 °C\n  where: deckhouse, aft"),
                mend(
                        Check.LEFT_ON_TAKE_OVER,
                        DECIDE,
                        LITHIUM,
                        "when-shore-fails: take-over",
                        "when-shore-fails: stay-off"),
                change(
                        Check.HEATING_LEFT_ON,
                        FORBIDS,
                        LITHIUM,
                        "power: 240 W (measured), kind: motor, start: 4",
                        "power: 1.8 kW (measured), kind: heating, start: 1"),
                // Circuits that shore power never feeds hang on the battery, whatever is plugged in.
                change(
                        Check.HEATING_LEFT_ON,
                        FORBIDS,
                        LITHIUM,
                        "power: 240 W (measured), kind: motor, start: 4",
                        "power: 1.8 kW (measured), kind: heating, start: 1",
                        "kind: automatic",
                        "kind: none",
                        "    time: 15 ms\n    when-shore-fails: take-over\n",
                        ""),
                change(Check.WAVE_MODIFIED, DECIDE, LITHIUM, "wave: sine", "wave: modified"),
                change(Check.EFFICIENCIES_DISAGREE, NOTE, LITHIUM, "idle: 18 W", "idle: 300 W"),
                new Case(
                        Check.MICROWAVE_POWER,
                        DECIDE,
                        ChangedDemo.of(
                                LITHIUM,
                                slowCooker,
                                "name: Microwave, power: 800 W (plate), output-power: 800 W (plate), kind: microwave"),
                        ChangedDemo.of(
                                LITHIUM,
                                slowCooker,
                                "name: Microwave, power: 1.2 kW (plate), output-power: 800 W (plate), kind: microwave")),
                change(
                        Check.MAINS_MISMATCH,
                        DECIDE,
                        LITHIUM,
                        "kind: electronics",
                        "kind: electronics, frequency: 60 Hz"),
                change(
                        Check.MAINS_MISMATCH,
                        DECIDE,
                        LITHIUM,
                        "kind: electronics",
                        "kind: electronics, voltage: 110 V"));
    }

    /** Heat gun and sewing machine. */
    private static ChangedDemo twoAtOnce(String cutOut, String instead) {
        return ChangedDemo.of(
                GLASS_MAT,
                "alarm: 11.5 V",
                "alarm: 11.95 V",
                cutOut,
                instead,
                "resistance: 11 mΩ",
                "resistance: 12 mΩ",
                "\ntests:",
                "\ntogether:\n  - { appliances: [Heat gun, Sewing machine] }\n\ntests:");
    }

    /** A running time wished for the heat gun. */
    private static ChangedDemo wished(String time) {
        return ChangedDemo.of(GLASS_MAT, "power: 700 W (plate),", "power: 700 W (plate), wished-time: " + time + ",");
    }

    private static ChangedDemo besideBranch(String load) {
        return ChangedDemo.of(
                LITHIUM,
                "discharge: 150 A",
                "discharge: 100 A",
                "spare: taped inside the board door }",
                "spare: taped inside the board door }\n"
                        + "  - { id: F2, role: branch, feeds: Windlass, conductor: 35 mm2, " + load
                        + ", rating: 115 A, interrupting: 20 kA, distance: 100 mm }");
    }

    /** The workboat with a branch of which it may not be known where it is connected. */
    private static ChangedDemo smallBranch(String keys, String... more) {
        List<String> replacements = new ArrayList<>(List.of(more));
        replacements.add("fuses:\n");
        replacements.add(
                "fuses:\n  - { id: F2, role: branch, feeds: Windlass, conductor: 35 mm2, rating: 50 A, interrupting: 20 kA,"
                        + " distance: 100 mm, " + keys + " }\n");
        return ChangedDemo.of(VENTED, replacements.toArray(String[]::new));
    }

    private static ChangedDemo windlass(String keys, String... more) {
        List<String> replacements = new ArrayList<>(List.of(
                "fuses:\n",
                "fuses:\n  - { id: F2, role: branch, feeds: Windlass, conductor: 35 mm2, rating: 150 A, " + keys
                        + " }\n"));
        replacements.addAll(List.of(more));
        return ChangedDemo.of(GLASS_MAT, replacements.toArray(String[]::new));
    }

    /** The barge's alternator with a cable of its own, and a fuse for it at the bank. */
    private static ChangedDemo alternatorCable(String keys, String... more) {
        List<String> replacements = new ArrayList<>(List.of(
                "spare: taped inside the board door }",
                "spare: taped inside the board door }\n"
                        + "  - { id: F2, role: branch, feeds: Engine alternator, conductor: 35 mm2, load: 90 A,"
                        + " rating: 115 A, interrupting: 20 kA, distance: 100 mm }",
                "name: Engine alternator,",
                "name: Engine alternator, " + keys + ","));
        replacements.addAll(List.of(more));
        return ChangedDemo.of(LITHIUM, replacements.toArray(String[]::new));
    }

    private static ChangedDemo transformer(String tied, String goesOn) {
        return ChangedDemo.of(
                LITHIUM,
                "shore:\n",
                "shore:\n  transformer: { neutral-tied: " + tied + ", shore-earth-goes-on: " + goesOn + " }\n");
    }

    private static ChangedDemo allChargersWithCables() {
        return ChangedDemo.of(
                LITHIUM,
                "name: Shore charger,",
                "name: Shore charger, cable: 16 mm2,",
                "name: Engine alternator,",
                "name: Engine alternator, cable: 35 mm2,",
                "name: Roof panels,",
                "name: Roof panels, cable: 10 mm2,");
    }

    private static List<Case> charging() {
        return List.of(
                change(
                        Check.COLD_CHARGE,
                        FORBIDS,
                        LITHIUM,
                        "winter-sun: 0.7 h, cold-stop: yes",
                        "winter-sun: 0.7 h, cold-stop: no"),
                mend(Check.ALTERNATOR_HEAT, DECIDE, LITHIUM, "temperature-sensor: no", "temperature-sensor: yes"),
                // One whose current nobody has written gives all of its 90 A.
                new Case(
                        Check.ALTERNATOR_HEAT,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated", "rated"),
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated", "current: 54 A, rated")),
                // 43.2 A are 60 % of 72 A and not more, though 43.2 / 72 is more than 0.6 in binary fractions.
                new Case(
                        Check.ALTERNATOR_HEAT,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated: 90 A", "current: 43.3 A, rated: 72 A"),
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated: 90 A", "current: 43.2 A, rated: 72 A")),
                // 50 A of 90 A are less than 60 % of it, but only if something keeps them to that.
                new Case(
                        Check.ALTERNATOR_LIMIT_UNKNOWN,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated", "current: 50 A, rated"),
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated", "current: 50 A, current-limited: yes, rated")),
                // Where nothing does, the rating counts.
                new Case(
                        Check.ALTERNATOR_HEAT,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated", "current: 50 A, current-limited: no, rated"),
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated", "current: 50 A, current-limited: yes, rated")),
                new Case(
                        Check.ALTERNATOR_RATING_UNWRITTEN,
                        NOTE,
                        ChangedDemo.of(LITHIUM, "current: 90 A, rated: 90 A", "current: 30 A, current-limited: yes"),
                        ChangedDemo.of(
                                LITHIUM,
                                "current: 90 A, rated: 90 A",
                                "current: 30 A, current-limited: yes, rated: 90 A")),
                change(Check.ALTERNATOR_UNKNOWN, DECIDE, LITHIUM, "current: 90 A, rated: 90 A", "current: 90 A"),
                // 16 mm² of 70 °C bear 90 A by the table, 0.75 of it in an engine space (ISO 13297, from memory).
                new Case(
                        Check.CHARGE_CABLE_ENGINE,
                        DECIDE,
                        alternatorCable("cable: 16 mm2"),
                        alternatorCable("cable: 16 mm2, route: outside-engine-space")),
                new Case(
                        Check.CHARGE_CABLE,
                        FORBIDS,
                        alternatorCable("cable: 16 mm2, route: engine-space"),
                        alternatorCable("cable: 16 mm2, route: engine-space, insulation: 105 °C")),
                new Case(
                        Check.CHARGE_FUSE,
                        DECIDE,
                        alternatorCable("cable: 35 mm2"),
                        alternatorCable("cable: 35 mm2, fuse: F2")),
                // 35 mm² of 70 °C bear 160 A, 120 A in an engine space.
                new Case(
                        Check.CHARGE_FUSE_LARGE,
                        FORBIDS,
                        alternatorCable("cable: 35 mm2, fuse: F1"),
                        alternatorCable("cable: 35 mm2, fuse: F2")),
                // 90 A / 0.8 are 112.5 A.
                new Case(
                        Check.CHARGE_FUSE_SMALL,
                        DECIDE,
                        alternatorCable("cable: 35 mm2, fuse: F2", "rating: 115 A", "rating: 110 A"),
                        alternatorCable("cable: 35 mm2, fuse: F2")),
                // A generator may run under way: 55 A of the alternator and 60 A of its charger.
                change(Check.CHARGE_CURRENT, DECIDE, VENTED, "fed-by: shore", "fed-by: generator"),
                change(Check.CHARGE_CURRENT, DECIDE, VENTED, "current: 60 A", "current: 85 A"),
                change(Check.CHARGE_CURRENT, DECIDE, VENTED, "current: 55 A", "current: 85 A"),
                // Panels that state their peak only: 3 kW at 12 V are 250 A.
                change(Check.CHARGE_CURRENT, DECIDE, GLASS_MAT, "peak: 160 W, current: 10 A", "peak: 3 kW"),
                change(Check.SHORE_NEARLY_FULL, DECIDE, VENTED, "smallest-pedestal: 16 A", "smallest-pedestal: 11 A"),
                new Case(
                        Check.CHARGE_CABLE,
                        FORBIDS,
                        ChangedDemo.of(LITHIUM, "name: Shore charger,", "name: Shore charger, cable: 6 mm2,"),
                        ChangedDemo.of(LITHIUM, "name: Shore charger,", "name: Shore charger, cable: 16 mm2,")),
                change(Check.SOURCE_LOOP, FORBIDS, LITHIUM, "fed-by: shore", "fed-by: inverter"),
                new Case(
                        Check.CHARGE_COLD,
                        NOTE,
                        ChangedDemo.of(LITHIUM, "temperature: 1 °C", "temperature: 5 °C"),
                        ChangedDemo.of(LITHIUM, "temperature: 1 °C", "temperature: 26 °C")),
                // What stays on takes 11 A.
                change(Check.CHARGER_BEATEN, DECIDE, LITHIUM, "current: 90 A, rated", "current: 10 A, rated"),
                change(Check.CHARGER_BEATEN, DECIDE, LITHIUM, "input-limit: 6 A", "input-limit: 1 A"),
                change(Check.SHORE_OVERLOAD, DECIDE, LITHIUM, "  input-limit: 6 A", "  # input-limit: 6 A"),
                mend(Check.SHORE_RETURN, NOTE, LITHIUM, "smallest-pedestal: 6 A", "smallest-pedestal: 9 A"),
                change(Check.GENERATOR_SMALL, DECIDE, CABIN, "current: 50 A", "current: 60 A"),
                // The well pump starts at 6.05 kW; with the charger 9.6 kW.
                mend(Check.GENERATOR_BEYOND, NOTE, CABIN, "power: 4.8 kW", "power: 8 kW"),
                change(Check.GENERATOR_START, NOTE, CABIN, "power: 4.8 kW", "power: 8 kW"),
                change(Check.DAY_CUT_OUT, NOTE, LITHIUM, "capacity: 230 Ah", "capacity: 90 Ah"));
    }

    private static List<Case> mains() {
        return List.of(
                change(
                        Check.BREAKER_OVER_CABLE,
                        FORBIDS,
                        LITHIUM,
                        "curve: B, cable: 2.5 mm2",
                        "curve: B, cable: 1 mm2"),
                change(Check.BREAKER_OVER_CABLE, FORBIDS, LITHIUM, "  cable: 2.5 mm2", "  cable: 1 mm2"),
                change(Check.BREAKER_OVER_INLET, FORBIDS, LITHIUM, "  breaker: 16 A", "  breaker: 20 A"),
                mend(
                        Check.BREAKER_ON_BATTERY,
                        NOTE,
                        LITHIUM,
                        "continuous: 3.2 kW",
                        "continuous: 9.2 kW",
                        "power: 6 kW",
                        "power: 12 kW"),
                change(Check.LEAKAGE_BUDGET, NOTE, LITHIUM, "kind: electronics", "kind: electronics, leakage: 9.1 mA"),
                change(Check.RCD_MISSING, FORBIDS, GLASS_MAT, "source: inverter, rcd: R1 }", "source: inverter }"),
                change(
                        Check.RCD_MISSING_SHORE,
                        FORBIDS,
                        LITHIUM,
                        "source: shore, rcd: R1 }",
                        "source: shore }",
                        "  rcd: R1\n",
                        ""),
                change(Check.RCD_MISSING_GENERATOR, FORBIDS, AMERICAN, "source: shore, rcd: R1 }", "source: shore }"),
                change(
                        Check.RCD_ON_GENERATOR,
                        DECIDE,
                        AMERICAN,
                        "of: [R1, R2], source: generator",
                        "of: [R2], source: generator"),
                new Case(
                        Check.RCD_ON_GENERATOR,
                        DECIDE,
                        ChangedDemo.of(AMERICAN, "of: [R1, R2], source: generator", "of: [R2], source: generator"),
                        ChangedDemo.of(
                                AMERICAN,
                                "of: [R1, R2], source: generator",
                                "of: [R2], source: generator",
                                "  steady: yes",
                                "  steady: yes\n  rcd: R1")),
                change(Check.RCD_UPSTREAM, FORBIDS, LITHIUM, "source: inverter, rcd: R2", "source: inverter, rcd: R1"),
                new Case(
                        Check.BREAKER_UNJUDGED,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "curve: B, cable: 2.5 mm2", "curve: B, cable: 0.75 mm2"),
                        ChangedDemo.of(LITHIUM)),
                new Case(
                        Check.BREAKER_CABLE_LAID,
                        DECIDE,
                        ChangedDemo.of(LITHIUM, "breaker: 16 A, curve: B", "breaker: 20 A, curve: B"),
                        ChangedDemo.of(
                                LITHIUM, "breaker: 16 A, curve: B", "breaker: 20 A, laid: in-conduit, curve: B")),
                new Case(
                        Check.BREAKER_OVER_CABLE,
                        FORBIDS,
                        ChangedDemo.of(
                                LITHIUM, "breaker: 16 A, curve: B", "breaker: 20 A, laid: in-insulation, curve: B"),
                        ChangedDemo.of(
                                LITHIUM,
                                "breaker: 16 A, curve: B",
                                "breaker: 20 A, laid: in-insulation, insulation: 90 °C, curve: B")),
                new Case(
                        Check.INLET_OVER_CABLE,
                        FORBIDS,
                        ChangedDemo.of(LITHIUM, "  breaker: 16 A\n", "", "inlet: 16 A", "inlet: 32 A"),
                        ChangedDemo.of(LITHIUM, "  breaker: 16 A\n", "")),
                change(Check.GENERATOR_BOND, FORBIDS, AMERICAN, "neutral-bond: always", "neutral-bond: none"),
                change(
                        Check.GENERATOR_BOND_UNKNOWN,
                        DECIDE,
                        AMERICAN,
                        "neutral-bond: always",
                        "neutral-bond: not seen"),
                change(Check.EARTH_THIN, FORBIDS, VENTED, "fitted: 50 mm2, length", "fitted: 35 mm2, length"),
                change(Check.EARTH_THIN, FORBIDS, VENTED, "fitted: 16 mm2, length", "fitted: 4 mm2, length"),
                new Case(
                        Check.EARTH_THIN,
                        FORBIDS,
                        protective("fitted: 1.5 mm2, in-cable: yes"),
                        protective("fitted: 2.5 mm2, in-cable: yes")),
                new Case(Check.EARTH_THIN, FORBIDS, protective("fitted: 2.5 mm2"), protective("fitted: 4 mm2")),
                change(Check.EARTH_HOT, NOTE, LITHIUM, "fitted: 120 mm2, length", "fitted: 25 mm2, length"),
                change(Check.EARTH_UNJUDGED, DECIDE, VENTED, "fitted: 50 mm2, length", "fitted: not seen, length"),
                change(Check.EARTH_CASE_UNKNOWN, DECIDE, GLASS_MAT, "earths:\n  - {", "earths: []\n  # - {"),
                change(Check.EARTH_BOND_UNKNOWN, DECIDE, VENTED, "kind: bond", "kind: case"),
                // Circuits that shore never feeds may stay tied at the inverter.
                new Case(
                        Check.NEUTRAL_BOND_ALWAYS,
                        FORBIDS,
                        ChangedDemo.of(
                                GLASS_MAT, "inverter-only", "always", "switches-neutral: yes", "switches-neutral: no"),
                        ChangedDemo.of(GLASS_MAT, "inverter-only", "always")),
                change(Check.RCD_RATING, FORBIDS, LITHIUM, "id: R2, rating: 30 mA", "id: R2, rating: 100 mA"),
                change(Check.RCD_TYPE, DECIDE, GLASS_MAT, "type: A,", "type: AC,"),
                change(
                        Check.NEUTRAL_BOND_MISSING,
                        FORBIDS,
                        LITHIUM,
                        "neutral-bond: inverter-only",
                        "neutral-bond: none"),
                change(
                        Check.NEUTRAL_BOND_ALWAYS,
                        FORBIDS,
                        LITHIUM,
                        "neutral-bond: inverter-only",
                        "neutral-bond: always"),
                change(
                        Check.NEUTRAL_BUS_COMMON,
                        DECIDE,
                        LITHIUM,
                        "switches-neutral: yes",
                        "switches-neutral: yes\n    neutral-bus-per-source: no"),
                change(
                        Check.NEUTRAL_BOND_UNKNOWN,
                        DECIDE,
                        LITHIUM,
                        "neutral-bond: inverter-only",
                        "neutral-bond: not seen"),
                change(Check.CHANGEOVER_INTERLOCK, FORBIDS, LITHIUM, "interlocked: yes", "interlocked: no"),
                change(Check.CHANGEOVER_INTERLOCK, FORBIDS, LITHIUM, "switches-neutral: yes", "switches-neutral: no"),
                change(Check.CHANGEOVER_MISSING, FORBIDS, LITHIUM, "kind: automatic", "kind: none"),
                change(
                        Check.GENERATOR_INTERLOCK,
                        FORBIDS,
                        AMERICAN,
                        "interlocked: yes\n  chosen-by",
                        "interlocked: no\n  chosen-by"),
                change(
                        Check.GENERATOR_INTERLOCK_UNKNOWN,
                        DECIDE,
                        AMERICAN,
                        "interlocked: yes\n  chosen-by",
                        "chosen-by"),
                change(Check.CHANGEOVER_UNKNOWN, DECIDE, LITHIUM, "interlocked: yes", "interlocked: not seen"),
                change(
                        Check.SHORE_BREAKER_DISTANCE,
                        FORBIDS,
                        LITHIUM,
                        "breaker-distance: 1.2 m",
                        "breaker-distance: 3.1 m"));
    }

    private static List<Case> tests() {
        return List.of(
                change(
                        Check.RCD_NOT_TESTED,
                        DECIDE,
                        LITHIUM,
                        "  - { test: rcd-trip, of: [R2]",
                        "  # - { test: rcd-trip, of: [R2]"),
                change(
                        Check.RCD_NOT_TESTED,
                        DECIDE,
                        VENTED,
                        "  - { test: rcd-trip, of: [R1], source: shore",
                        "  # - { test: rcd-trip, of: [R1], source: shore"),
                change(
                        Check.RCD_NOT_TESTED,
                        DECIDE,
                        "hut-seventeen",
                        "  - { test: rcd-trip, of: [R1], source: generator",
                        "  # - { test: rcd-trip, of: [R1], source: generator"),
                change(Check.RCD_SLOW, FORBIDS, LITHIUM, "result: 21 ms", "result: 301 ms"),
                new Case(
                        Check.RCD_SLOW,
                        FORBIDS,
                        ChangedDemo.of(LITHIUM, "at: 30 mA, result: 21 ms", "at: 60 mA, result: 151 ms"),
                        ChangedDemo.of(LITHIUM, "at: 30 mA, result: 21 ms", "at: 60 mA, result: 149 ms")),
                change(Check.RCD_SLOW, FORBIDS, LITHIUM, "at: 30 mA, result: 21 ms", "at: 150 mA, result: 41 ms"),
                // One test of two RCDs at 150 mA: five times 30 mA, whichever of them the job names first.
                new Case(
                        Check.RCD_SLOW,
                        FORBIDS,
                        ChangedDemo.of(
                                LITHIUM,
                                "rcds:\n",
                                "rcds:\n  - { id: R9, type: A, rating: 100 mA, source: inverter }\n",
                                "of: [R2], source: inverter, at: 30 mA, result: 21 ms",
                                "of: [R2, R9], source: inverter, at: 150 mA, result: 41 ms"),
                        ChangedDemo.of(
                                LITHIUM,
                                "rcds:\n",
                                "rcds:\n  - { id: R9, type: A, rating: 100 mA, source: inverter }\n",
                                "of: [R2], source: inverter, at: 30 mA, result: 21 ms",
                                "of: [R9], source: inverter, at: 150 mA, result: 41 ms")),
                change(Check.INLET_NOT_TESTED, DECIDE, LITHIUM, "  - { test: inlet-dead", "  # - { test: inlet-dead"),
                change(Check.INLET_LIVE, FORBIDS, LITHIUM, "result: 0 V", "result: 48 V"),
                change(Check.INSULATION_LOW, FORBIDS, LITHIUM, "result: 48 Mohm", "result: 0.9 Mohm"),
                change(Check.DROP_UNEXPECTED, DECIDE, LITHIUM, "result: 0.12 V", "result: 0.18 V"),
                change(Check.DROP_UNEXPECTED, DECIDE, LITHIUM, "result: 0.12 V", "result: 0.05 V"),
                change(Check.DROP_NOT_TESTED, NOTE, LITHIUM, "  - { test: voltage-drop", "  # - { test: voltage-drop"),
                added(
                        Check.JOINT_HIGH,
                        DECIDE,
                        "test: joint-drop, of: [bank, F1], at: 90 A, result: 15 mV",
                        "test: joint-drop, of: [bank, F1], at: 90 A, result: 9 mV"),
                added(
                        Check.JOINT_HOT,
                        FORBIDS,
                        "test: joint-temperature, of: [F1], at: 90 A, result: 60 °C, ambient: 20 °C",
                        "test: joint-temperature, of: [F1], at: 90 A, result: 28 °C, ambient: 20 °C"),
                added(
                        Check.BASELINE_MOVED,
                        DECIDE,
                        "test: voltage-drop, of: [B2, B1], at: 60 A, result: 0.13 V, on: 2026-05-14",
                        "test: voltage-drop, of: [B2, B1], at: 60 A, result: 0.09 V, on: 2026-05-14"),
                change(Check.TEST_FAILED, FORBIDS, LITHIUM, "outcome: passed", "outcome: failed"),
                change(Check.DEVIATION_UNKNOWN, NOTE, GLASS_MAT, "check: supply-drop", "check: rcd-slow"),
                change(Check.DEVIATION_UNKNOWN, NOTE, GLASS_MAT, "check: supply-drop", "check: no-such-check"),
                change(Check.DEVIATION_REFUSED, NOTE, GLASS_MAT, "length: 4.6 m", "length: 15 m"));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void firesOnTheJobThatFailsAndNotOnTheOther(Case it) {
        assertThat(findings(it.fails())).anySatisfy(finding -> {
            assertThat(finding.check()).isEqualTo(it.check());
            assertThat(finding.severity()).isEqualTo(it.severity());
        });
        assertThat(findings(it.passes())).extracting(Finding::check).doesNotContain(it.check());
    }

    /** The dehumidifier's 240 W come off the 230 VA of the supply; of the bank the inverter would take 266 W for them. */
    @Test
    void whatBeatsAChargerIsToldAsItIsTaken() {
        Words words = Words.of("en-GB");
        assertThat(findings(ChangedDemo.of(LITHIUM, "input-limit: 6 A", "input-limit: 1 A")))
                .filteredOn(finding -> finding.check() == Check.CHARGER_BEATEN)
                .extracting(finding -> words.say(finding.message()))
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("240\u00a0W");
        assertThat(findings(ChangedDemo.of(LITHIUM, "current: 90 A, rated", "current: 10 A, rated")))
                .filteredOn(finding -> finding.check() == Check.CHARGER_BEATEN)
                .extracting(finding -> words.say(finding.message()))
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("266\u00a0W");
    }

    private static List<String> remedies(ChangedDemo demo, Check check) {
        Words words = Words.of("en-GB");
        return findings(demo).stream()
                .filter(finding -> finding.check() == check)
                .map(finding -> words.say(finding.remedy()).replace('\u00a0', ' '))
                .toList();
    }

    /** 33 CFR 183.455(b): up to 7 in of bare conductor, 7 in included. */
    @Test
    void whatIsAsLongAsAllowedIsNotTooLong() {
        String sheathed = "joints: 4, sheathed: yes";
        assertThat(findings(ChangedDemo.of(AMERICAN, sheathed, "joints: 4")))
                .extracting(Finding::check)
                .doesNotContain(Check.FUSE_DISTANCE);
        assertThat(findings(ChangedDemo.of(AMERICAN, sheathed, "joints: 4", "distance: 7 in", "distance: 7.1 in")))
                .extracting(Finding::check)
                .contains(Check.FUSE_DISTANCE);
    }

    /** Blade fuses end at 40 A (ISO 8820-3, from memory); the cable bears far more, and so do fuses of other families. */
    @Test
    void whereOnlyTheFamilyEndsAnotherIsNamed() {
        assertThat(remedies(
                        ChangedDemo.of(LITHIUM, "family: class-t, rating: 225 A", "family: blade, rating: 40 A"),
                        Check.FUSE_UNDER_LOAD))
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("225 A (another family: class T)")
                .doesNotContain("thicker");
    }

    /** 25 kA of NH and 20 kA of class T are the most that the table holds (IEC 60269-2, ABYC E-11). */
    @Test
    void whereNoFamilyBreaksTheShortNoneIsAskedFor() {
        assertThat(remedies(ChangedDemo.of(LITHIUM, "resistance: 6 mΩ", "resistance: 2 mΩ"), Check.FUSE_INTERRUPTING))
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("short-circuit");
    }

    /** 90 A ask for 112.5 A at 80 % (common practice), whatever little the fuse feeds besides; 35 mm² bear 160 A (ISO 13297). */
    @Test
    void aFuseThatAChargerPassesIsFitForWhatItCharges() {
        String fuses = "fuses:\n";
        String own =
                fuses + "  - { id: F2, role: branch, feeds: Engine alternator, conductor: 35 mm2, distance: 100 mm,"
                        + " through: [bank], family: class-t";
        String[] cable = {"current: 90 A, rated", "current: 90 A, cable: 35 mm2, fuse: F2, rated"};
        assertThat(remedies(
                        ChangedDemo.of(
                                LITHIUM,
                                fuses,
                                own + ", load: 0 A, average: 0 A, rating: 300 A }\n",
                                cable[0],
                                cable[1]),
                        Check.FUSE_OVER_CABLE))
                .singleElement(InstanceOfAssertFactories.STRING)
                .contains("Fit 125 A");
        ChangedDemo unwritten = ChangedDemo.of(LITHIUM, fuses, own + " }\n", cable[0], cable[1]);
        assertThat(unwritten.value("fuse.F2.rating")).isEqualTo(125);
        assertThat(findings(ChangedDemo.of(
                        LITHIUM, fuses, own + ", load: 0 A, average: 0 A, rating: 110 A }\n", cable[0], cable[1])))
                .extracting(Finding::check)
                .contains(Check.CHARGE_FUSE_SMALL)
                .doesNotContain(Check.FUSE_UNDER_LOAD);
    }

    /** All that a charger in the inverter gives passes the inverter's cables, which are judged by it (Kirchhoff). */
    @Test
    void aChargerInTheInverterHasNoCableOfItsOwn() {
        String named = "name: Shore charger, current: 60 A,";
        String others = "kind: alternator, name: Engine alternator, current: 90 A,";
        String panels = "name: Roof panels, peak: 600 W, current: 22 A,";
        String judged = " cable: 35 mm2,";
        assertThat(findings(ChangedDemo.of(
                        LITHIUM,
                        named,
                        named + " through: [F1, B1, B2],",
                        others,
                        others + judged,
                        panels,
                        panels + judged)))
                .extracting(Finding::check)
                .doesNotContain(Check.CHARGE_UNJUDGED);
        assertThat(findings(ChangedDemo.of(
                        LITHIUM, named, named + " through: [B1],", others, others + judged, panels, panels + judged)))
                .extracting(Finding::check)
                .contains(Check.CHARGE_UNJUDGED);
    }

    /** ABYC E-11, from memory: breakers of one pole where the shore breaker has two and a lamp shows reversed polarity. */
    @Test
    void onePoleDoesWhereTheAmericanRulesLetIt() {
        String[] onePole = {"breaker: 15 A, curve: C,", "breaker: 15 A, two-pole: no, curve: C,"};
        assertThat(findings(ChangedDemo.of(AMERICAN, onePole)))
                .extracting(Finding::check)
                .doesNotContain(Check.ONE_POLE_BREAKER);
        assertThat(findings(
                        ChangedDemo.of(AMERICAN, onePole[0], onePole[1], "polarity-lamp: yes", "polarity-lamp: no")))
                .extracting(Finding::check)
                .contains(Check.ONE_POLE_BREAKER);
    }

    /** Behind a DC-DC charger the alternator keeps its starter battery when the bank's protection opens (common practice). */
    @Test
    void anAlternatorThatKeepsABatteryLosesNoLoad() {
        assertThat(findings(ChangedDemo.of(
                        LITHIUM,
                        "alarm-before: yes",
                        "alarm-before: no",
                        "current: 90 A, rated: 90 A",
                        "current: 30 A, current-limited: yes, starter-battery: yes, rated: 90 A")))
                .extracting(Finding::check)
                .doesNotContain(Check.PROTECTION_SILENT);
    }

    /** A circuit of shore power says nothing of what the inverter feeds. */
    @Test
    void circuitsOfShorePowerAreNoneOfTheInverter() {
        assertThat(findings(ChangedDemo.of(
                        GLASS_MAT,
                        "cable: 2.5 mm2, source: inverter, rcd: R1",
                        "cable: 2.5 mm2, source: shore, rcd: R1")))
                .extracting(Finding::check)
                .contains(Check.CIRCUITS_UNKNOWN);
    }

    /** Message and remedy are made from the arguments at hand; a place beyond them or a missing word throws. */
    @ParameterizedTest
    @MethodSource("cases")
    void isSaidInWords(Case it) {
        Words words = Words.of("en-GB");
        for (Finding finding : findings(it.fails())) {
            assertThat(words.say(finding.message())).doesNotContain("{", "null");
            assertThat(words.say(finding.remedy())).doesNotContain("{", "null");
            assertThat(finding.place().path()).isNotEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(Check.class)
    void everyCheckHasAFailingJobWordsAndASource(Check check) {
        Words words = Words.of("en-GB");
        assertThat(cases()).extracting(Case::check).contains(check);
        assertThat(words.has(check.key())).isTrue();
        assertThat(words.has(check.remedy().key())).isTrue();
        assertThat(check.citation().source()).isNotBlank();
    }

    @Test
    void noWordsWithoutACheck() {
        List<String> keys = Arrays.stream(Check.values())
                .flatMap(check -> Stream.of(check.key(), check.remedy().key()))
                .toList();
        assertThat(Words.of("en-GB").keys())
                .filteredOn(
                        key -> key.startsWith("check.") && !key.endsWith(".owner") && !key.endsWith("-if-none-does"))
                .containsExactlyInAnyOrderElementsOf(keys);
    }

    @Test
    void noWordsForTheOwnerWithoutACheck() {
        List<String> keys = Arrays.stream(Check.values())
                .map(check -> check.key() + ".owner")
                .toList();
        assertThat(Words.of("en-GB").keys())
                .filteredOn(key -> key.startsWith("check.") && key.endsWith(".owner"))
                .isNotEmpty()
                .isSubsetOf(keys);
    }

    @Test
    void noWordsForWantOfAFitWithoutACheck() {
        assertThat(Words.of("en-GB").keys())
                .filteredOn(key -> key.startsWith("check.") && key.endsWith(".remedy-if-none-does"))
                .hasSize(13)
                .isSubsetOf(Arrays.stream(Check.values())
                        .map(check -> check.remedyIfNoneDoes().key())
                        .toList());
    }

    /** Where nothing does, the remedy says so: “Fit — as F1” tells nobody what to do. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            FUSE_OVER_CABLE | fitted: 2 x 70 mm2 | fitted: 10 mm2
            CABLE_AMPACITY  | length: 1.6 m (measured), fitted: 2 x 70 mm2 | length: 99 m (measured), fitted: 10 mm2
            SUPPLY_DROP     | length: 1.6 m | length: 99 m
            CHARGE_DROP     | current: 90 A, rated: 90 A | current: 900 A, cable: 120 mm2, length: 99 m
            """)
    void aRemedyNeverProposesADash(Check check, String before, String after) {
        Words words = Words.of("en-GB");
        ChangedDemo far = ChangedDemo.of(LITHIUM, before, after, "length: 1.8 m", "length: 99 m");
        assertThat(findings(far))
                .filteredOn(finding -> finding.check() == check)
                .isNotEmpty()
                .anySatisfy(finding ->
                        assertThat(finding.remedy().key().key()).isEqualTo(check.key() + ".remedy-if-none-does"))
                .allSatisfy(finding -> assertThat(words.say(finding.remedy())).doesNotContain("—"));
    }

    /** Below 36 % of charge even a bank without any cables would be below 11.5 V: at most 0 mΩ would be no advice. */
    @Test
    void aRemedyNeverAsksForNothing() {
        Words words = Words.of("en-GB");
        List<Finding> early = findings(ChangedDemo.of(GLASS_MAT, "reserve: 50 %", "reserve: 0 %"));
        List<Finding> late = findings(windlass(
                "load: 150 A, average: 0 A, through: [bank]",
                "alarm: 11.5 V",
                "alarm: 12.35 V",
                "cut-out: 10.5 V",
                "cut-out: 12.3 V"));
        assertThat(early)
                .filteredOn(it -> it.check() == Check.ALARM_EARLY)
                .singleElement()
                .satisfies(it -> assertThat(words.say(it.remedy()).replace('\u00a0', ' '))
                        .startsWith("No cables are thick enough. Set the reserve to 36 % or more"));
        assertThat(late)
                .filteredOn(it -> it.check() == Check.BRANCH_CUTS_OUT)
                .singleElement()
                .satisfies(it -> assertThat(words.say(it.remedy())).startsWith("It does so however little"));
        assertThat(Stream.concat(early.stream(), late.stream()))
                .allSatisfy(it -> assertThat(words.say(it.remedy()).replace('\u00a0', ' '))
                        .doesNotContain("at most 0 mΩ", "more than 0 A"));
    }

    /** Whose value it is, as the labels name it: nobody counts cables from nought. */
    @Test
    void aValueToMeasureIsNamedByWhatItIsOf() {
        Words words = Words.of("en-GB");
        ChangedDemo told = ChangedDemo.of(
                LITHIUM,
                "length: 1.6 m (measured)",
                "length: 1.6 m (told)",
                "torque: 12 Nm (measured, J. Fennimore-Quill, 2026-05-12)",
                "torque: 12 Nm (told)");
        assertThat(findings(told))
                .filteredOn(finding -> finding.check() == Check.MEASUREMENT_DUE)
                .extracting(finding -> words.say(finding.message()))
                .containsExactly(
                        "Battery, tightening torque: only told. A figure or a limit hangs on it.",
                        "B1, length: only told. A figure or a limit hangs on it.");
    }

    /** What the three demos are there to show, and nothing besides. */
    @ParameterizedTest
    @CsvSource({
        "lantern-moth, DECIDE left-on-take-over; DECIDE alternator-heat; NOTE shore-return; NOTE breaker-on-battery; NOTE breaker-on-battery; NOTE charge-unjudged",
        "second-biscuit, DECIDE take-off-uneven; DECIDE supply-drop; DECIDE alarm-early; NOTE string-fuses; NOTE breaker-on-battery; NOTE charge-unjudged",
        "persimmon-tug, NOTE breaker-on-battery; NOTE breaker-on-battery; NOTE charge-unjudged",
        "long-way-round, DECIDE protection-silent; DECIDE protection-current; DECIDE fuse-under-load; NOTE protection-cascade; NOTE shore-return; NOTE breaker-on-battery; NOTE breaker-on-battery; NOTE charge-unjudged",
        "hut-seventeen, NOTE charge-cold; NOTE generator-beyond; NOTE breaker-on-battery; NOTE breaker-on-battery; NOTE breaker-on-battery; NOTE charge-unjudged",
        "marmalade-meridian, DECIDE neutral-bus-common; DECIDE leakage-measured; NOTE string-fuses; NOTE breaker-on-battery; NOTE breaker-on-battery; NOTE charge-unjudged"
    })
    void theDemosFindWhatTheyAreToShow(String demo, String expected) {
        assertThat(findings(ChangedDemo.of(demo)))
                .extracting(
                        finding -> finding.severity() + " " + finding.check().id())
                .containsExactly(expected.split("; "));
    }

    @Test
    void aDeviationAcceptsWhatMayBeAcceptedOnly() {
        List<Finding> accepted = findings(ChangedDemo.of(GLASS_MAT));
        assertThat(accepted)
                .filteredOn(finding -> finding.accepted().isPresent())
                .extracting(Finding::check)
                .containsExactly(Check.SUPPLY_DROP);

        List<Finding> refused = findings(ChangedDemo.of(GLASS_MAT, "length: 4.6 m", "length: 15 m"));
        assertThat(refused)
                .filteredOn(Finding::forbids)
                .isNotEmpty()
                .allMatch(finding -> finding.accepted().isEmpty());
    }

    @Test
    void worstComesFirst() {
        List<Finding> findings = findings(
                ChangedDemo.of(LITHIUM, "discharge: 150 A", "discharge: 80 A", "interlocked: yes", "interlocked: no"));
        assertThat(findings).isSortedAccordingTo(java.util.Comparator.comparing(Finding::severity));
        assertThat(findings.get(0).forbids()).isTrue();
    }

    /** ABYC knows no test at five times the rated current: such a reading is then held against the time at rated current. */
    @Test
    void aTripAtFiveTimesIsJudgedUnderEveryRulebook() {
        ChangedDemo slow = ChangedDemo.of(LITHIUM, "at: 30 mA, result: 21 ms", "at: 150 mA, result: 301 ms");
        assertThat(findings(slow)).extracting(Finding::check).contains(Check.RCD_SLOW);
        ChangedDemo american = ChangedDemo.of(
                LITHIUM,
                "rulebook: iso-13297",
                "rulebook: abyc-e11",
                "fitted: 2 x 70 mm2",
                "fitted: 2 x 2/0 AWG",
                "fitted: 2 x 70 mm2",
                "fitted: 2 x 2/0 AWG",
                "at: 30 mA, result: 21 ms",
                "at: 150 mA, result: 101 ms");
        assertThat(findings(american)).extracting(Finding::check).contains(Check.RCD_SLOW);
    }
}
