package org.quaybook.render;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An element of the logical structure of a PDF (ISO 32000-1, 14.7 and 14.8): a heading, a paragraph, a table. Its parts
 * stand in the order in which they are read, whatever the order in which they are painted.
 */
final class Tag implements TagPart {

    /** Kept when nothing is printed in them: without them the rows of a table would differ in length. */
    private static final Set<String> TABLE_PARTS = Set.of("THead", "TBody", "TFoot", "TR", "TH", "TD");

    private static final Set<String> INLINE = Set.of("Link", "Span", "Figure");

    private final String type;
    private final List<TagPart> parts;
    private final PdfDictionary entries = new PdfDictionary();
    private @Nullable PdfStructureElement element;

    /** @param type a standard structure type: P, H1, Table */
    Tag(String type, List<? extends TagPart> parts) {
        this.type = type;
        this.parts = List.copyOf(parts);
        for (TagPart part : parts) {
            if (part instanceof TagSlot slot) {
                slot.belongTo(this);
            }
        }
    }

    /** The same tag with one more entry of its dictionary. */
    Tag with(String name, PdfObject value) {
        entries.put(new PdfName(name), value);
        return this;
    }

    boolean isInline() {
        return INLINE.contains(type);
    }

    PdfStructureElement element(PdfWriter writer) {
        PdfStructureElement made = element;
        if (made == null) {
            made = new PdfStructureElement(writer.getStructureTreeRoot(), new PdfName(type));
            element = made;
        }
        return made;
    }

    /** Writes this tag and all that has content below it as the one root of the structure. */
    void writeAsRoot(PdfWriter writer) throws IOException {
        write(writer, writer.getStructureTreeRoot().getReference());
        writer.getStructureTreeRoot()
                .put(PdfName.K, new PdfArray(element(writer).getReference()));
    }

    private void write(PdfWriter writer, PdfIndirectReference parent) throws IOException {
        PdfStructureElement self = element(writer);
        PdfArray kids = new PdfArray();
        for (TagPart part : parts) {
            if (part instanceof TagSlot slot) {
                slot.contents().forEach(kids::add);
            } else if (part instanceof Tag tag && tag.isKept()) {
                tag.write(writer, self.getReference());
                kids.add(tag.element(writer).getReference());
            }
        }
        self.putAll(entries);
        self.put(PdfName.P, parent);
        self.put(PdfName.K, kids);
        self.remove(PdfName.PG);
        writer.addToBody(self, self.getReference());
    }

    private boolean isKept() {
        return TABLE_PARTS.contains(type) || !isEmpty();
    }

    @Override
    public boolean isEmpty() {
        return parts.stream().allMatch(TagPart::isEmpty);
    }
}
