package org.quaybook.render;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Optional;

/**
 * The size that a picture made of pixels says it has, read before anything of it is unpacked: a file of some kilobytes can
 * unpack to more than any machine has room for.
 *
 * @param width pixels, at least 1
 * @param height pixels, at least 1
 */
record PixelSize(int width, int height) {

    /** A whole A4 page at 450 dots per inch; unpacked, that is 80 MB with transparency. Common practice, no source. */
    static final int MOST_PIXELS = 20_000_000;

    /** PNG (W3C, Portable Network Graphics), 5.2: signature; 11.2.1: IHDR is the first chunk, its data 13 bytes. */
    private static final byte[] PNG_START = {
        (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R'
    };

    private static final int PNG_HEAD_BYTES = PNG_START.length + 8;

    /** JPEG (ITU-T T.81), table B.1: the second byte of markers, the first being FF. */
    private static final int SOI = 0xD8;

    private static final int SOF_0 = 0xC0;
    private static final int SOF_15 = 0xCF;
    private static final int DHT = 0xC4;
    private static final int JPG = 0xC8;
    private static final int DAC = 0xCC;
    private static final int SOS = 0xDA;

    /** The size of a PNG or JPEG file; empty for any other file and for one that tells no size. */
    static Optional<PixelSize> of(byte[] file) {
        boolean png = file.length >= PNG_HEAD_BYTES
                && Arrays.equals(file, 0, PNG_START.length, PNG_START, 0, PNG_START.length);
        ByteBuffer bytes = ByteBuffer.wrap(file);
        return png ? of(bytes.getInt(PNG_START.length), bytes.getInt(PNG_START.length + 4)) : ofJpeg(bytes);
    }

    /** Unsigned numbers beyond Java's come out negative, and no format allows 0 here or there. */
    private static Optional<PixelSize> of(int width, int height) {
        return width > 0 && height > 0 ? Optional.of(new PixelSize(width, height)) : Optional.empty();
    }

    /** Goes from segment to segment (T.81, B.1.1.4) to the frame header (B.2.2). */
    private static Optional<PixelSize> ofJpeg(ByteBuffer bytes) {
        if (bytes.limit() < 2 || bytes.get(0) != (byte) 0xFF || (bytes.get(1) & 0xFF) != SOI) {
            return Optional.empty();
        }
        int at = 2;
        while (at + 9 <= bytes.limit() && bytes.get(at) == (byte) 0xFF) {
            int marker = bytes.get(at + 1) & 0xFF;
            if (marker == 0xFF) {
                at++;
            } else if (marker == SOS) {
                return Optional.empty();
            } else if (marker >= SOF_0 && marker <= SOF_15 && marker != DHT && marker != JPG && marker != DAC) {
                return of(bytes.getShort(at + 7) & 0xFFFF, bytes.getShort(at + 5) & 0xFFFF);
            } else {
                at += 2 + (bytes.getShort(at + 2) & 0xFFFF);
            }
        }
        return Optional.empty();
    }

    boolean isTooLarge() {
        return (long) width * height > MOST_PIXELS;
    }
}
