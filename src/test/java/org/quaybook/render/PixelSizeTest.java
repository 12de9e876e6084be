package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.diag.Diagnostic;

/** Pictures are written by the platform's own ImageIO, or byte by byte as the PNG standard says. */
class PixelSizeTest {

    @ParameterizedTest
    @CsvSource({"png, 3, 7", "png, 4000, 5000", "jpg, 3, 7", "jpg, 4000, 5000"})
    void isWhatTheFileSays(String format, int width, int height) throws IOException {
        assertThat(PixelSize.of(written(format, width, height))).contains(new PixelSize(width, height));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bmp", "gif", "tif", "wbmp"})
    void ofOtherFormatsIsNotRead(String format) throws IOException {
        assertThat(PixelSize.of(written(format, 3, 7))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg"})
    void ofATornFileIsTheSameOrNone(String format) throws IOException {
        byte[] whole = written(format, 30, 70);
        for (int length = 0; length < whole.length; length++) {
            assertThat(PixelSize.of(Arrays.copyOf(whole, length)))
                    .as("%d bytes", length)
                    .satisfiesAnyOf(
                            it -> assertThat(it).isEmpty(), it -> assertThat(it).contains(new PixelSize(30, 70)));
        }
    }

    @Test
    void moreThanTheMostIsTooLarge() {
        assertThat(new PixelSize(5_000, 4_000).isTooLarge()).isFalse();
        assertThat(new PixelSize(5_001, 4_000).isTooLarge()).isTrue();
        assertThat(new PixelSize(Integer.MAX_VALUE, Integer.MAX_VALUE).isTooLarge())
                .isTrue();
    }

    /** 144 million pixels in half a megabyte: unpacking them would take more than half a gigabyte. */
    @Test
    void aBombIsRefusedBeforeItIsUnpacked() throws IOException {
        byte[] bomb = png(12_000, 12_000, 12_000);
        assertThat(bomb).hasSizeLessThan(1 << 20);
        assertThat(rulesOf("logo.png", bomb)).containsExactly("render.picture-too-large");
    }

    @Test
    void aFileThatSaysItIsSmallerThanItsContentPrints() throws IOException {
        assertThat(rulesOf("logo.png", png(10, 10, 12_000))).isEmpty();
    }

    /** What a name ends in says nothing: other decoders are not let at it. */
    @ParameterizedTest
    @ValueSource(strings = {"bmp", "gif", "tif"})
    void anotherFormatUnderThatNameIsRefused(String format) throws IOException {
        assertThat(rulesOf("logo.png", written(format, 3, 7))).containsExactly("render.picture-unreadable");
    }

    private static List<String> rulesOf(String name, byte[] picture) {
        String page = "<html xmlns='http://www.w3.org/1999/xhtml'><head><title>t</title></head>"
                + "<body><img alt='mark' src='" + name + "'/></body></html>";
        DocumentInfo info = new DocumentInfo("t", "A. Fitter", "s", "en-GB", LocalDate.of(2026, 3, 1));
        try {
            new Handbook().toPdf(page, info, Resources.none().with(name, picture));
            return List.of();
        } catch (RenderException refused) {
            return refused.diagnostics().stream().map(Diagnostic::rule).toList();
        }
    }

    private static byte[] written(String format, int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int type = format.equals("wbmp") ? BufferedImage.TYPE_BYTE_BINARY : BufferedImage.TYPE_INT_RGB;
        assertThat(ImageIO.write(new BufferedImage(width, height, type), format, out))
                .isTrue();
        return out.toByteArray();
    }

    /** Black and transparent, 8 bits a channel; W3C, Portable Network Graphics, 5.3 and 11.2. */
    private static byte[] png(int width, int height, int rows) throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream fields = new DataOutputStream(head);
        fields.writeInt(width);
        fields.writeInt(height);
        fields.write(new byte[] {8, 6, 0, 0, 0});
        chunk(file, "IHDR", head.toByteArray());
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        try (DeflaterOutputStream packed = new DeflaterOutputStream(data)) {
            for (int row = 0; row < rows; row++) {
                packed.write(new byte[1 + 4 * width]);
            }
        }
        chunk(file, "IDAT", data.toByteArray());
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] data) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.write(type.getBytes(StandardCharsets.US_ASCII));
        body.write(data);
        CRC32 check = new CRC32();
        check.update(body.toByteArray());
        DataOutputStream out = new DataOutputStream(file);
        out.writeInt(data.length);
        out.write(body.toByteArray());
        out.writeInt((int) check.getValue());
    }
}
