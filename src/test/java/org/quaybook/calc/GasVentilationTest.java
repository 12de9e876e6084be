package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Current;
import org.quaybook.reference.Ventilation;

class GasVentilationTest {

    private static GasVentilation need(int cells, double milliamperes, double ampereHours) {
        return GasVentilation.of(
                cells, new Current(milliamperes / 1000), new Charge(ampereHours), Ventilation.standard());
    }

    /**
     * IEC 62485-2, formerly EN 50272-2, clause 8.2. 108 cells of 50 Ah: worked example in an emergency-lighting handbook
     * (seen). 12 cells of 48 Ah: worked example in a trade journal, which prints 0.8 cm² (seen). The two of 6 cells: the
     * standard's formula (seen) with the table's currents at boost, numbers our own.
     */
    @ParameterizedTest
    @CsvSource({
        "108, 1, 50, 0.27, 7.56, 0.001, 0.01",
        "12, 1, 48, 0.0288, 0.81, 0.0001, 0.02",
        "6, 20, 400, 2.4, 67.2, 0.001, 0.1",
        "6, 8, 400, 0.96, 26.9, 0.001, 0.1"
    })
    void workedExamples(
            int cells, double gassing, double ah, double flow, double opening, double flowTolerance, double tolerance) {
        GasVentilation need = need(cells, gassing, ah);
        assertThat(need.flow().cubicMetresPerHour()).isCloseTo(flow, within(flowTolerance));
        assertThat(need.opening().squareMillimetres() / 100).isCloseTo(opening, within(tolerance));
    }

    /** Doubling cells, current or capacity doubles the air: each stands once in the formula. */
    @Test
    void isProportional() {
        double flow = need(6, 5, 100).flow().cubicMetresPerHour();
        assertThat(need(12, 5, 100).flow().cubicMetresPerHour()).isCloseTo(2 * flow, within(1e-12));
        assertThat(need(6, 10, 100).flow().cubicMetresPerHour()).isCloseTo(2 * flow, within(1e-12));
        assertThat(need(6, 5, 200).flow().cubicMetresPerHour()).isCloseTo(2 * flow, within(1e-12));
    }

    @Test
    void refusesWhatMeansNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> need(0, 5, 100));
        assertThatIllegalArgumentException().isThrownBy(() -> need(6, -1, 100));
    }
}
