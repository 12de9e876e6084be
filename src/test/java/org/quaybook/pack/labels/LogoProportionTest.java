package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogoProportionTest {

    /** SVG 2, 8.6: viewBox is least x, least y, width and height, parted by blanks or commas. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 0 240 80|3",
                "-5,-5,10.5,10.5|1",
                "0 0 .5 1|0.5",
                "0 0 1.2.3 5|1",
                "0 0 . 1|1",
                "0 0 0 0|1",
                "0 0 1 0|1",
                "0 0 0 1|1",
                "0 0 999999999 1|1",
                "0 0 1 999999999|1",
                "0 0 99999999999999999999 1|1"
            })
    void isThatOfTheViewBoxIfALabelHasRoomForIt(String viewBox, double proportion) {
        assertThat(LabelsRecord.proportion("<svg xmlns='http://www.w3.org/2000/svg' viewBox='" + viewBox + "'/>"))
                .isEqualTo(proportion);
    }
}
