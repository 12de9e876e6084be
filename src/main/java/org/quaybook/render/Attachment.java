package org.quaybook.render;

import java.util.regex.Pattern;

/**
 * A file that travels inside a PDF (an associated file of PDF/A-3, ISO 19005-3, 6.8).
 *
 * @param name under which a reader saves it; no path
 * @param mimeType such as {@code application/json}
 * @param relation what the file is to the document
 * @param description for whoever looks at the list of files; in the document's language
 * @param content its bytes, taken over as they are
 */
@SuppressWarnings("ArrayRecordComponent") // Copied in and out below; attachments are not compared.
public record Attachment(String name, String mimeType, Relation relation, String description, byte[] content) {

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
        content = content.clone();
    }

    @Override
    public byte[] content() {
        return content.clone();
    }
}
