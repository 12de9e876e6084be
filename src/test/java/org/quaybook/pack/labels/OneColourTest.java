package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.render.Box;
import org.quaybook.render.Colour;
import org.quaybook.render.Contrast;
import org.quaybook.render.Ground;
import org.quaybook.render.Label;
import org.quaybook.render.Mark;
import org.quaybook.render.Panel;
import org.quaybook.render.Picture;
import org.quaybook.render.TextBlock;

/** Labels for printers that have black and nothing else. */
class OneColourTest {

    private static final double HEIGHT = SignPrint.HEIGHT;

    /** A label with a panel of the word's colour, 60 x 12 mm, and the triangle of the word on it. */
    private static Label panel(SignalWord word) {
        List<Mark> marks = new ArrayList<>();
        marks.add(Panel.filled(new Box(0, 0, 60, 12), word.panel()));
        word.alert().ifPresent(svg -> marks.add(new Picture(new Box(3, 2, 10, 8), svg)));
        return new Label(word.name(), 60, 12, marks);
    }

    private static Set<Integer> colours(SignPrint print, Label label) {
        Set<Integer> seen = new TreeSet<>();
        print.area(label.width(), label.height(), rgb -> seen.add(rgb & 0xffffff));
        return seen;
    }

    @ParameterizedTest
    @EnumSource(Sign.class)
    void signsAreBlackAndWhite(Sign sign) throws IOException {
        Label label = OneColour.of(SignPrint.label(sign));
        assertThat(colours(SignPrint.inDots(label), label)).containsExactly(0x000000, 0xffffff);
    }

    @ParameterizedTest
    @EnumSource(SignalWord.class)
    void signalPanelsAreBlackAndWhite(SignalWord word) throws IOException {
        Label label = OneColour.of(panel(word));
        assertThat(colours(SignPrint.inDots(label), label)).containsExactly(0x000000, 0xffffff);
    }

    /** Labels of lithium and of lead, with code, table, logo and all. */
    @ParameterizedTest
    @ValueSource(strings = {"battery-lid", "record", "sources", "swap"})
    void wholeLabelsAreBlackAndWhite(String id) throws IOException {
        Label label = DemoJob.demo("second-biscuit").sized().stream()
                .map(LabelSetter.Sized::label)
                .filter(one -> one.id().equals(id))
                .findFirst()
                .map(OneColour::of)
                .orElseThrow();
        assertThat(colours(SignPrint.inDots(label), label)).containsExactly(0x000000, 0xffffff);
    }

    /** WCAG 2.2: black on white or white on black is 21, the most there is; every text of every label is so. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void textsHaveTheGreatestContrast(String name) {
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            List<Mark> marks = OneColour.of(sized.label()).marks();
            for (int i = 0; i < marks.size(); i++) {
                if (marks.get(i) instanceof TextBlock text) {
                    for (Colour ground : Ground.of(text.box(), marks.subList(0, i))) {
                        assertThat(Contrast.ratio(text.style().colour(), ground))
                                .as(sized.label().id() + ": " + text.paragraphs())
                                .isCloseTo(21, within(1e-9));
                    }
                }
            }
        }
    }

    /** Edges stay where they were: nothing but colours changes, and what the patterns of signal words add. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void boxesStay(String name) {
        for (LabelSetter.Sized sized : DemoJob.demo(name).sized()) {
            Label black = OneColour.of(sized.label());
            assertThat(black.marks().stream().map(Mark::box).toList())
                    .containsAll(sized.label().marks().stream().map(Mark::box).toList());
            assertThat(black.width()).isEqualTo(sized.label().width());
            assertThat(black.height()).isEqualTo(sized.label().height());
        }
    }

    /** BGV A8 § 4.1 (seen): ring 0.10 d, bar 0.08 d; the light edge parts the bar from the picture. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"P003", "P008", "P049"})
    void prohibitionKeepsRingAndBar(Sign sign) throws IOException {
        SignPrint print = SignPrint.inDots(OneColour.of(SignPrint.label(sign)));
        double edge = HEIGHT * SignGeometry.EDGE;
        double centre = edge + HEIGHT / 2;
        double half = Math.sqrt(0.5);
        assertThat(print.length(Colour.BLACK, 0, centre, 1, 0, 15)).isCloseTo(10, within(0.2));
        for (double along : new double[] {-30, -10, 0, 10, 30}) {
            double x = centre + along * half;
            double y = centre + along * half;
            double from = 5.9;
            assertThat(print.length(Colour.BLACK, x - from * half, y + from * half, half, -half, 2 * from))
                    .as("bar, " + along + " mm from the centre")
                    .isCloseTo(8, within(0.2));
        }
    }

    /** The two colours of an earth: a light stripe in a dark band stays a stripe. */
    @Test
    void aLightStripeInADarkBandStays() throws IOException {
        Panel band = Panel.filled(new Box(0, 0, 6, 20), Colour.of("#237f52"));
        Panel stripe = Panel.filled(new Box(2, 0, 2, 20), SignColours.YELLOW);
        SignPrint print = SignPrint.inDots(OneColour.of(new Label("earth", 6, 20, List.of(band, stripe))));
        assertThat(print.length(Colour.BLACK, 0, 10, 1, 0, 6)).isCloseTo(4, within(0.1));
        assertThat(print.length(Colour.WHITE, 0, 10, 1, 0, 6)).isCloseTo(2, within(0.1));
    }

    /** Only the bar of a prohibition gets an edge: a triangle of DANGER with one would be cut in two. */
    @Test
    void onlyProhibitionsGetAnEdgeAlongTheBar() {
        for (Sign sign : Sign.values()) {
            boolean bar = sign.svg().contains("rotate(45 500 500)");
            assertThat(OneColour.svg(sign.svg()).contains("height=\"120\""))
                    .as(sign.name())
                    .isEqualTo(bar);
        }
        for (SignalWord word : SignalWord.values()) {
            word.alert().ifPresent(svg -> assertThat(OneColour.svg(svg)).doesNotContain("<rect"));
        }
    }

    /** BGV A8 § 4.2 (seen): band 0.06 b, light edge 0.025 b. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"W001", "W012", "W016", "W021", "W023", "W026"})
    void warningKeepsBandAndEdge(Sign sign) throws IOException {
        SignPrint print = SignPrint.inDots(OneColour.of(SignPrint.label(sign)));
        double b = HEIGHT / SignGeometry.TRIANGLE_HEIGHT;
        double middle = sign.boxWidth(HEIGHT) / 2;
        assertThat(print.length(Colour.WHITE, middle, HEIGHT - 0.001, 0, -1, 0.05 * b))
                .isCloseTo(0.025 * b, within(0.25));
        assertThat(print.length(Colour.BLACK, middle, HEIGHT - 0.001, 0, -1, 0.1 * b))
                .isCloseTo(0.06 * b, within(0.25));
    }

    /** BGV A8 § 4.3 (seen): at least half of the disc in the colour, here black. */
    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"M002", "M004", "M021"})
    void mandatorySignsAreMostlyBlack(Sign sign) throws IOException {
        SignPrint print = SignPrint.inDots(OneColour.of(SignPrint.label(sign)));
        double side = sign.boxWidth(HEIGHT);
        double disc = Math.PI / 4 * HEIGHT * HEIGHT;
        assertThat(print.area(side, side, rgb -> (rgb & 0xff) == 0) / disc).isGreaterThanOrEqualTo(0.5);
    }

    /** Told apart without the word: all black, hatched edge, heavy edge, thin edge. Our own patterns, no source. */
    @Test
    void signalWordsAreToldApartByPattern() throws IOException {
        SignPrint danger = SignPrint.inDots(OneColour.of(panel(SignalWord.DANGER)));
        assertThat(danger.length(Colour.BLACK, 20, 6, 1, 0, 39)).isCloseTo(39, within(0.1));
        SignPrint warning = SignPrint.inDots(OneColour.of(panel(SignalWord.WARNING)));
        assertThat(warning.length(Colour.BLACK, 10, 0.5, 1, 0, 40)).isCloseTo(20, within(0.5));
        assertThat(warning.length(Colour.BLACK, 10, 11.5, 1, 0, 40)).isCloseTo(20, within(0.5));
        assertThat(warning.length(Colour.BLACK, 0, 6, 1, 0, 2.5)).isCloseTo(1, within(0.1));
        assertThat(warning.length(Colour.WHITE, 20, 6, 1, 0, 35)).isCloseTo(35, within(0.1));
        SignPrint caution = SignPrint.inDots(OneColour.of(panel(SignalWord.CAUTION)));
        assertThat(caution.length(Colour.BLACK, 10, 0.5, 1, 0, 40)).isCloseTo(40, within(0.1));
        assertThat(caution.length(Colour.BLACK, 30, 0, 0, 1, 6)).isCloseTo(1, within(0.1));
        SignPrint notice = SignPrint.inDots(OneColour.of(panel(SignalWord.NOTICE)));
        assertThat(notice.length(Colour.BLACK, 30, 0, 0, 1, 6)).isCloseTo(0.3, within(0.1));
    }
}
