package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.ReaderException;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.render.QrCode.Level;

class QrCodeTest {

    private static final String LINK = "HTTPS://LOGS.EXAMPLE.ORG/R/K3VT9QXW2M7HCE4A";
    private static final String SEALED = LINK + "#5488KMYCFJQSXW47B8FPTC6TRAM";
    private static final DocumentInfo INFO = new DocumentInfo("Codes", "Test", "", "en", LocalDate.of(2026, 3, 1));

    /** ISO/IEC 18004, sides of the symbol versions: 17 + 4 x version modules; table 7, bytes at level L. */
    @ParameterizedTest
    @CsvSource({"17, 1, 21", "53, 3, 29", "271, 10, 57", "2953, 40, 177"})
    void sideFollowsFromTheVersion(int bytes, int version, int side) {
        QrCode code = QrCode.of("a".repeat(bytes), Level.L);
        assertThat(code.version()).isEqualTo(version);
        assertThat(code.size()).isEqualTo(side);
    }

    /**
     * ISO/IEC 18004, table 7 (character capacities). Exactly so many characters fit the version at that level, one more
     * does not.
     */
    @ParameterizedTest
    @CsvSource({
        // bytes, version 3
        "a, 3, L, 53",
        "a, 3, M, 42",
        "a, 3, Q, 32",
        "a, 3, H, 24",
        // letters and digits, versions 1 and 4
        "A, 1, L, 25",
        "A, 1, M, 20",
        "A, 1, Q, 16",
        "A, 1, H, 10",
        "A, 4, L, 114",
        "A, 4, M, 90",
        "A, 4, Q, 67",
        "A, 4, H, 50",
        // 42 bytes fit 3-M, 43 need 4-M
        "a, 4, M, 62",
        // published example of the symbology's owner: 50 letters and digits at M are version 3 (capacity 61)
        "A, 3, M, 61",
    })
    void capacity(String letter, int version, Level level, int characters) {
        assertThat(QrCode.of(letter.repeat(characters), level).version()).isEqualTo(version);
        assertThat(QrCode.of(letter.repeat(characters + 1), level).version()).isEqualTo(version + 1);
    }

    /** ISO/IEC 18004, table 7: the largest symbol, 40-L. */
    @ParameterizedTest
    @CsvSource({"a, 2953", "A, 4296", "7, 7089"})
    void theLargestSymbolIsTheLimit(String letter, int characters) {
        assertThat(QrCode.of(letter.repeat(characters), Level.L).version()).isEqualTo(40);
        assertThatExceptionOfType(RenderException.class)
                .isThrownBy(() -> QrCode.of(letter.repeat(characters + 1), Level.L))
                .satisfies(e -> assertThat(e.diagnostics().get(0).rule()).isEqualTo("render.qr-too-long"));
    }

    /** ISO/IEC 18004, table 7: a link of 43 characters, in capitals and in small letters. */
    @ParameterizedTest
    @CsvSource({"L, 2, 3", "M, 3, 4", "Q, 3, 4", "H, 4, 5"})
    void capitalsNeedLessRoom(Level level, int capitals, int small) {
        String link = LINK.substring(0, 43);
        assertThat(QrCode.of(link, level).version()).isEqualTo(capitals);
        assertThat(QrCode.of(small(link), level).version()).isEqualTo(small);
    }

    /**
     * ISO/IEC 18004, 7.4 and table 7: capitals, a number sign and 27 capitals, as the link of a sealed record has them. Up to
     * version 9 a stretch of capitals takes 4 + 9 bits and 11 for each pair, 6 for one alone; of one byte 4 + 8 + 8. So 51
     * capitals before it make 294 + 20 + 162 = 476 of the 480 bits of version 6 at H, 52 make 481. All as bytes it would be
     * version 8.
     */
    @ParameterizedTest
    @CsvSource({"51, 6", "52, 7"})
    void capitalsAroundANumberSignStayPacked(int before, int version) {
        String link = "A".repeat(before) + "#" + "B".repeat(27);
        assertThat(QrCode.of(link, Level.H).version()).isEqualTo(version);
        assertThat(QrCode.of("a".repeat(link.length()), Level.H).version()).isEqualTo(8);
    }

    /** ISO/IEC 18004, table 7: 11 letters fit version 1 up to level Q (16), not at H (10). */
    @Test
    void raisesTheLevelAsFarAsTheSizeAllows() {
        assertThat(QrCode.of("HELLO WORLD", Level.L))
                .extracting(QrCode::version, QrCode::level)
                .containsExactly(1, Level.Q);
        assertThat(QrCode.of("HELLO WORLD", Level.H))
                .extracting(QrCode::version, QrCode::level)
                .containsExactly(2, Level.H);
        assertThat(QrCode.of("HELLO").level()).isEqualTo(Level.H);
        assertThat(QrCode.of(LINK).level()).isEqualTo(Level.Q);
    }

    /** ISO/IEC 18004: a quiet zone of 4 modules all round, so version 3 takes 37 modules: 18.5 mm at 0.5 mm. */
    @Test
    void svgBearsTheQuietZone() {
        QrCode code = QrCode.of("A".repeat(47), Level.Q);
        assertThat(code.sizeWithQuietZone()).isEqualTo(37);
        assertThat(code.toSvg(0.5)).contains("width=\"18.5mm\"", "viewBox=\"0 0 37 37\"", "crispEdges");
        assertThat(code.toSvg(1)).contains("width=\"37mm\"");
        // The finder pattern's top row: 7 dark modules, beginning behind the quiet zone.
        assertThat(code.toSvg(1)).contains("d=\"M4 4h7v1h-7z");
    }

    /** ISO/IEC 18004, finder pattern: dark 7, light 5, dark 3, as nested squares. */
    @Test
    void hasAFinderPatternInThreeCorners() {
        QrCode code = QrCode.of(LINK);
        int far = code.size() - 7;
        for (int[] corner : new int[][] {{0, 0}, {far, 0}, {0, far}}) {
            for (int y = 0; y < 7; y++) {
                for (int x = 0; x < 7; x++) {
                    int ring = Math.max(Math.abs(x - 3), Math.abs(y - 3));
                    assertThat(code.isDark(corner[0] + x, corner[1] + y)).isEqualTo(ring != 2);
                }
            }
        }
    }

    /**
     * Symbology owner's worked example: 50 letters and digits at M, 400 dpi, 4 dots a module: module 0.254 mm, symbol
     * 7.366 mm, with margin 9.398 mm.
     */
    @Test
    void publishedSizeExample() {
        QrCode code = QrCode.of("A".repeat(50), Level.M);
        double module = 4 * 25.4 / 400;
        assertThat(module).isCloseTo(0.254, within(0.0005));
        assertThat(code.size() * module).isCloseTo(7.366, within(0.0005));
        assertThat(code.sizeWithQuietZone() * module).isCloseTo(9.398, within(0.0005));
        assertThat(new Code(1, 2, module, code).box()).isEqualTo(new Box(1, 2, 37 * module, 37 * module));
    }

    @ParameterizedTest
    @ValueSource(ints = {150, 300})
    void printedCodesAreReadByTwoReaders(int dpi, @TempDir Path folder) throws Exception {
        List<String> texts = List.of(LINK, "https://logs.example.org/r/k3vt", "Strom 12 Ω, Höhe 3 m", SEALED);
        List<Mark> marks = List.of(
                new Code(2, 2, 0.5, QrCode.of(texts.get(0))),
                new Code(40, 2, 0.6, QrCode.of(texts.get(1))),
                new Code(75, 2, 0.5, QrCode.of(texts.get(2))),
                new Code(96, 2, 0.5, QrCode.of(texts.get(3))));
        byte[] pdf = LabelSheet.toPdf(
                        List.of(new Label("codes", 130, 40, marks)), Sheet.A4, new SheetLines("", "", "100 mm"), INFO)
                .pdf();
        BufferedImage page;
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            page = printed.image(1, dpi);
        }
        Box room = Sheet.A4.room();
        for (int i = 0; i < marks.size(); i++) {
            Box box = marks.get(i).box();
            Box onPage = new Box(room.x() + box.x(), room.y() + box.y(), box.width(), box.height());
            assertThat(readByZxing(page, onPage, dpi)).isEqualTo(texts.get(i));
        }
        assertThat(readByZbar(page, folder)).containsExactlyInAnyOrderElementsOf(texts);
    }

    @Test
    void svgIsReadFromAPage(@TempDir Path folder) throws Exception {
        String page = "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title></head><body>%s</body></html>"
                .formatted(QrCode.of(LINK).toSvg(0.8));
        byte[] pdf = new Handbook().toPdf(page, INFO, Resources.none());
        try (PrintedPdf printed = new PrintedPdf(pdf)) {
            assertThat(readByZbar(printed.image(1, 200), folder)).containsExactly(LINK);
            assertThat(printed.rasters()).isZero();
        }
    }

    private static String readByZxing(BufferedImage page, Box box, int dpi) throws ReaderException {
        double pixels = dpi / 25.4;
        BufferedImage part =
                page.getSubimage((int) (box.x() * pixels), (int) (box.y() * pixels), (int) (box.width() * pixels), (int)
                        (box.height() * pixels));
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(part)));
        return new QRCodeReader().decode(bitmap).getText();
    }

    /** A reader whose authors are not the encoder's. */
    private static List<String> readByZbar(BufferedImage page, Path folder) throws IOException, InterruptedException {
        File picture = folder.resolve("page.png").toFile();
        ImageIO.write(page, "png", picture);
        Path read = folder.resolve("read.txt");
        Process zbar;
        try {
            zbar = new ProcessBuilder("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture.getPath())
                    .redirectOutput(read.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw new AssertionError("this test needs the program zbarimg: install zbar-tools (Debian) or zbar", e);
        }
        assertThat(zbar.waitFor()).as("zbarimg found a code").isZero();
        return Files.readAllLines(read, StandardCharsets.UTF_8);
    }

    private static String small(String link) {
        return link.toLowerCase(Locale.ROOT);
    }
}
