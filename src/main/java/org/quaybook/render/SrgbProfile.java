package org.quaybook.render;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A colour profile for sRGB, made here because that of the Java platform differs from version to version.
 *
 * <p>Layout: ICC.1:2001-04 (version 2.4), sections 6.1 to 6.5. Transfer curve and primaries: IEC 61966-2-1; the
 * primaries are adapted to the D50 white of the profile connection space as ICC profiles for sRGB state them. All from
 * memory; the tests compare the colours with those of the platform's own profile.
 */
final class SrgbProfile {

    private static final int HEADER = 128;
    private static final int TAG_ENTRY = 12;
    private static final int CURVE_POINTS = 1024;
    private static final double FULL = 65535;
    private static final double FIXED = 65536;

    private static final double[] WHITE = {0.9642, 1.0, 0.8249};
    private static final double[] RED = {0.4360747, 0.2225045, 0.0139322};
    private static final double[] GREEN = {0.3850649, 0.7168786, 0.0971045};
    private static final double[] BLUE = {0.1430804, 0.0606169, 0.7141733};

    private SrgbProfile() {}

    /** The profile as the bytes of a file. */
    static byte[] bytes() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", description());
        tags.put("cprt", text("No copyright, use freely"));
        tags.put("wtpt", colour(WHITE));
        tags.put("rXYZ", colour(RED));
        tags.put("gXYZ", colour(GREEN));
        tags.put("bXYZ", colour(BLUE));
        byte[] curve = curve();
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return file(tags);
    }

    private static byte[] file(Map<String, byte[]> tags) {
        int start = HEADER + 4 + TAG_ENTRY * tags.size();
        IdentityHashMap<byte[], Integer> places = new IdentityHashMap<>();
        int end = start;
        for (byte[] content : tags.values()) {
            if (places.putIfAbsent(content, end) == null) {
                end += content.length;
            }
        }
        int size = end;
        return written(out -> {
            header(out, size);
            out.writeInt(tags.size());
            for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
                out.writeBytes(tag.getKey());
                out.writeInt(places.getOrDefault(tag.getValue(), 0));
                out.writeInt(tag.getValue().length);
            }
            int at = start;
            for (byte[] content : tags.values()) {
                if (places.getOrDefault(content, 0) == at) {
                    out.write(content);
                    at += content.length;
                }
            }
        });
    }

    private static void header(DataOutputStream out, int size) throws IOException {
        out.writeInt(size);
        out.writeInt(0);
        out.writeInt(0x02400000);
        out.writeBytes("mntrRGB XYZ ");
        // A fixed day: the profile never changes.
        for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
            out.writeShort(part);
        }
        out.writeBytes("acsp");
        out.write(new byte[28]);
        xyz(out, WHITE);
        out.write(new byte[HEADER - 80]);
    }

    private static byte[] description() {
        byte[] ascii = "sRGB IEC61966-2-1".getBytes(StandardCharsets.US_ASCII);
        return written(out -> {
            out.writeBytes("desc");
            out.writeInt(0);
            out.writeInt(ascii.length + 1);
            out.write(ascii);
            out.writeByte(0);
            // No Unicode and no Macintosh description: language, count; script, length, 67 bytes.
            out.write(new byte[8 + 3 + 67]);
        });
    }

    private static byte[] text(String text) {
        return written(out -> {
            out.writeBytes("text");
            out.writeInt(0);
            out.writeBytes(text);
            out.writeByte(0);
        });
    }

    private static byte[] colour(double[] xyz) {
        return written(out -> {
            out.writeBytes("XYZ ");
            out.writeInt(0);
            xyz(out, xyz);
        });
    }

    private static byte[] curve() {
        return written(out -> {
            out.writeBytes("curv");
            out.writeInt(0);
            out.writeInt(CURVE_POINTS);
            for (int i = 0; i < CURVE_POINTS; i++) {
                out.writeShort((int) Math.round(linear(i / (CURVE_POINTS - 1.0)) * FULL));
            }
        });
    }

    private static double linear(double share) {
        return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }

    private static void xyz(DataOutputStream out, double[] xyz) throws IOException {
        for (double part : xyz) {
            out.writeInt((int) Math.round(part * FIXED));
        }
    }

    private interface Writing {
        void to(DataOutputStream out) throws IOException;
    }

    /** What is written, filled up to a multiple of four bytes as the format asks. */
    private static byte[] written(Writing writing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            writing.to(out);
            while (bytes.size() % 4 != 0) {
                out.writeByte(0);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
