package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;

class SelectivityTest {

    /** IEC 60269-1 (from memory): gG ratings of 160 A and 100 A stand 1.6 to 1. */
    @Test
    void ratioOfRatings() {
        assertThat(Selectivity.ratio(new Current(160), Ratio.WHOLE, new Current(100))
                        .fraction())
                .isCloseTo(1.6, within(1e-12));
    }

    /** Kirchhoff's current law: a fuse that carries a quarter of the current counts four times its rating. */
    @Test
    void aShareOfTheCurrent() {
        assertThat(Selectivity.ratio(new Current(50), new Ratio(0.25), new Current(100))
                        .fraction())
                .isCloseTo(2, within(1e-12));
    }

    @Test
    void refusesWhatMeansNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Selectivity.ratio(new Current(50), Ratio.NONE, new Current(100)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Selectivity.ratio(new Current(50), Ratio.WHOLE, new Current(0)));
    }
}
