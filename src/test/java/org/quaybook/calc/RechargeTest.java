package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.reference.Acceptance;
import org.quaybook.reference.Citation;

class RechargeTest {

    private static final Acceptance LEAD = new Acceptance(
            "lead",
            new Ratio(0.80),
            new Ratio(0.91),
            new Ratio(0.85),
            0.02,
            new Citation("test", Citation.Standing.COMPUTED));

    /** Worked by hand from the same model, so it pins the implementation and is no independent proof (grade C). */
    @Test
    void twoStagesWorkedByHand() {
        Recharge it = Recharge.of(new Charge(200), new Ratio(0.5), new Current(40), LEAD);
        assertThat(it.bulk().hours()).isCloseTo(1.648, within(0.001));
        assertThat(it.absorption().hours()).isCloseTo(3.010, within(0.001));
        assertThat(it.whole().hours()).isCloseTo(4.658, within(0.001));
    }

    /** Independent: the charge put in, summed step by step as the current falls, is what was missing (conservation of charge). */
    @ParameterizedTest
    @CsvSource({"200,0.5,40", "690,0.2,60", "345,0.5,30", "100,0.9,10", "420,0.0,84"})
    void chargePutInIsChargeMissing(double capacity, double from, double amperes) {
        Recharge it = Recharge.of(new Charge(capacity), new Ratio(from), new Current(amperes), LEAD);
        double stored = amperes * it.bulk().hours() * 0.91;
        double end = 0.02 * capacity;
        double tau = it.absorption().hours() / Math.log(amperes / end);
        int steps = 100_000;
        double step = it.absorption().hours() / steps;
        for (int i = 0; i < steps; i++) {
            stored += amperes * Math.exp(-(i + 0.5) * step / tau) * step * 0.85;
        }
        assertThat(stored).isCloseTo((1 - from) * capacity, within(1e-4 * capacity));
    }

    @Test
    void aChargerBelowTheEndCurrentNeverTailsOff() {
        Recharge it = Recharge.of(new Charge(200), new Ratio(0.9), new Current(2), LEAD);
        assertThat(it.bulk().seconds()).isZero();
        assertThat(it.absorption().hours()).isCloseTo(0.1 * 200 / (2 * 0.85), within(1e-9));
    }

    @Test
    void aFullBankTakesNoTimeAndNothingChargesWithNothing() {
        assertThat(Recharge.of(new Charge(200), Ratio.WHOLE, new Current(40), LEAD)
                        .whole()
                        .seconds())
                .isZero();
        assertThatThrownBy(() -> Recharge.of(new Charge(200), Ratio.NONE, new Current(0), LEAD))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
