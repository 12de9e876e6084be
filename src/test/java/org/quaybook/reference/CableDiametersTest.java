package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.ConductorSize;

class CableDiametersTest {

    /**
     * Geometry: strands fill at most π/√12 = 0.907 of a circle, so copper of area A is wider than √(4 A / 0.907 π); with
     * insulation of flexible cable, 0.7 mm thick at least (IEC 60227-3, from memory), the cable is wider still.
     */
    @ParameterizedTest
    @CsvSource({"2.5", "6", "10", "16", "25", "35", "50", "70", "95", "120", "150", "185", "240"})
    void noCableIsThinnerThanItsCopper(double size) {
        double bare = Math.sqrt(4 * size / 0.907 / Math.PI);
        double usual = CableDiameters.standard()
                        .of(ConductorSize.metric(size))
                        .orElseThrow()
                        .value()
                        .metres()
                * 1000;
        assertThat(usual).isBetween(bare + 1.4, bare * 1.7 + 1.4);
    }

    /** ASTM B258: 4/0 is 107 mm², 2/0 is 67 mm²; each takes the next larger row, and a size beyond the table has none. */
    @ParameterizedTest
    @CsvSource({"4/0, 19.2", "2/0, 15.3"})
    void gaugesTakeTheNextLargerRow(String gauge, double diameter) {
        assertThat(CableDiameters.standard()
                                .of(ConductorSize.awg(gauge))
                                .orElseThrow()
                                .value()
                                .metres()
                        * 1000)
                .isEqualTo(diameter);
        assertThat(CableDiameters.standard().of(ConductorSize.metric(300))).isEmpty();
    }
}
