package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Voltage;

class FaultDisconnectionTest {

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
