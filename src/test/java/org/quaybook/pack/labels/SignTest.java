package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.render.Colour;

class SignTest {

    private static final double HEIGHT = SignPrint.HEIGHT;

    private static IntPredicate is(Colour colour) {
        return rgb -> SignPrint.near(new Color(rgb), colour);
    }

    /** BGV A8 § 4.1 (seen): ring 0.10 d, bar 0.08 d at 45° falling to the right, unbroken, red at least 35 %. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"P003", "P008", "P049"})
    void prohibitionHasRingAndBar(Sign sign) throws IOException {
        SignPrint print = SignPrint.of(sign);
        double edge = HEIGHT * SignGeometry.EDGE;
        double centre = edge + HEIGHT / 2;
        double half = Math.sqrt(0.5);
        assertThat(print.length(SignColours.RED, 0, centre, 1, 0, 20)).isCloseTo(10, within(0.2));
        assertThat(print.length(SignColours.RED, centre, 0, 0, 1, 20)).isCloseTo(10, within(0.2));
        for (double along : new double[] {-30, -10, 0, 10, 30}) {
            double x = centre + along * half;
            double y = centre + along * half;
            assertThat(print.length(SignColours.RED, x - 8 * half, y + 8 * half, half, -half, 16))
                    .as("bar, " + along + " mm from the centre")
                    .isCloseTo(8, within(0.2));
        }
        double disc = Math.PI / 4 * HEIGHT * HEIGHT;
        double side = HEIGHT + 2 * edge;
        // ring .1 and bar .08 cover 44.1 % of the disc, by their geometry
        assertThat(print.area(side, side, is(SignColours.RED)) / disc)
                .isCloseTo(0.441, within(0.005))
                .isGreaterThan(0.35);
    }

    /** BGV A8 § 4.2 (seen): band 0.06 b, light edge 0.025 b inside b, yellow at least 50 %. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"W001", "W012", "W016", "W021", "W023", "W026"})
    void warningHasBandAndEdge(Sign sign) throws IOException {
        SignPrint print = SignPrint.of(sign);
        double b = HEIGHT / SignGeometry.TRIANGLE_HEIGHT;
        double middle = sign.boxWidth(HEIGHT) / 2;
        assertThat(print.length(SignColours.YELLOW, middle, HEIGHT - 0.001, 0, -1, 0.05 * b))
                .as("light edge at the base")
                .isCloseTo(0.025 * b, within(0.25));
        assertThat(print.length(SignColours.BLACK, middle, HEIGHT - 0.001, 0, -1, 0.11 * b))
                .as("band at the base")
                .isCloseTo(0.06 * b, within(0.25));
        double yellow = print.area(sign.boxWidth(HEIGHT), HEIGHT, is(SignColours.YELLOW));
        double black = print.area(sign.boxWidth(HEIGHT), HEIGHT, is(SignColours.BLACK));
        assertThat(yellow / (yellow + black)).as("yellow of " + sign).isGreaterThanOrEqualTo(0.5);
    }

    /** Before the picture: black 33.6 %, yellow 66.4 % of the sharp triangle (from the two figures above). */
    @Test
    void shareOfTheBandByGeometry() {
        double inner = Math.sqrt(3) / 6;
        double outside = Math.pow((inner - SignGeometry.EDGE) / inner, 2);
        double inside = Math.pow((inner - SignGeometry.EDGE - SignGeometry.BAND) / inner, 2);
        assertThat(outside - inside).isCloseTo(0.336, within(0.001));
        assertThat(1 - (outside - inside)).isCloseTo(0.664, within(0.001));
        assertThat(1 - Math.pow(1 - 2 * SignGeometry.RING, 2)).as("ring alone").isCloseTo(0.36, within(1e-9));
    }

    /** DIN 4844-1 (seen): as high as 0.817 b with its rounded corners; nothing is drawn beyond the box. */
    @Test
    void triangleFillsItsBox() throws IOException {
        SignPrint print = SignPrint.of(Sign.W001);
        double middle = Sign.W001.boxWidth(HEIGHT) / 2;
        assertThat(SignPrint.near(print.at(middle, 0.3), SignColours.YELLOW)).isTrue();
        assertThat(SignPrint.near(print.at(middle, HEIGHT - 0.3), SignColours.YELLOW))
                .isTrue();
        assertThat(SignPrint.near(print.at(0.15, HEIGHT - 0.049 * HEIGHT / 0.817), SignColours.YELLOW))
                .isTrue();
        assertThat(print.length(SignColours.YELLOW, middle, -5, 0, 1, 4.9)).isZero();
    }

    /** BGV A8 § 4.3 (seen): blue at least half of the disc. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"M002", "M004", "M021"})
    void mandatorySignsAreMostlyBlue(Sign sign) throws IOException {
        double side = sign.boxWidth(HEIGHT);
        double disc = Math.PI / 4 * HEIGHT * HEIGHT;
        assertThat(SignPrint.of(sign).area(side, side, is(SignColours.BLUE)) / disc)
                .isGreaterThanOrEqualTo(0.5);
    }

    /** The printed colours are the named ones to the last digit, and there are no others. */
    @ParameterizedTest
    @EnumSource(Sign.class)
    void coloursAreTheNamedOnes(Sign sign) throws IOException {
        Set<Integer> seen = new TreeSet<>();
        SignPrint.inDots(SignPrint.label(sign))
                .area(sign.boxWidth(HEIGHT), sign.boxHeight(HEIGHT), rgb -> seen.add(rgb & 0xffffff));
        Colour own = sign.shape() == Sign.Shape.TRIANGLE
                ? SignColours.YELLOW
                : sign.name().startsWith("P") ? SignColours.RED : SignColours.BLUE;
        Set<Integer> named = new TreeSet<>(Set.of(rgb(own), 0xffffff));
        if (!own.equals(SignColours.BLUE)) {
            named.add(rgb(SignColours.BLACK));
        }
        assertThat(seen).isEqualTo(named);
    }

    private static int rgb(Colour colour) {
        return colour.red() << 16 | colour.green() << 8 | colour.blue();
    }

    /**
     * Boxes of chromaticity for ordinary material: red seen in a national table harmonised with ISO 3864-4, yellow and
     * blue from memory (CIE 39.2). Yellow is inside; red and blue are outside on any screen, so no conformity is claimed.
     */
    @ParameterizedTest
    @CsvSource({
        "#9b2423, .735 .265 .681 .239 .579 .341 .655 .345, .07, false",
        "#f9a800, .545 .454 .494 .426 .444 .476 .481 .518, .45, true",
        "#005387, .094 .125 .172 .198 .210 .160 .137 .038, .05, false"
    })
    void chromaticities(String hex, String box, double leastLuminance, boolean inside) {
        Colour colour = Colour.of(hex);
        double r = linear(colour.red());
        double g = linear(colour.green());
        double b = linear(colour.blue());
        // IEC 61966-2-1 (sRGB), linear values to tristimulus values
        double x = 0.4124 * r + 0.3576 * g + 0.1805 * b;
        double y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
        double z = 0.0193 * r + 0.1192 * g + 0.9505 * b;
        double[] corners =
                Arrays.stream(box.split(" ")).mapToDouble(Double::parseDouble).toArray();
        assertThat(y).isGreaterThanOrEqualTo(leastLuminance);
        assertThat(isInside(x / (x + y + z), y / (x + y + z), corners)).isEqualTo(inside);
    }

    /** Whether a point lies on the same side of all edges. */
    private static boolean isInside(double x, double y, double[] corners) {
        int left = 0;
        int count = corners.length / 2;
        for (int i = 0; i < count; i++) {
            int next = (i + 1) % count;
            double across = corners[2 * next] - corners[2 * i];
            double up = corners[2 * next + 1] - corners[2 * i + 1];
            if (across * (y - corners[2 * i + 1]) > up * (x - corners[2 * i])) {
                left++;
            }
        }
        return left == 0 || left == count;
    }

    /** WCAG 2.2, relative luminance and contrast ratio (formula seen). */
    @ParameterizedTest
    @CsvSource({
        "#9b2423, #ffffff, 7.86",
        "#f9a800, #000000, 10.63",
        "#d05d29, #000000, 5.28",
        "#d05d29, #ffffff, 3.98",
        "#005387, #ffffff, 8.12",
        "#ffffff, #000000, 21.00",
        "#595959, #ffffff, 7.00"
    })
    void contrasts(String one, String other, double ratio) {
        assertThat(contrast(Colour.of(one), Colour.of(other))).isCloseTo(ratio, within(0.01));
    }

    /** WCAG 2.2, 1.4.3: at least 4.5. */
    @ParameterizedTest
    @EnumSource(SignalWord.class)
    void signalWordsCanBeRead(SignalWord word) {
        assertThat(contrast(word.panel(), word.letters())).isGreaterThanOrEqualTo(4.5);
    }

    /** IEC 61966-2-1 (sRGB), the grey of equal luminance: 82 and 80, so a label must not rely on its colour. */
    @Test
    void redAndBlueAreTheSameGrey() {
        assertThat(grey(SignColours.RED)).isCloseTo(82, within(0.5));
        assertThat(grey(SignColours.BLUE)).isCloseTo(80, within(0.5));
        assertThat(Math.abs(grey(SignColours.RED) - grey(SignColours.BLUE))).isLessThan(5);
    }

    /** ANSI Z535.4 (seen): NOTICE has no alert triangle, the others have; of mixed hazards the gravest word rules. */
    @Test
    void noticeHasNoTriangleAndTheGravestWordRules() {
        assertThat(SignalWord.NOTICE.alert()).isEmpty();
        assertThat(SignalWord.DANGER.alert()).isPresent();
        assertThat(SignalWord.WARNING.alert()).isPresent();
        assertThat(SignalWord.CAUTION.alert()).isPresent();
        assertThat(SignalWord.gravest(List.of(SignalWord.NOTICE, SignalWord.WARNING, SignalWord.CAUTION)))
                .isEqualTo(SignalWord.WARNING);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LabelDesign.of("x", LabelReason.SWAP, LabelSpot.BATTERY, "", LabelReading.HAND, "x")
                        .warning(SignalWord.NOTICE, Sign.W001));
    }

    @Test
    void everyDrawingIsUsed() throws IOException {
        Set<String> used = new TreeSet<>();
        Arrays.stream(Sign.values()).map(Sign::name).forEach(used::add);
        used.addAll(Set.of("alert-danger", "alert-warning", "alert-caution"));
        try (Stream<Path> files = Files.list(Path.of("templates", "signs"))) {
            List<String> drawn = files.map(file -> file.getFileName().toString().replace(".svg", ""))
                    .toList();
            assertThat(drawn).containsExactlyInAnyOrderElementsOf(used);
        }
    }

    private static double contrast(Colour one, Colour other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Colour colour) {
        return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double grey(Colour colour) {
        return 255 * (1.055 * Math.pow(luminance(colour), 1 / 2.4) - 0.055);
    }
}
