package org.quaybook.render;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The place of one text, one picture or one mark of a list in the structure; filled while pages are painted. */
final class TagSlot implements TagPart {

    private static final PdfName OBJR = new PdfName("OBJR");
    private static final PdfName MCR = new PdfName("MCR");

    /** References to what was painted here: stretches of pages and annotations, each with its page. */
    private final List<PdfDictionary> contents = new ArrayList<>();

    private @Nullable Tag owner;

    void belongTo(Tag tag) {
        owner = tag;
    }

    List<PdfDictionary> contents() {
        return List.copyOf(contents);
    }

    @Override
    public boolean isEmpty() {
        return contents.isEmpty();
    }

    boolean isOnOtherPage(PdfIndirectReference page) {
        return contents.stream()
                .anyMatch(content ->
                        !page.toString().equals(content.get(PdfName.PG).toString()));
    }

    /** What is painted from here to the end of the marked sequence belongs here. */
    void begin(PdfWriter writer, PdfContentByte page, PdfDictionary properties) {
        PdfStructureElement marked = owner().element(writer);
        // The library can give an element one stretch of content or children; we keep count ourselves.
        marked.remove(PdfName.K);
        page.beginMarkedContentSequence(marked, properties);
        add(MCR, PdfName.MCID, properties.get(PdfName.MCID), writer);
    }

    /** Takes in an annotation of the current page; gives the key by which that finds its tag. */
    int annotate(PdfWriter writer, PdfIndirectReference annotation) {
        add(OBJR, PdfName.OBJ, annotation, writer);
        return writer.getStructureTreeRoot()
                .addExistingObject(owner().element(writer).getReference());
    }

    private void add(PdfName type, PdfName key, PdfObject value, PdfWriter writer) {
        PdfDictionary content = new PdfDictionary(type);
        content.put(PdfName.PG, writer.getCurrentPage());
        content.put(key, value);
        contents.add(content);
    }

    private Tag owner() {
        if (owner == null) {
            throw new IllegalStateException("outside the structure");
        }
        return owner;
    }
}
