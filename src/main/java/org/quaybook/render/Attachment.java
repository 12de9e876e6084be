package org.quaybook.render;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * A file that travels inside a PDF (an associated file of PDF/A-3, ISO 19005-3, 6.8).
 *
 * @param name under which a reader saves it; no path
 * @param mimeType such as {@code application/json}
 * @param relation what the file is to the document
 * @param description for whoever looks at the list of files; in the document's language
 * @param content what is in it; one may travel in several documents
 */
public record Attachment(String name, String mimeType, Relation relation, String description, Content content) {

    private static final Pattern NAME = Pattern.compile("[^/\\\\:*?\"<>|\\p{Cntrl}]+");
    private static final Pattern MIME_TYPE = Pattern.compile("[a-z]+/[a-z0-9.+-]+");

    /** ISO 32000-2, table 43, as PDF/A-3 takes it over. */
    public enum Relation {
        /** What the document was made from. */
        SOURCE("Source"),
        /** What the document shows, as data. */
        DATA("Data"),
        /** The same content in another form. */
        ALTERNATIVE("Alternative"),
        /** Something that goes beside it. */
        SUPPLEMENT("Supplement");

        private final String key;

        Relation(String key) {
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    public Attachment {
        if (!NAME.matcher(name).matches() || !MIME_TYPE.matcher(mimeType).matches()) {
            throw new IllegalArgumentException("no attachment: " + name + ", " + mimeType);
        }
    }

    /** The bytes of a file, compressed and digested once for all documents that carry it; for several threads. */
    public static final class Content {

        private final byte[] bytes;
        private final Lazy<byte[]> digest = new Lazy<>(this::digested);
        private final Lazy<byte[]> deflated = new Lazy<>(this::compressed);

        /** @param bytes taken over as they are */
        public Content(byte[] bytes) {
            this.bytes = bytes.clone();
        }

        int size() {
            return bytes.length;
        }

        /** SHA-256. */
        byte[] digest() {
            return digest.get();
        }

        /** In the format of RFC 1950, as PDF's filter {@code FlateDecode} reads it. */
        byte[] deflated() {
            return deflated.get();
        }

        private byte[] digested() {
            return PdfIdentity.digest(bytes);
        }

        private byte[] compressed() {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Deflater best = new Deflater(Deflater.BEST_COMPRESSION);
            try (DeflaterOutputStream zip = new DeflaterOutputStream(out, best)) {
                zip.write(bytes);
            } catch (IOException e) {
                throw new UncheckedIOException("memory cannot fail to be written", e);
            } finally {
                best.end();
            }
            return out.toByteArray();
        }
    }
}
