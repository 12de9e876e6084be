package org.quaybook.render;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;

/**
 * A QR code as of ISO/IEC 18004: the smallest that bears the text at the least error correction asked for, then with
 * as much error correction as that size allows.
 *
 * <p>Digits and capitals (0-9 A-Z space $ % * + - . / :) are packed tighter than other text, stretch by stretch where that
 * saves room; ASCII is written as such, anything else as UTF-8 that says so.
 */
public final class QrCode {

    /** Modules that must stay light on all sides (ISO/IEC 18004). */
    public static final int QUIET_ZONE = 4;

    /** How much of a damaged symbol can be restored (ISO/IEC 18004): about 7, 15, 25, 30 % of the codewords. */
    public enum Level {
        L(ErrorCorrectionLevel.L),
        M(ErrorCorrectionLevel.M),
        Q(ErrorCorrectionLevel.Q),
        H(ErrorCorrectionLevel.H);

        private final ErrorCorrectionLevel zxing;

        Level(ErrorCorrectionLevel zxing) {
            this.zxing = zxing;
        }
    }

    /** Labels, guides, sheets and cards of a job have the same address. */
    private static final Recent<QrCode> LATELY = new Recent<>(64);

    /** A horizontal stretch of dark modules, counted from the top left module of the symbol. */
    record Bar(int x, int y, int length) {}

    private final String text;
    private final int version;
    private final Level level;
    private final ByteMatrix modules;

    private QrCode(String text, QRCode encoded, Level level) {
        this.text = text;
        this.version = encoded.getVersion().getVersionNumber();
        this.level = level;
        this.modules = encoded.getMatrix();
    }

    /** With at least level Q: outdoors, a code gets scratched. */
    public static QrCode of(String text) {
        return of(text, Level.Q);
    }

    /**
     * @param text not empty
     * @throws RenderException if no symbol bears so much text at that level
     */
    public static QrCode of(String text, Level least) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("an empty code");
        }
        return LATELY.of(least.name() + text, unknown -> made(text, least));
    }

    private static QrCode made(String text, Level least) {
        QrCode smallest = encode(text, least)
                .orElseThrow(() -> RenderException.of(
                        Place.NOWHERE, null, RenderMessage.QR_TOO_LONG, text.length(), least.name()));
        QrCode best = smallest;
        for (Level level : Level.values()) {
            if (level.compareTo(least) > 0) {
                best = encode(text, level)
                        .filter(code -> code.version == smallest.version)
                        .orElse(best);
            }
        }
        return best;
    }

    private static Optional<QrCode> encode(String text, Level level) {
        boolean ascii = StandardCharsets.US_ASCII.newEncoder().canEncode(text);
        Map<EncodeHintType, Object> hints = ascii
                ? Map.of(EncodeHintType.QR_COMPACT, true)
                : Map.of(EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8.name());
        try {
            return Optional.of(new QrCode(text, Encoder.encode(text, level.zxing, hints), level));
        } catch (WriterException e) {
            return Optional.empty();
        }
    }

    /** What it says. */
    public String text() {
        return text;
    }

    /** 1 to 40. */
    public int version() {
        return version;
    }

    /** The error correction reached. */
    public Level level() {
        return level;
    }

    /** Modules along one side, without the quiet zone: 17 + 4 x version. */
    public int size() {
        return modules.getWidth();
    }

    /** Modules along one side, with the quiet zone. */
    public int sizeWithQuietZone() {
        return size() + 2 * QUIET_ZONE;
    }

    /**
     * @param x column from the left, from 0, without the quiet zone
     * @param y row from the top, from 0
     */
    public boolean isDark(int x, int y) {
        return modules.get(x, y) == 1;
    }

    /** Version and level follow from the text and the least level, the modules from all of these. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof QrCode code && text.equals(code.text) && version == code.version && level == code.level;
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /** The text and how it is written. */
    @Override
    public String toString() {
        return "QrCode[" + version + "-" + level + " " + text + "]";
    }

    /** The dark modules of each row, joined as far as they touch, so that no hairline shows between them. */
    List<Bar> bars() {
        List<Bar> bars = new ArrayList<>();
        for (int y = 0; y < size(); y++) {
            int x = 0;
            while (x < size()) {
                int start = x;
                while (x < size() && isDark(x, y)) {
                    x++;
                }
                if (x > start) {
                    bars.add(new Bar(start, y, x - start));
                } else {
                    x++;
                }
            }
        }
        return bars;
    }

    /**
     * As an SVG element for a web page, quiet zone included. It has no name of its own for readers who cannot see it:
     * the page must give one.
     *
     * @param moduleMillimetres the side of one module in millimetres
     */
    public String toSvg(double moduleMillimetres) {
        int side = sizeWithQuietZone();
        StringBuilder path = new StringBuilder();
        for (Bar bar : bars()) {
            path.append('M').append(bar.x() + QUIET_ZONE).append(' ').append(bar.y() + QUIET_ZONE);
            path.append('h')
                    .append(bar.length())
                    .append("v1h-")
                    .append(bar.length())
                    .append('z');
        }
        return String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" width="%1$smm" height="%1$smm" viewBox="0 0 %2$d %2$d" \
                shape-rendering="crispEdges"><path fill="#ffffff" d="M0 0h%2$dv%2$dh-%2$dz"/>\
                <path fill="#000000" d="%3$s"/></svg>""", Millimetres.plain(side * moduleMillimetres), side, path);
    }
}
