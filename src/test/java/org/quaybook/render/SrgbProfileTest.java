package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SrgbProfileTest {

    /** The platform's own sRGB (IEC 61966-2-1) is the reference. */
    @ParameterizedTest
    @CsvSource({"1,1,1", "0,0,0", "1,0,0", "0,1,0", "0,0,1", "0.5,0.5,0.5", "0.61,0.14,0.14", "0.02,0.03,0.9"})
    void itsColoursAreThoseOfThePlatform(float red, float green, float blue) {
        ColorSpace own = new ICC_ColorSpace(ICC_Profile.getInstance(SrgbProfile.bytes()));
        ColorSpace platform = ColorSpace.getInstance(ColorSpace.CS_sRGB);
        float[] colour = {red, green, blue};
        float[] expected = platform.toCIEXYZ(colour);
        float[] found = own.toCIEXYZ(colour);
        for (int i = 0; i < expected.length; i++) {
            assertThat(found[i]).isCloseTo(expected[i], within(0.003f));
        }
    }
}
