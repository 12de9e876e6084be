package org.quaybook.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/** What a file held at one moment, whole. */
final class Content {

    private final byte[] bytes;
    private final Instant modified;
    private final String digest;
    private byte @Nullable [] zipped;

    Content(byte[] bytes, Instant modified) {
        this.bytes = bytes;
        this.modified = modified;
        this.digest = sha256(bytes);
    }

    byte[] bytes() {
        return bytes;
    }

    /** When the file was last written. */
    Instant modified() {
        return modified;
    }

    boolean holds(byte[] other) {
        return Arrays.equals(bytes, other);
    }

    /** Strong validator of the bytes themselves (RFC 9110, 8.8.3). */
    String tag() {
        return '"' + digest + '"';
    }

    /** Strong validator of the compressed bytes: another one, for they are other bytes (RFC 9110, 8.8.3.3). */
    String zippedTag() {
        return '"' + digest + "-gzip\"";
    }

    /** In gzip format (RFC 1952). */
    synchronized byte[] zipped() {
        if (zipped == null) {
            ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length / 3 + 64);
            try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
                gzip.write(bytes);
            } catch (IOException e) {
                throw new UncheckedIOException("memory can be written", e);
            }
            zipped = out.toByteArray();
        }
        return zipped;
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
