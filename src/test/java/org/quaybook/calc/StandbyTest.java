package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

class StandbyTest {

    /** 200 Ah, half of it, 0.8 A and 3 % a month: 5.15 days, worked by hand from the definition (grade C). */
    @Test
    void standbyWorkedByHand() {
        assertThat(Standby.until(new Charge(200), new Ratio(0.5), new Current(0.8), new Ratio(0.03))
                                .hours()
                        / 24)
                .isCloseTo(5.15, within(0.01));
    }

    /** Identity: self-discharge alone takes a whole capacity in 1/d months of 30 days. */
    @Test
    void selfDischargeAlone() {
        assertThat(Standby.until(new Charge(123), Ratio.WHOLE, new Current(0), new Ratio(0.05))
                        .hours())
                .isCloseTo(20 * 720, within(1e-6));
        assertThatThrownBy(() -> Standby.until(new Charge(1), Ratio.WHOLE, new Current(0), Ratio.NONE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** IEC 60898-1 bands, from memory: B up to 5, C up to 10, D up to 20 times the rating. */
    @Test
    void anInverterOf2KilowattsDoesNotTripABreakerOf16Amperes() {
        FaultDisconnection fault = FaultDisconnection.of(new Power(2000), new Voltage(230), new Current(16), 5);
        assertThat(fault.inverterGives().amperes()).isCloseTo(17.39, within(0.01));
        assertThat(fault.breakerWants().amperes()).isEqualTo(80);
        assertThat(fault.breakerTrips()).isFalse();
        assertThat(FaultDisconnection.of(new Power(10_000), new Voltage(230), new Current(10), 5)
                        .breakerTrips())
                .isTrue();
    }
}
