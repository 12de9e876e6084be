package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.quaybook.render.TextStyle.Align;
import org.quaybook.render.TextStyle.Listing;
import org.quaybook.render.TextStyle.VerticalAlign;

class TextFitterTest {

    private static final TextStyle STYLE = TextStyle.of(Face.BOLD, 6, 2);

    /** Independent reading of the font files: FontBox. A PDF knows widths in thousandths of the size. */
    @ParameterizedTest
    @EnumSource(Face.class)
    void measuresAgreeWithTheFontFile(Face face) throws IOException {
        TrueTypeFont font = new TTFParser()
                .parse(new RandomAccessReadBuffer(
                        new ByteArrayInputStream(face.typeface().bytes())));
        double unitsPerEm = font.getUnitsPerEm();
        assertThat(face.capHeight(1)).isCloseTo(font.getPath("H").getBounds2D().getMaxY() / unitsPerEm, within(0.001));
        double width = 0;
        for (char c : "Main fuse 12".toCharArray()) {
            width += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(c)) / unitsPerEm;
        }
        assertThat(face.widthOf("Main fuse 12", face.capHeight(10))).isCloseTo(width * 10, within(0.001 * 10 * 12));
        assertThat(face.sizeFor(face.capHeight(3))).isCloseTo(3, within(1e-9));
    }

    @Test
    void takesTheGreatestSizeThatFits() {
        assertThat(fits("OFF", new Box(0, 0, 40, 10), STYLE).capHeight()).isEqualTo(6);
        Fitting.Fits narrow = fits("OFF", new Box(0, 0, 12, 10), STYLE);
        assertThat(narrow.lines()).hasSize(1);
        assertThat(narrow.capHeight()).isBetween(2.0, 5.9);
        assertThat(Face.BOLD.widthOf("OFF", narrow.capHeight())).isLessThanOrEqualTo(12);
        assertThat(Face.BOLD.widthOf("OFF", narrow.capHeight() + 0.1)).isGreaterThan(12);
    }

    @Test
    void breaksBetweenWordsAndStaysInTheBox() {
        Box box = new Box(3, 4, 30, 20);
        Fitting.Fits fitted = fits("Switch off the pump before you open the hatch", box, STYLE);
        assertThat(fitted.lines()).hasSizeGreaterThan(1);
        assertThat(String.join(
                        " ", fitted.lines().stream().map(Fitting.Line::text).toList()))
                .isEqualTo("Switch off the pump before you open the hatch");
        for (Fitting.Line line : fitted.lines()) {
            double width = Face.BOLD.widthOf(line.text(), fitted.capHeight());
            assertThat(line.x()).isGreaterThanOrEqualTo(3);
            assertThat(line.x() + width).isLessThanOrEqualTo(33 + 1e-6);
            assertThat(line.baseline() - fitted.capHeight()).isGreaterThanOrEqualTo(4 - 1e-6);
            assertThat(line.baseline()).isLessThanOrEqualTo(24);
        }
    }

    @Test
    void keepsForcedLinesAndDividesOnlyAtSoftHyphens() {
        TextStyle small = TextStyle.of(Face.REGULAR, 3, 3);
        assertThat(texts(fits("one\ntwo", new Box(0, 0, 50, 20), small))).containsExactly("one", "two");
        assertThat(texts(fits("Strom\u00adver\u00adsor\u00adgung", new Box(0, 0, 60, 20), small)))
                .containsExactly("Stromversorgung");
        assertThat(texts(fits("Strom\u00adver\u00adsor\u00adgung", new Box(0, 0, 24, 20), small)))
                .containsExactly("Stromver-", "sorgung");
        assertThat(texts(fits("12\u00a0V 7\u00a0A", new Box(0, 0, 10, 20), small)))
                .containsExactly("12\u00a0V", "7\u00a0A");
    }

    @Test
    void theLeastBoxThatWouldDoDoesAndNothingSmaller() {
        for (String text : List.of("UNDIVIDABLE", "many words that need a good deal of height here", "gyp")) {
            Box tight = new Box(0, 0, 9, 2.1);
            Fitting.DoesNotFit report = (Fitting.DoesNotFit) TextFitter.fit(TextBlock.of(tight, text, STYLE));
            Box enough = new Box(0, 0, report.leastWidth(), report.leastHeight());
            assertThat(fits(text, enough, STYLE).capHeight()).isEqualTo(2);
            Box lower = new Box(0, 0, report.leastWidth(), report.leastHeight() - 0.05);
            assertThat(report.leastHeight() > 2.1 ? TextFitter.fit(TextBlock.of(lower, text, STYLE)) : report)
                    .isInstanceOf(Fitting.DoesNotFit.class);
            if (report.leastWidth() > 9) {
                Box narrower = new Box(0, 0, report.leastWidth() - 0.05, report.leastHeight());
                assertThat(TextFitter.fit(TextBlock.of(narrower, text, STYLE))).isInstanceOf(Fitting.DoesNotFit.class);
            }
        }
    }

    @Test
    void alignsInTheBox() {
        Box box = new Box(10, 20, 40, 30);
        Fitting.Line top = only(box, STYLE);
        assertThat(top.x()).isEqualTo(10);
        assertThat(top.baseline()).isCloseTo(26, within(0.15));
        Fitting.Line middle = only(box, STYLE.aligned(Align.CENTRE, VerticalAlign.MIDDLE));
        double width = Face.BOLD.widthOf("HE", 6);
        assertThat(middle.x()).isCloseTo(10 + (40 - width) / 2, within(1e-6));
        assertThat(middle.baseline()).isCloseTo(20 + 15 + 3, within(1e-6));
        Fitting.Line bottom = only(box, STYLE.aligned(Align.RIGHT, VerticalAlign.BOTTOM));
        assertThat(bottom.x()).isCloseTo(50 - width, within(1e-6));
        assertThat(bottom.baseline()).isCloseTo(50, within(0.15));
    }

    @Test
    void numbersAndBulletsHang() {
        TextBlock block = new TextBlock(
                new Box(0, 0, 30, 40),
                List.of("first thing that needs two lines", "second"),
                TextStyle.of(Face.REGULAR, 2.5, 2.5).listed(Listing.NUMBERS));
        List<Fitting.Line> lines = ((Fitting.Fits) TextFitter.fit(block)).lines();
        assertThat(lines).extracting(Fitting.Line::text).startsWith("1.").contains("2.", "second");
        assertThat(lines.get(0).baseline()).isEqualTo(lines.get(1).baseline());
        assertThat(lines.get(1).x()).isEqualTo(lines.get(2).x()).isGreaterThan(0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> STYLE.aligned(Align.RIGHT, VerticalAlign.TOP).listed(Listing.BULLETS));
    }

    @Test
    void namesACharacterThatNoFontHas() {
        TextBlock block = TextBlock.of(new Box(0, 0, 30, 10), "fish \ud83d\udc1f", STYLE);
        assertThatExceptionOfType(RenderException.class)
                .isThrownBy(() -> TextFitter.fit(block))
                .satisfies(e ->
                        assertThat(e.diagnostics().get(0).message().arguments()).startsWith("\ud83d\udc1f", "U+1F41F"));
    }

    private static Fitting.Line only(Box box, TextStyle style) {
        return fits("HE", box, style).lines().get(0);
    }

    private static List<String> texts(Fitting.Fits fitted) {
        return fitted.lines().stream().map(Fitting.Line::text).toList();
    }

    private static Fitting.Fits fits(String text, Box box, TextStyle style) {
        return (Fitting.Fits) TextFitter.fit(TextBlock.of(box, text, style));
    }
}
