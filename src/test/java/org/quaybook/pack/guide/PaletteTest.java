package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Place;
import org.quaybook.job.Colours;
import org.quaybook.job.Installer;
import org.quaybook.record.Branding;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;

class PaletteTest {

    /**
     * WCAG 2.2, definition of contrast ratio: black on white is 21 by definition. #767676 as the lightest grey that
     * reaches 4.5 on white: W3C technique G18 and its tools (from memory). The others: formula of the definition,
     * computed by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "#000000, #ffffff, 21.0", "#ffffff, #ffffff, 1.0", "#767676, #ffffff, 4.54", "#777777, #ffffff, 4.48",
        "#9b2423, #ffffff, 7.86", "#d05d29, #000000, 5.28", "#f9a800, #000000, 10.63", "#005387, #ffffff, 8.12"
    })
    void contrastIsThatOfTheDefinition(String a, String b, double ratio) {
        assertThat(Contrast.ratio(Colour.of(a), Colour.of(b))).isCloseTo(ratio, within(0.01));
        assertThat(Contrast.ratio(Colour.of(b), Colour.of(a))).isCloseTo(ratio, within(0.01));
    }

    /** WCAG 2.2, 1.4.3: 4.5 to 1 at least. */
    @ParameterizedTest
    @ValueSource(strings = {"#ffff00", "#ffffff", "#ff8800", "#00ff00", "#17425f", "#000000"})
    void anInstallersColourIsMadeReadable(String main) {
        Installer installer = new Installer(
                "Firm",
                null,
                null,
                null,
                List.of(),
                null,
                null,
                null,
                new Colours(main, null),
                null,
                /* guidePrints= */ null,
                "https://x.example/",
                null,
                null,
                Place.NOWHERE);
        Colour printed = Colour.of(String.valueOf(
                new Palette(Branding.of(installer, Optional.empty())).facts().get("main")));
        assertThat(Contrast.ratio(printed, Colour.WHITE)).isGreaterThanOrEqualTo(4.5);
        if (Contrast.ratio(Colour.of(main), Colour.WHITE) >= 4.5) {
            assertThat(printed).isEqualTo(Colour.of(main));
        }
    }
}
