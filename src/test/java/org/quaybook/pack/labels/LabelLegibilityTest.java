package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.render.Dots;

class LabelLegibilityTest {

    /** NUREG-0700, H = 2πDα/21600 (formula seen); the results worked out by hand from it. */
    @ParameterizedTest
    @CsvSource({"0.7, 16, 3.26", "0.7, 20, 4.07", "0.7, 22, 4.48", "1, 20, 5.82", "0.4, 20, 2.33"})
    void heightOfALetterSeenUnderAnAngle(double metres, double minutes, double millimetres) {
        assertThat(LabelLegibility.heightSeenUnder(metres, minutes)).isCloseTo(millimetres, within(0.005));
    }

    /** DIN 4844-1, h = l/Z (seen): Z 40 for signs, 100 for safe condition, 300 for letters. */
    @ParameterizedTest
    @CsvSource({"2, 40, 50", "0.7, 40, 17.5", "3, 40, 75", "2, 100, 20", "3, 300, 10", "0.7, 300, 2.33"})
    void heightByDistanceFactor(double metres, double factor, double millimetres) {
        assertThat(LabelLegibility.heightByFactor(metres, factor)).isCloseTo(millimetres, within(0.005));
    }

    /** ANSI Z535.2 (seen second-hand): at 60 inches the signal word has 0.40 in by 1/150, the message 0.20 in by 1/300. */
    @Test
    void signalWordAndMessageByDistance() {
        double metres = 60 * 0.0254;
        assertThat(LabelLegibility.heightByFactor(metres, 150) / 25.4).isCloseTo(0.40, within(0.001));
        assertThat(LabelLegibility.heightByFactor(metres, 300) / 25.4).isCloseTo(0.20, within(0.001));
    }

    /** The project's own rule of panels at 0.7 m and tags at 0.4 m: 4.0 and 2.4 mm, by 20 minutes of arc. */
    @Test
    void leastHeightsOfPanelsAndTags() {
        assertThat(LabelReading.PANEL.cap()).isCloseTo(4.1, within(1e-9));
        assertThat(LabelReading.HAND.cap()).isCloseTo(2.4, within(1e-9));
        assertThat(LabelReading.APPROACH.cap()).isCloseTo(5.9, within(1e-9));
        assertThat(LabelLegibility.signalCap(4.1)).isCloseTo(6.2, within(1e-9));
    }

    /** L/200, a rule of thumb for capitals (seen: FAA), is met as well. */
    @ParameterizedTest
    @EnumSource(LabelReading.class)
    void capitalsMeetTheRuleOfThumb(LabelReading reading) {
        assertThat(reading.cap()).isGreaterThanOrEqualTo(LabelLegibility.heightByFactor(reading.metres(), 200));
    }

    /** 92/58/EEC Annex, A > L²/2000 in metres (from memory). */
    @ParameterizedTest
    @EnumSource(LabelReading.class)
    void signsAreLargeEnoughByArea(LabelReading reading) {
        double least = reading.metres() * reading.metres() / 2000 * 1e6;
        double height = LabelLegibility.signHeight(reading.metres());
        double triangle = height / SignGeometry.TRIANGLE_HEIGHT;
        double lostAtCorners = 3 * 0.049 * 0.049 * (Math.sqrt(3) - Math.PI / 3) * triangle * triangle;
        assertThat(Math.sqrt(3) / 4 * triangle * triangle - lostAtCorners).isGreaterThanOrEqualTo(least - 0.1);
        assertThat(Math.PI / 4 * height * height).isGreaterThan(least);
    }

    /** The same rule at 2 m: square 44.7, circle 50.5, triangle 68.0 mm (worked out from it). */
    @Test
    void leastAreaAtTwoMetres() {
        double area = LabelLegibility.signArea(2);
        assertThat(Math.sqrt(area)).isCloseTo(44.7, within(0.05));
        assertThat(Math.sqrt(4 * area / Math.PI)).isCloseTo(50.5, within(0.05));
        assertThat(Math.sqrt(4 * area / Math.sqrt(3))).isCloseTo(68.0, within(0.05));
    }

    /** DIN 4844-1, h = 0.817 b (seen): 50 mm high is 61.2 mm wide before rounding. */
    @Test
    void triangleOfFiftyMillimetres() {
        assertThat(50 / SignGeometry.TRIANGLE_HEIGHT).isCloseTo(61.2, within(0.05));
        assertThat(SignGeometry.cornerRadius()).isCloseTo(0.049, within(0.0005));
    }

    /** Symbology owner's advice (seen): four printer dots a module: 0.5 mm at 8 dots/mm, 0.339 at 300, 0.169 at 600 dpi. */
    @ParameterizedTest
    @CsvSource({"8, 0.500", "11.811024, 0.339", "23.622047, 0.169"})
    void modulesAreWholeDots(double perMillimetre, double leastModule) {
        Dots dots = new Dots(perMillimetre);
        for (int modules = 21; modules <= 177; modules += 4) {
            double module = LabelLegibility.codeModule(modules, LabelReading.SCAN.metres(), dots);
            double across = module * perMillimetre;
            assertThat(across).isCloseTo(Math.rint(across), within(1e-9)).isGreaterThanOrEqualTo(4 - 1e-9);
            assertThat(module * modules).isGreaterThanOrEqualTo(30 - 1e-9);
        }
        assertThat(LabelLegibility.codeModule(177, 0.1, dots)).isCloseTo(leastModule, within(0.0005));
    }
}
