package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.calc.Drift.Judgement;
import org.quaybook.figures.BaselineFigures.Item;
import org.quaybook.job.Source;
import org.quaybook.job.TestKind;

/** The baseline, worked by hand with Ohm's law; a sound joint of 0.1 mΩ is common practice, no source. */
class BaselineFiguresTest {

    private static final String BARGE = "lantern-moth";
    private static final String DROP =
            "  - { test: voltage-drop, of: [B1, B2], at: 90 A, result: 0.12 V, by: J. Fennimore-Quill, on: 2026-05-13, instrument: ML-11 }\n";

    /** The barge with other lines in place of its drop test. */
    private static ChangedDemo barge(String... tests) {
        return ChangedDemo.of(BARGE, DROP, String.join("\n", tests) + "\n");
    }

    private static Item item(ChangedDemo demo, TestKind kind) {
        return demo.figures().baseline().items().stream()
                .filter(item -> item.kind() == kind && item.last().isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static Judgement judgement(ChangedDemo demo, TestKind kind) {
        return item(demo, kind).judgement().orElseThrow();
    }

    /**
     * IEC 60228 class 5 tinned 70 mm²: 0.277 Ω/km (seen). Two in parallel over 1.6 m and 1.8 m, and eight joints:
     * 0.277e-3 · 3.4 / 2 + 0.8e-3 = 1.2709 mΩ; at 90 A 0.11438 V.
     */
    @Test
    void dropIsExpectedOfColdCopperAndEveryJointAtTheTestsOwnCurrent() {
        ChangedDemo demo = ChangedDemo.of(BARGE);
        assertThat(demo.value("cable.B1.cold-resistance") + demo.value("cable.B2.cold-resistance"))
                .isCloseTo(1.2709e-3, within(1e-8));
        assertThat(demo.value("test.voltage-drop-b1-b2.predicted")).isCloseTo(0.114381, within(1e-6));
        assertThat(demo.value("test.voltage-drop-b1-b2.first")).isCloseTo(0.12 / 90, within(1e-12));
    }

    /** 90 A over the bank's own resistance; the voltage at the inverter is what bank and way leave of it. */
    @Test
    void bankAndInverterFollowFromOhmsLaw() {
        ChangedDemo demo = ChangedDemo.of(BARGE);
        double bank = demo.value("bank.resistance");
        assertThat(demo.value("baseline.current")).isEqualTo(90);
        assertThat(demo.value("test.bank-drop.predicted")).isCloseTo(90 * bank, within(1e-9));
        assertThat(demo.value("test.inverter-voltage.predicted"))
                .isCloseTo(demo.value("bank.rest-at-100") - 90 * (bank + 1.2709e-3), within(1e-5));
        assertThat(demo.value("test.rest-voltage.predicted")).isEqualTo(demo.value("bank.rest-at-100"));
    }

    /** Without a test of a drop: half of what the inverter takes at full output, in whole tens. */
    @Test
    void theLoadIsProposedWhereNoTestSaysIt() {
        ChangedDemo demo = barge("");
        double half = demo.value("inverter.nominal-current") / 2;
        assertThat(half).isBetween(60.0, 70.0);
        assertThat(demo.value("baseline.current")).isEqualTo(60);
    }

    /** 12 mV at 60 A are 0.2 mΩ, twice the 0.1 mΩ that 9 mV at 90 A are: another load is no excuse. */
    @Test
    void aJointThatMovedIsNamedWhateverTheLoad() {
        ChangedDemo demo = barge(
                "  - { test: joint-drop, of: [bank, F1], at: 90 A, result: 9 mV, on: 2026-05-12 }",
                "  - { test: joint-drop, of: [F1, B1], at: 90 A, result: 9 mV, on: 2026-05-12 }",
                "  - { test: joint-drop, of: [bank, F1], at: 60 A, result: 12 mV, on: 2026-05-14 }",
                "  - { test: joint-drop, of: [F1, B1], at: 60 A, result: 6 mV, on: 2026-05-14 }");
        List<Item> joints = demo.figures().baseline().items().stream()
                .filter(item -> item.kind() == TestKind.JOINT_DROP)
                .toList();
        assertThat(joints).hasSize(2);
        assertThat(joints.get(0).of()).containsExactly("bank", "F1");
        assertThat(joints.get(0).moved()).isTrue();
        assertThat(joints.get(0).change().orElseThrow().value().fraction()).isCloseTo(2, within(1e-9));
        assertThat(joints.get(0).predicted().orElseThrow().value().canonical()).isCloseTo(9e-3, within(1e-12));
        assertThat(joints.get(1).judgement()).contains(Judgement.STEADY);
    }

    /**
     * By the rule of docs/figures.md (common practice, no source), worked by hand: a drop of 0.12 V at 90 A moves at 1.5 times
     * it; a joint of 10 K over the air by 5 K, which is its half too; the volts at the inverter, 25 V under 90 A after a rest
     * voltage of 26 V, by half of the volt between them; insulation above 20 MΩ counts as 20 MΩ and moves at half of that.
     */
    @Test
    void fromWhereOnAReadingHasMovedIsAFigure() {
        assertThat(ChangedDemo.of(BARGE).value("test.voltage-drop-b1-b2.moved-from"))
                .isCloseTo(0.18, within(1e-9));
        assertThat(ChangedDemo.of(BARGE).value("test.insulation.moved-from")).isCloseTo(10e6, within(1e-3));
        ChangedDemo other = barge(
                "  - { test: joint-temperature, of: [F1], at: 90 A, result: 30 °C, ambient: 20 °C, on: 2026-05-12 }",
                "  - { test: rest-voltage, result: 26 V, on: 2026-05-12 }",
                "  - { test: inverter-voltage, at: 90 A, result: 25 V, on: 2026-05-12 }");
        assertThat(other.value("test.joint-temperature-f1.moved-from")).isCloseTo(35, within(1e-9));
        assertThat(other.value("test.inverter-voltage.moved-from")).isCloseTo(24.5, within(1e-9));
    }

    /** 1 mV at 10 A is 0.1 mΩ on either side: nothing can be told of a joint with so little load. */
    @Test
    void tooLittleLoadTellsNothing() {
        assertThat(judgement(
                        barge(
                                "  - { test: joint-drop, of: [bank, F1], at: 10 A, result: 1 mV, on: 2026-05-12 }",
                                "  - { test: joint-drop, of: [bank, F1], at: 10 A, result: 3 mV, on: 2026-05-14 }"),
                        TestKind.JOINT_DROP))
                .isEqualTo(Judgement.UNCLEAR);
        ChangedDemo without = barge("  - { test: joint-drop, of: [bank, F1], at: 0 A, result: 1 mV, on: 2026-05-12 }");
        assertThat(item(without, TestKind.JOINT_DROP).first().orElseThrow().compared())
                .isEmpty();
    }

    /** 10 K over the air at 90 A would be 10 · (45/90)² = 2.5 K at 45 A; 12 K there is 48 K at 90 A. */
    @Test
    void warmthIsComparedAtTheFirstLoad() {
        String first =
                "  - { test: joint-temperature, of: [F1], at: 90 A, result: 30 °C, ambient: 20 °C, on: 2026-05-12 }";
        ChangedDemo hot = barge(
                first,
                "  - { test: joint-temperature, of: [F1], at: 45 A, result: 27 °C, ambient: 15 °C, on: 2026-05-14 }");
        assertThat(hot.value("test.joint-temperature-f1.latest")).isCloseTo(68, within(1e-9));
        assertThat(judgement(hot, TestKind.JOINT_TEMPERATURE)).isEqualTo(Judgement.MOVED);
        ChangedDemo blind =
                barge(first, "  - { test: joint-temperature, of: [F1], at: 45 A, result: 27 °C, on: 2026-05-14 }");
        assertThat(judgement(blind, TestKind.JOINT_TEMPERATURE)).isEqualTo(Judgement.UNCLEAR);
        ChangedDemo same = barge(
                first,
                "  - { test: joint-temperature, of: [F1], at: 90 A, result: 33 °C, ambient: 22 °C, on: 2026-05-14 }");
        assertThat(judgement(same, TestKind.JOINT_TEMPERATURE)).isEqualTo(Judgement.STEADY);
    }

    /** (26.6 − 26.0) V / 90 A = 6.67 mΩ, then (26.2 − 25.0) V / 100 A = 12 mΩ. Without a rest voltage nothing is known. */
    @Test
    void voltageAtTheInverterIsComparedWithTheRestVoltageOfItsDay() {
        String[] tests = {
            "  - { test: rest-voltage, result: 26.6 V, on: 2026-05-12 }",
            "  - { test: inverter-voltage, at: 90 A, result: 26.0 V, on: 2026-05-12 }",
            "  - { test: rest-voltage, result: 26.2 V, on: 2026-05-14 }",
            "  - { test: inverter-voltage, at: 100 A, result: 25.0 V, on: 2026-05-14 }"
        };
        ChangedDemo demo = barge(tests);
        assertThat(demo.value("test.inverter-voltage.first")).isCloseTo(6.6667e-3, within(1e-6));
        assertThat(demo.value("test.inverter-voltage.latest")).isCloseTo(12e-3, within(1e-9));
        assertThat(judgement(demo, TestKind.INVERTER_VOLTAGE)).isEqualTo(Judgement.MOVED);
        assertThat(judgement(barge(tests[0], tests[1], tests[3]), TestKind.INVERTER_VOLTAGE))
                .isEqualTo(Judgement.UNCLEAR);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "test: rest-voltage, result: 26.6 V | test: rest-voltage, result: 26.3 V | MOVED",
                "test: rest-voltage, result: 26.6 V | test: rest-voltage, result: 26.5 V | STEADY",
                "test: bank-drop, at: 90 A, result: 0.3 V | test: bank-drop, at: 45 A, result: 0.3 V | MOVED",
                "test: bank-drop, at: 90 A, result: 0.3 V | test: bank-drop, at: 45 A, result: 0.16 V | STEADY",
                "test: earth-continuity, of: [A1], result: 0.2 Ω | test: earth-continuity, of: [A1], result: 0.4 Ω | MOVED",
                "test: earth-continuity, of: [A1], result: 0.02 Ω | test: earth-continuity, of: [A1], result: 0.04 Ω | STEADY",
                "test: insulation, of: [A1], result: 200 MΩ | test: insulation, of: [A1], result: 30 MΩ | STEADY",
                "test: insulation, of: [A1], result: 200 MΩ | test: insulation, of: [A1], result: 5 MΩ | MOVED",
                "test: leakage, source: inverter, result: 2 mA | test: leakage, source: inverter, result: 2.9 mA | STEADY",
                "test: leakage, source: inverter, result: 2 mA | test: leakage, source: inverter, result: 3.1 mA | MOVED",
                "test: leakage, source: inverter, result: 0 mA | test: leakage, source: inverter, result: 2 mA | MOVED",
                "test: neutral-bond, result: 0.3 Ω | test: neutral-bond, result: 0.1 Ω | BETTER"
            })
    void eachKindHasItsRule(String first, String later, Judgement judgement) {
        ChangedDemo demo = barge("  - { " + first + ", on: 2026-05-12 }", "  - { " + later + ", on: 2026-05-14 }");
        Item item = demo.figures().baseline().items().stream()
                .filter(it -> it.latest().isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(item.judgement()).contains(judgement);
    }

    /** 2.5 MΩ moves at 1.25 MΩ, 1.5 MΩ at 0.5 MΩ, which is 1 MΩ less; no meter shows 1 MΩ less than 0.9 MΩ. */
    @ParameterizedTest
    @CsvSource({"2.5 MΩ, 1.25e6", "1.5 MΩ, 0.5e6", "0.9 MΩ, -1", "0 MΩ, -1"})
    void noReadingIsBelowNothing(String first, double movedFrom) {
        Item item =
                barge("  - { test: insulation, of: [A1], result: " + first + " }").figures().baseline().items().stream()
                        .filter(it ->
                                it.kind() == TestKind.INSULATION && it.of().equals(List.of("A1")))
                        .findFirst()
                        .orElseThrow();
        double from = item.movedFrom().map(it -> it.value().canonical()).orElse(-1.0);
        assertThat(from).isCloseTo(movedFrom, within(1e-3));
    }

    /** Each RCD is listed on each source that can feed it, tested or not. */
    @Test
    void rcdsAreListedOnEachSource() {
        List<Optional<Source>> sources = ChangedDemo.of(BARGE).figures().baseline().items().stream()
                .filter(item -> item.kind() == TestKind.RCD_TRIP && item.of().contains("R2"))
                .map(Item::source)
                .toList();
        assertThat(sources).containsExactlyInAnyOrder(Optional.of(Source.INVERTER), Optional.of(Source.SHORE));
    }

    /** The same day tells nothing of time: two half-waves of one test are not a first and a later reading. */
    @Test
    void oneDayHasNoLater() {
        ChangedDemo demo = barge(
                "  - { test: voltage-drop, of: [B1], at: 90 A, result: 60 mV, on: 2026-05-12 }",
                "  - { test: voltage-drop, of: [B1], at: 90 A, result: 120 mV, on: 2026-05-12 }");
        assertThat(item(demo, TestKind.VOLTAGE_DROP).judgement()).isEmpty();
    }
}
