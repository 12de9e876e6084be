package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Voltage;

class ShortCircuitTest {

    /** Ohm's law: four blocks of 12.6 V and 5 mΩ in parallel, at the posts and behind 1 mΩ of cable. */
    @ParameterizedTest
    @CsvSource({"1.25, 10080", "2.25, 5600"})
    void ohmsLaw(double milliohms, double amperes) {
        assertThat(ShortCircuit.prospective(new Voltage(12.6), new Resistance(milliohms / 1000))
                        .amperes())
                .isCloseTo(amperes, within(1e-6));
    }

    @Test
    void noResistanceHasNoAnswer() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShortCircuit.prospective(new Voltage(12.6), new Resistance(0)));
    }
}
