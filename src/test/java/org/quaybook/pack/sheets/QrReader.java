package org.quaybook.pack.sheets;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Reads the codes of a printed page with ZXing. */
public final class QrReader {

    private QrReader() {}

    /** What they say, in no order. */
    public static List<String> read(BufferedImage page) {
        try {
            Result[] found = new QRCodeMultiReader()
                    .decodeMultiple(
                            new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(page))),
                            Map.of(
                                    DecodeHintType.TRY_HARDER,
                                    true,
                                    DecodeHintType.POSSIBLE_FORMATS,
                                    List.of(BarcodeFormat.QR_CODE)));
            return Arrays.stream(found).map(Result::getText).toList();
        } catch (NotFoundException e) {
            return List.of();
        }
    }
}
