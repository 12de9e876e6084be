package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.DocumentInfo;
import org.quaybook.render.Label;
import org.quaybook.render.LabelSheet;
import org.quaybook.render.LabelSheetResult;
import org.quaybook.render.Picture;
import org.quaybook.render.Placed;
import org.quaybook.render.Sheet;
import org.quaybook.render.SheetLines;

class SignTest {

    private static final float DPI = 600;
    private static final double HEIGHT = 100;

    /** A sign as it is printed, 100 mm high, measured in pixels of a rendering by PDFBox. */
    private record Print(BufferedImage image, double left, double top, double pixels) {

        static Print of(Sign sign) throws IOException {
            double width = sign.boxWidth(HEIGHT);
            double height = sign.boxHeight(HEIGHT);
            Label label = new Label(
                    sign.name(), width, height, List.of(new Picture(new Box(0, 0, width, height), sign.svg())));
            DocumentInfo info = new DocumentInfo("sign", "", "", "en", LocalDate.of(2026, 3, 1));
            LabelSheetResult sheet =
                    LabelSheet.toPdf(List.of(label.uncut()), Sheet.A4, new SheetLines("", "", ""), info);
            Placed placed = sheet.placed().get(0);
            try (PDDocument document = Loader.loadPDF(sheet.pdf())) {
                BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.RGB);
                return new Print(image, placed.x(), placed.y(), DPI / 25.4);
            }
        }

        Color at(double x, double y) {
            return new Color(image.getRGB((int) ((left + x) * pixels), (int) ((top + y) * pixels)));
        }

        /** Length in millimetres of a line from a point on which the colour is near the given one. */
        double length(Colour colour, double x, double y, double towardsX, double towardsY, double most) {
            double step = 0.02;
            int hits = 0;
            for (double at = 0; at < most; at += step) {
                hits += near(at(x + towardsX * at, y + towardsY * at), colour) ? 1 : 0;
            }
            return hits * step;
        }

        /** Share of the pixels in a box on which the test of the colour holds. */
        double area(double width, double height, IntPredicate test) {
            long hits = 0;
            int fromX = (int) Math.round(left * pixels);
            int fromY = (int) Math.round(top * pixels);
            for (int row = 0; row < height * pixels; row++) {
                for (int column = 0; column < width * pixels; column++) {
                    hits += test.test(image.getRGB(fromX + column, fromY + row)) ? 1 : 0;
                }
            }
            return hits / pixels / pixels;
        }

        static boolean near(Color seen, Colour colour) {
            return Math.abs(seen.getRed() - colour.red()) < 24
                    && Math.abs(seen.getGreen() - colour.green()) < 24
                    && Math.abs(seen.getBlue() - colour.blue()) < 24;
        }
    }

    private static IntPredicate is(Colour colour) {
        return rgb -> Print.near(new Color(rgb), colour);
    }

    /** BGV A8 § 4.1 (seen): ring 0.10 d, bar 0.08 d at 45° falling to the right, unbroken, red at least 35 %. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"P003", "P008", "P049"})
    void prohibitionHasRingAndBar(Sign sign) throws IOException {
        Print print = Print.of(sign);
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
        Print print = Print.of(sign);
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
        Print print = Print.of(Sign.W001);
        double middle = Sign.W001.boxWidth(HEIGHT) / 2;
        assertThat(Print.near(print.at(middle, 0.3), SignColours.YELLOW)).isTrue();
        assertThat(Print.near(print.at(middle, HEIGHT - 0.3), SignColours.YELLOW))
                .isTrue();
        assertThat(Print.near(print.at(0.15, HEIGHT - 0.049 * HEIGHT / 0.817), SignColours.YELLOW))
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
        assertThat(Print.of(sign).area(side, side, is(SignColours.BLUE)) / disc).isGreaterThanOrEqualTo(0.5);
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
