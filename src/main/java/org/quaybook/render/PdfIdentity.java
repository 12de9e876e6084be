package org.quaybook.render;

import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfLiteral;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.HexFormat;

/** Puts into a PDF what identifies it, from the input alone, so that the same input gives the same bytes. */
final class PdfIdentity {

    /** ISO 32000-1, 14.4: both parts of a file identifier are 16 bytes by custom; 32 hexadecimal digits. */
    private static final int ID_DIGITS = 32;

    private PdfIdentity() {}

    /** Before the document is opened. */
    static void describe(PdfWriter writer, DocumentInfo info) {
        PdfDictionary about = writer.getInfo();
        about.put(PdfName.TITLE, text(info.title()));
        about.put(PdfName.AUTHOR, text(info.author()));
        about.put(PdfName.SUBJECT, text(info.subject()));
        PdfDate date = date(info);
        about.put(PdfName.CREATIONDATE, date);
        about.put(PdfName.MODDATE, date);
        writer.getExtraCatalog().put(PdfName.LANG, text(info.language()));
        writer.addViewerPreference(PdfName.DISPLAYDOCTITLE, PdfBoolean.PDFTRUE);
    }

    /** Before the document is opened, after {@link #describe}: the same once more as XMP, and what the file conforms to. */
    static void claim(PdfWriter writer, DocumentInfo info) {
        String producer = ((PdfString) writer.getInfo().get(PdfName.PRODUCER)).toUnicodeString();
        writer.setXmpMetadata(Xmp.packet(info, producer).getBytes(StandardCharsets.UTF_8));
    }

    static PdfDate date(DocumentInfo info) {
        return new PdfDate(calendar(info));
    }

    static GregorianCalendar calendar(DocumentInfo info) {
        return GregorianCalendar.from(info.date().atStartOfDay(ZoneOffset.UTC));
    }

    /** Before the document is closed; the digests are those of all that the document was made from. */
    static void identify(PdfWriter writer, Iterable<byte[]> digests) {
        writer.getInfo().put(PdfName.FILEID, id(digests));
    }

    /** The identifier of a file that was made from what has these digests. */
    static PdfLiteral id(Iterable<byte[]> digests) {
        MessageDigest digest = sha256();
        digests.forEach(digest::update);
        String digits = HexFormat.of().formatHex(digest.digest()).substring(0, ID_DIGITS);
        return new PdfLiteral("[<" + digits + "><" + digits + ">]");
    }

    /** SHA-256 of a part of the input. */
    static byte[] digest(byte[] part) {
        return sha256().digest(part);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    static PdfString text(String text) {
        return new PdfString(text, PdfObject.TEXT_UNICODE);
    }
}
