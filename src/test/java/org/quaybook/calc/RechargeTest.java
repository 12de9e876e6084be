package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
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
            0.2,
            new Ratio(0.91),
            new Ratio(0.85),
            0.02,
            new Citation("test", Citation.Standing.COMPUTED));

    private static Recharge recharge(double capacity, double from, double amperes) {
        return Recharge.of(intake(capacity, 1e9), new Ratio(from), new Current(amperes))
                .orElseThrow();
    }

    private static ChargeIntake intake(double capacity, double most) {
        return new ChargeIntake(new Charge(capacity), LEAD, new Current(most));
    }

    /**
     * 200 Ah from 50 % with 40 A, a fifth of the capacity: worked by hand from the same model (electrical reference CV-35,
     * grade C), so it pins the implementation and is no independent proof.
     */
    @Test
    void twoStagesWorkedByHand() {
        Recharge it = recharge(200, 0.5, 40);
        assertThat(it.bulk().hours()).isCloseTo(1.648, within(0.001));
        assertThat(it.absorption().hours()).isCloseTo(3.010, within(0.001));
        assertThat(it.whole().hours()).isCloseTo(4.658, within(0.001));
    }

    /**
     * Independent: Dormand and Prince's integrator of the Hipparchus library walks through time, the current the least of
     * source and bank at each moment, until the charge that was missing has been put in (conservation of charge).
     */
    @ParameterizedTest
    @CsvSource({
        "200,0.5,40",
        "690,0.2,60",
        "345,0.5,30",
        "100,0.9,10",
        "420,0.0,84",
        "200,0.3,120",
        "200,0.95,60",
        "200,0.5,3"
    })
    void anIntegratorFindsTheBankFullAtThatTime(double capacity, double from, double amperes) {
        Recharge it = recharge(capacity, from, amperes);
        double slope = (0.2 - 0.02) * capacity / (1 - 0.80);
        var integrator = new DormandPrince853Integrator(1e-9, it.whole().hours() / 50, 1e-10, 1e-10);
        double[] end = integrator
                .integrate(
                        new OrdinaryDifferentialEquation() {
                            @Override
                            public int getDimension() {
                                return 1;
                            }

                            @Override
                            public double[] computeDerivatives(double hours, double[] soc) {
                                double takes = Math.min(amperes, 0.02 * capacity + slope * (1 - soc[0]));
                                return new double[] {takes * (soc[0] < 0.80 ? 0.91 : 0.85) / capacity};
                            }
                        },
                        new ODEState(0, new double[] {from}),
                        it.whole().hours())
                .getPrimaryState();
        assertThat(end[0]).isCloseTo(1, within(1e-6));
    }

    /** Definition: no charger fills faster than all missing charge at full current would. */
    @ParameterizedTest
    @CsvSource({"200,0.5,40", "690,0.2,60", "345,0.5,300", "100,0.9,1"})
    void neverFasterThanItsCurrent(double capacity, double from, double amperes) {
        assertThat(recharge(capacity, from, amperes).whole().hours())
                .isGreaterThanOrEqualTo((1 - from) * capacity / amperes);
    }

    @Test
    void moreCurrentIsNeverSlowerAndALimitIsALimit() {
        double before = Double.MAX_VALUE;
        for (double amperes = 1; amperes < 500; amperes *= 1.3) {
            double hours = recharge(200, 0.2, amperes).whole().hours();
            assertThat(hours).isLessThanOrEqualTo(before);
            before = hours;
        }
        assertThat(Recharge.of(intake(200, 30), new Ratio(0.5), new Current(90)))
                .contains(recharge(200, 0.5, 30));
    }

    @Test
    void aChargerBelowTheEndCurrentNeverTailsOff() {
        Recharge it = recharge(200, 0.9, 2);
        assertThat(it.bulk().hours()).isCloseTo(0.1 * 200 / (2 * 0.85), within(1e-9));
        assertThat(it.absorption().seconds()).isZero();
    }

    @Test
    void aFullBankTakesNoTimeAndNothingChargesWithNothing() {
        assertThat(recharge(200, 1, 40).whole().seconds()).isZero();
        assertThat(Recharge.of(intake(200, 90), Ratio.NONE, new Current(0))).isEmpty();
        assertThat(Recharge.of(intake(200, 90), Ratio.NONE, new Current(-5))).isEmpty();
        assertThat(Recharge.of(intake(200, 0), Ratio.NONE, new Current(40))).isEmpty();
    }
}
