package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.quaybook.calc.Drift.Judgement.BETTER;
import static org.quaybook.calc.Drift.Judgement.MOVED;
import static org.quaybook.calc.Drift.Judgement.STEADY;
import static org.quaybook.calc.Drift.Judgement.UNCLEAR;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;

/**
 * Readings against the first ones. Resistances by Ohm's law and warmth by Joule's law, worked by hand; the rules of what
 * counts as moved are common practice, no source.
 */
class DriftTest {

    private static final Drift RULE = new Drift(1.5, 0.1e-3);

    /** Ohm's law: 9 mV at 90 A are 0.1 mΩ, whichever way the leads are held. */
    @Test
    void dropsBecomeResistances() {
        assertThat(Drift.resistance(new Voltage(9e-3), new Current(90)).ohms()).isCloseTo(0.1e-3, within(1e-12));
        assertThat(Drift.resistance(new Voltage(-9e-3), new Current(90)).ohms()).isCloseTo(0.1e-3, within(1e-12));
    }

    /** Joule's law, R I²: 20 K over the air at 60 A are 20 · (90/60)² = 45 K at 90 A. */
    @Test
    void warmthGoesWithTheSquareOfTheCurrent() {
        Temperature at = Drift.at(
                new Temperature(38), new Temperature(18), new Current(60), new Temperature(25), new Current(90));
        assertThat(at.celsius()).isCloseTo(70, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "0.20, 0.30, MOVED",
        "0.20, 0.29, STEADY",
        "0.10, 0.19, STEADY",
        "0.10, 0.20, MOVED",
        "0.30, 0.20, BETTER",
        "0, 0.10, MOVED",
        "0, 0, STEADY"
    })
    void countsByFactorAndByAmount(double first, double now, Drift.Judgement judgement) {
        assertThat(RULE.larger(first * 1e-3, now * 1e-3, 0)).isEqualTo(judgement);
    }

    @Test
    void blurHidesWhatMoved() {
        assertThat(RULE.larger(0.1e-3, 0.3e-3, 0.25e-3)).isEqualTo(UNCLEAR);
        assertThat(RULE.larger(0.1e-3, 0.1e-3, 0.25e-3)).isEqualTo(UNCLEAR);
        assertThat(RULE.larger(1e-3, 1e-3, 0.25e-3)).isEqualTo(STEADY);
        assertThat(RULE.larger(0.1e-3, 0.4e-3, 0.25e-3)).isEqualTo(MOVED);
    }

    @Test
    void smallerCanBeTheWorse() {
        Drift half = new Drift(2, 1e6);
        assertThat(half.smaller(10e6, 4e6, 0)).isEqualTo(MOVED);
        assertThat(half.smaller(4e6, 10e6, 0)).isEqualTo(BETTER);
        assertThat(half.smaller(10e6, 6e6, 0)).isEqualTo(STEADY);
    }

    @Test
    void noRuleWithoutADifference() {
        assertThatThrownBy(() -> new Drift(0.9, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Drift(1.5, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
