package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.ReaderException;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Labels by themselves: the chunks of a PNG are those of ISO/IEC 15948. */
class LabelPictureTest {

    private static final String LINK = "HTTPS://EXAMPLE.ORG/R/9F3K7TWMX2QA6HCED1RBY";
    private static final TextStyle STYLE = TextStyle.of(Face.BOLD, 4, 4);
    private static final String SQUARE =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0 0h10v10h-10z\"/></svg>";

    private static Label label(Dots dots) {
        double module = dots.length(Math.ceil(dots.perMillimetre()));
        return new Label(
                "x",
                62,
                60,
                List.of(
                        Panel.outlined(new Box(2, 2, 58, 56), Colour.BLACK, 0.5),
                        TextBlock.of(new Box(4, 46, 40, 8), "Fuse F1", STYLE),
                        new Picture(new Box(50, 46, 8, 8), SQUARE),
                        new Code(4, 4, module, QrCode.of(LINK))));
    }

    private static BufferedImage read(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    /** The data of the first chunk of a kind. */
    private static Optional<ByteBuffer> chunk(byte[] png, String kind) {
        ByteBuffer all = ByteBuffer.wrap(png).position(8);
        while (all.hasRemaining()) {
            int length = all.getInt();
            byte[] name = new byte[4];
            all.get(name);
            if (new String(name, StandardCharsets.US_ASCII).equals(kind)) {
                return Optional.of(all.slice());
            }
            all.position(all.position() + length + 4);
        }
        return Optional.empty();
    }

    private static String decoded(BufferedImage image) throws ReaderException {
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image)));
        return new QRCodeReader().decode(bitmap).getText();
    }

    /** 62 mm are 496 dots at 8/mm and 732 at 300 dpi; pHYs 8000, 11811 and 23622 a metre (worked out by hand). */
    @ParameterizedTest
    @CsvSource({"8, 496, 480, 8000", "11.811023622, 732, 709, 11811", "23.622047244, 1465, 1417, 23622"})
    void onePixelADot(double perMillimetre, int width, int height, int perMetre) throws IOException, ReaderException {
        Dots dots = new Dots(perMillimetre);
        for (byte[] png : List.of(LabelPicture.png(label(dots), dots), LabelPicture.oneBit(label(dots), dots))) {
            BufferedImage image = read(png);
            assertThat(image.getWidth()).isEqualTo(width);
            assertThat(image.getHeight()).isEqualTo(height);
            ByteBuffer scale = chunk(png, "pHYs").orElseThrow();
            assertThat(scale.getInt()).isEqualTo(perMetre);
            assertThat(scale.getInt()).isEqualTo(perMetre);
            assertThat(scale.get()).as("metre").isEqualTo((byte) 1);
            assertThat(decoded(image)).isEqualTo(LINK);
        }
    }

    /** The ninth byte of IHDR is the depth in bits. */
    @Test
    void oneBitIsOneBit() {
        ByteBuffer head = chunk(LabelPicture.oneBit(label(Dots.DPI_203), Dots.DPI_203), "IHDR")
                .orElseThrow();
        assertThat(head.get(8)).isEqualTo((byte) 1);
        assertThat(chunk(LabelPicture.png(label(Dots.DPI_203), Dots.DPI_203), "IHDR")
                        .orElseThrow()
                        .get(8))
                .isEqualTo((byte) 8);
    }

    /** Every module is whole: all dots of it have one colour, and none between. */
    @Test
    void modulesHaveNoTornEdges() throws IOException {
        Dots dots = Dots.DPI_300;
        BufferedImage image = read(LabelPicture.png(label(dots), dots));
        QrCode code = QrCode.of(LINK);
        int module = (int) Math.ceil(dots.perMillimetre());
        int start = dots.in(4) + QrCode.QUIET_ZONE * module;
        for (int y = 0; y < code.size() * module; y++) {
            for (int x = 0; x < code.size() * module; x++) {
                int expected = code.isDark(x / module, y / module) ? 0xff000000 : 0xffffffff;
                assertThat(image.getRGB(start + x, start + y)).isEqualTo(expected);
            }
        }
    }

    /** The frame and the square stand where the label says, to a dot. */
    @Test
    void drawsWhereTheLabelSays() throws IOException {
        Dots dots = Dots.DPI_600;
        BufferedImage image = read(LabelPicture.png(label(dots), dots));
        int middle = dots.in(52);
        int x = 0;
        while ((image.getRGB(x, middle) & 0xff) > 128) {
            x++;
        }
        assertThat(dots.length(x)).isCloseTo(2, within(0.05));
        int y = dots.in(44);
        int across = dots.in(54);
        while ((image.getRGB(across, y) & 0xff) > 128) {
            y++;
        }
        assertThat(dots.length(y)).isCloseTo(46, within(0.05));
    }

    @Test
    void sameLabelSameBytes() {
        Dots dots = Dots.DPI_300;
        assertThat(LabelPicture.png(label(dots), dots)).isEqualTo(LabelPicture.png(label(dots), dots));
        assertThat(LabelPicture.oneBit(label(dots), dots)).isEqualTo(LabelPicture.oneBit(label(dots), dots));
        assertThat(LabelPicture.svg(label(dots))).isEqualTo(LabelPicture.svg(label(dots)));
    }

    @Test
    void refusesModulesThatAreNoWholeDots() {
        assertThatThrownBy(() -> LabelPicture.png(label(Dots.DPI_300), Dots.DPI_203))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Outlines, not text: an engraver has no fonts. Read by another reader and drawn: the same code, the same frame. */
    @Test
    void svgIsInMillimetresAndHasNoText() throws IOException, NotFoundException, ReaderException {
        String svg = LabelPicture.svg(label(Dots.DPI_300));
        assertThat(svg)
                .contains("width=\"62mm\" height=\"60mm\" viewBox=\"0 0 62 60\"")
                .doesNotContain("<text");
        Faults faults = new Faults("x");
        SvgDrawing drawing = SvgDrawing.read(svg, faults).orElseThrow();
        assertThat(faults.isEmpty()).isTrue();
        BufferedImage image = new BufferedImage(620, 600, BufferedImage.TYPE_INT_RGB);
        var graphics = image.createGraphics();
        graphics.setColor(java.awt.Color.WHITE);
        graphics.fillRect(0, 0, 620, 600);
        drawing.draw(graphics, 620, 600);
        graphics.dispose();
        assertThat(decoded(image)).isEqualTo(LINK);
        assertThat(image.getRGB(22, 520) & 0xff).isLessThan(128);
        assertThat(image.getRGB(540, 500) & 0xff).isLessThan(128);
    }

    /** The letter I leans as the font file says (OpenType table post, italicAngle), in dots and in outlines. */
    @ParameterizedTest
    @EnumSource(Face.class)
    void lettersLeanAsTheirFontSays(Face face) throws IOException {
        double angle;
        try (TrueTypeFont font = new TTFParser()
                .parse(new RandomAccessReadBuffer(
                        new ByteArrayInputStream(face.typeface().bytes())))) {
            angle = font.getPostScript().getItalicAngle();
        }
        Box box = new Box(10, 5, 30, 30);
        Label label = new Label("I", 50, 40, List.of(TextBlock.of(box, "I", TextStyle.of(face, 20, 20))));
        Dots dots = Dots.DPI_300;
        BufferedImage printed = read(LabelPicture.oneBit(label, dots));
        BufferedImage outlined = new BufferedImage(dots.in(50), dots.in(40), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = outlined.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, outlined.getWidth(), outlined.getHeight());
        graphics.setClip(2, 2, outlined.getWidth() - 4, outlined.getHeight() - 4);
        SvgDrawing.read(LabelPicture.svg(label), new Faults("I"))
                .orElseThrow()
                .draw(graphics, outlined.getWidth(), outlined.getHeight());
        graphics.dispose();
        assertThat(lean(printed)).isCloseTo(-angle, within(0.5));
        assertThat(lean(outlined)).isCloseTo(-angle, within(0.5));
        assertThat(angle != 0).isEqualTo(face == Face.BOLD_ITALIC);
    }

    /** Degrees by which the one stroke of a picture leans to the right: its left edge at a quarter and at three quarters. */
    private static double lean(BufferedImage image) {
        List<Integer> edge = new ArrayList<>();
        for (int y = 3; y < image.getHeight() - 3; y++) {
            int x = 3;
            while (x < image.getWidth() - 3 && (image.getRGB(x, y) & 0xff) > 128) {
                x++;
            }
            if (x < image.getWidth() - 3) {
                edge.add(x);
            }
        }
        int quarter = edge.size() / 4;
        int across = edge.get(quarter) - edge.get(3 * quarter);
        return Math.toDegrees(Math.atan2(across, 2 * quarter));
    }

    @Test
    void textIsWhatStandsOnIt() {
        assertThat(LabelPicture.text(label(Dots.DPI_300))).isEqualTo("Fuse F1\n" + LINK + "\n");
    }

    /** Two circuits may have breakers of one rating: an engraver needs both. What a tag says on each side is said once. */
    @Test
    void onlyWholeSidesAreSaidOnce() {
        List<Mark> table = List.of(cell("A1"), cell("B10 A"), cell("A2"), cell("B10 A"));
        assertThat(LabelPicture.text(new Label("table", 40, 40, table))).isEqualTo("A1\nB10 A\nA2\nB10 A\n");
        List<Mark> wrap = List.of(cell("B1"), cell("70 mm²"), cell("B1"), cell("70 mm²"), cell("B1"), cell("70 mm²"));
        assertThat(LabelPicture.text(new Label("wrap", 40, 40, wrap))).isEqualTo("B1\n70 mm²\n");
    }

    private static Mark cell(String text) {
        return TextBlock.of(new Box(2, 2, 30, 8), text, STYLE);
    }

    @Test
    void refusesWhatCannotBeRead() {
        Label narrow =
                new Label("narrow", 20, 10, List.of(TextBlock.of(new Box(2, 2, 5, 5), "Batterieschalter", STYLE)));
        assertThatThrownBy(() -> LabelPicture.png(narrow, Dots.DPI_300))
                .isInstanceOfSatisfying(
                        RenderException.class,
                        refused -> assertThat(refused.diagnostics().get(0).rule())
                                .isEqualTo("render.label-text-does-not-fit"));
    }
}
