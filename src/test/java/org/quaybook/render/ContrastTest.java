package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast by the definition of WCAG 2.2, "contrast ratio" and "relative luminance". */
class ContrastTest {

    /** 21:1 is the definition's own upper end; #767676 as the least grey that passes 4.5 on white is common knowledge of the trade, from memory. */
    @ParameterizedTest
    @CsvSource({"#000000,#ffffff,21.0", "#ffffff,#ffffff,1.0", "#767676,#ffffff,4.54", "#777777,#ffffff,4.48"})
    void ratios(String one, String other, double expected) {
        assertThat(Contrast.ratio(Colour.of(one), Colour.of(other))).isCloseTo(expected, within(0.005));
        assertThat(Contrast.ratio(Colour.of(other), Colour.of(one))).isCloseTo(expected, within(0.005));
    }

    /** Of black and white at least one reaches 4.5 on any colour: sqrt(21) = 4.58. */
    @Test
    void inkIsReadOnEveryGround() {
        for (int red = 0; red < 256; red += 15) {
            for (int green = 0; green < 256; green += 15) {
                for (int blue = 0; blue < 256; blue += 15) {
                    Colour ground = new Colour(red, green, blue);
                    assertThat(Contrast.ratio(Colour.of(Contrast.inkOn(ground)), ground))
                            .as("%s", ground)
                            .isGreaterThanOrEqualTo(Contrast.TEXT);
                }
            }
        }
    }
}
