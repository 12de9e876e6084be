package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.TimeSpan;

class AdiabaticTest {

    /** A cable design note prints 6.9 mm² for 2500 A, 0.1 s and k = 115 (grade A, read); exactly 6.87. */
    @Test
    void aPrintedExample() {
        assertThat(Adiabatic.least(new Current(2500), new TimeSpan(0.1), 115).squareMillimetres())
                .isCloseTo(6.87, within(0.05));
    }

    @Test
    void noFaultNeedsNoCopper() {
        assertThat(Adiabatic.least(new Current(0), new TimeSpan(5), 115).squareMillimetres())
                .isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> Adiabatic.least(new Current(1), new TimeSpan(1), 0));
    }
}
