package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.ReaderException;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;

/** Two programs that read QR codes and know nothing of each other. */
final class CodeReaders {

    private CodeReaders() {}

    /** What ZXing reads in a picture of one code. */
    static Optional<String> zxing(BufferedImage image) {
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(image)));
        try {
            return Optional.of(new QRCodeReader()
                    .decode(
                            bitmap,
                            Map.of(
                                    DecodeHintType.TRY_HARDER,
                                    true,
                                    DecodeHintType.POSSIBLE_FORMATS,
                                    List.of(BarcodeFormat.QR_CODE)))
                    .getText());
        } catch (ReaderException e) {
            return Optional.empty();
        }
    }

    /**
     * What zbar reads in a picture of one code.
     *
     * @param folder for the picture
     */
    static Optional<String> zbar(BufferedImage image, Path folder) throws IOException, InterruptedException {
        Path picture = folder.resolve("code.png");
        Path read = folder.resolve("code.txt");
        ImageIO.write(image, "png", picture.toFile());
        Process zbar;
        try {
            zbar = new ProcessBuilder("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture.toString())
                    .redirectOutput(read.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw new AssertionError("zbarimg is needed to read codes back: install the package zbar-tools", e);
        }
        assertThat(zbar.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return Optional.of(Files.readString(read, StandardCharsets.UTF_8).strip())
                .filter(text -> !text.isEmpty());
    }
}
