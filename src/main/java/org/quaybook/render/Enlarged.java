package org.quaybook.render;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PRStream;
import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfStamper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A document that {@link Handbook} made, on larger paper of the same shape: every page printed larger, with what it links to,
 * its tags and its attachments. Nothing is laid out anew, so that each page has the same text under the same number.
 */
public final class Enlarged {

    /** ISO 32000-1, 7.7.3.3. */
    private static final List<PdfName> BOXES =
            List.of(PdfName.MEDIABOX, PdfName.CROPBOX, PdfName.BLEEDBOX, PdfName.TRIMBOX, PdfName.ARTBOX);

    /** ISO 32000-1, 12.3.2.2: destinations with lengths other than the one that is written here. */
    private static final Set<PdfName> OTHER_DESTINATIONS =
            Set.of(PdfName.FITH, PdfName.FITV, PdfName.FITR, PdfName.FITBH, PdfName.FITBV);

    private static final PdfName PATTERN_TYPE = new PdfName("PatternType");
    private static final PdfName LAYOUT = new PdfName("Layout");

    private final PdfReader from;
    private final float across;
    private final float up;

    private Enlarged(PdfReader from, float across, float up) {
        this.from = from;
        this.across = across;
        this.up = up;
    }

    /**
     * Makes it.
     *
     * @param small the document
     * @param page what it was laid out on
     * @param larger what it is to be printed on, of the same shape
     * @param info what the document says about itself
     * @throws IllegalArgumentException if the pages differ in shape
     */
    public static byte[] toPdf(byte[] small, PageFormat page, PageFormat larger, DocumentInfo info) {
        if (!larger.enlarges(page)) {
            throw new IllegalArgumentException(larger.name() + " is no larger " + page.name());
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream(small.length);
        try (PdfReader reader = new PdfReader(small)) {
            // ISO paper is rounded to whole millimetres: a few thousandths between the two factors leave no white edge.
            Enlarged enlarged = new Enlarged(
                    reader, (float) (larger.width() / page.width()), (float) (larger.height() / page.height()));
            enlarged.enlarge();
            PdfStamper stamper = new PdfStamper(reader, out);
            stamper.setFullCompression();
            stamper.setEnforcedModificationDate(PdfIdentity.calendar(info));
            stamper.setOverrideFileId(PdfIdentity.id(List.of(
                    PdfIdentity.digest(small),
                    PdfIdentity.digest(larger.toString().getBytes(StandardCharsets.UTF_8)))));
            stamper.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (DocumentException e) {
            throw new IllegalStateException(e);
        }
        return out.toByteArray();
    }

    private void enlarge() {
        PdfIndirectReference before = stream("q " + across + " 0 0 " + up + " 0 0 cm\n");
        PdfIndirectReference after = stream("\nQ");
        for (int number = 1; number <= from.getNumberOfPages(); number++) {
            PdfDictionary page = from.getPageN(number);
            PdfArray contents = new PdfArray(before);
            contents.add(page.get(PdfName.CONTENTS));
            contents.add(after);
            page.put(PdfName.CONTENTS, contents);
            BOXES.forEach(box -> rectangle(page.getAsArray(box)));
        }
        for (int number = 1; number < from.getXrefSize(); number++) {
            PdfObject object = from.getPdfObject(number);
            if (object != null) {
                visit(object);
            }
        }
    }

    /** An object with all that stands in itself; what it refers to is an object of its own. */
    private void visit(PdfObject object) {
        if (object instanceof PdfDictionary dictionary) {
            if (dictionary.contains(PATTERN_TYPE)) {
                throw new IllegalStateException("a pattern keeps its size on a larger page");
            }
            if (PdfName.LINK.equals(dictionary.get(PdfName.SUBTYPE))) {
                rectangle(dictionary.getAsArray(PdfName.RECT));
            } else if (LAYOUT.equals(dictionary.get(PdfName.O))) {
                rectangle(dictionary.getAsArray(PdfName.BBOX));
            }
            dictionary.getKeys().forEach(key -> visit(dictionary.get(key)));
        } else if (object instanceof PdfArray array) {
            PdfObject kind = array.size() > 1 ? array.getPdfObject(1) : null;
            if (PdfName.XYZ.equals(kind)) {
                enlarge(array, 2, across);
                enlarge(array, 3, up);
            } else if (kind instanceof PdfName name && OTHER_DESTINATIONS.contains(name)) {
                throw new IllegalStateException("a destination " + name + " keeps its place on a larger page");
            } else {
                array.getElements().forEach(this::visit);
            }
        }
    }

    private void rectangle(@Nullable PdfArray corners) {
        if (corners != null) {
            enlarge(corners, 0, across);
            enlarge(corners, 1, up);
            enlarge(corners, 2, across);
            enlarge(corners, 3, up);
        }
    }

    private static void enlarge(PdfArray array, int place, float factor) {
        if (array.getPdfObject(place) instanceof PdfNumber number) {
            array.set(place, new PdfNumber(number.floatValue() * factor));
        }
    }

    private PdfIndirectReference stream(String operators) {
        return from.addPdfObject(new PRStream(from, operators.getBytes(StandardCharsets.US_ASCII)));
    }
}
