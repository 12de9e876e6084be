package org.quaybook.render;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfStream;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What PDF/A-3 (ISO 19005-3) wants in a file besides its pages: what its colours mean, and the files that it carries. */
final class Archive {

    private static final PdfName AF = new PdfName("AF");
    private static final PdfName AF_RELATIONSHIP = new PdfName("AFRelationship");

    private Archive() {}

    /** 6.2.3: colours are those of sRGB. While the document is open. */
    static void nameColours(PdfWriter writer) throws IOException {
        byte[] profile = SrgbProfile.bytes();
        PdfStream stream = new PdfStream(profile);
        stream.put(PdfName.N, new PdfNumber(3));
        stream.flateCompress(PdfStream.BEST_COMPRESSION);
        PdfDictionary intent = new PdfDictionary(new PdfName("OutputIntent"));
        intent.put(PdfName.S, new PdfName("GTS_PDFA1"));
        intent.put(PdfName.OUTPUTCONDITIONIDENTIFIER, new PdfString("sRGB IEC61966-2.1"));
        intent.put(PdfName.INFO, new PdfString("sRGB IEC61966-2.1"));
        intent.put(PdfName.DESTOUTPUTPROFILE, writer.addToBody(stream).getIndirectReference());
        writer.getExtraCatalog().put(PdfName.OUTPUTINTENTS, new PdfArray(intent));
    }

    /** 6.8: each file with its type, its date and what it is to the document. While the document is open. */
    static void attach(PdfWriter writer, List<Attachment> attachments, DocumentInfo info) throws IOException {
        if (attachments.isEmpty()) {
            return;
        }
        List<Attachment> sorted = new ArrayList<>(attachments);
        sorted.sort(Comparator.comparing(Attachment::name));
        PdfArray associated = new PdfArray();
        PdfArray names = new PdfArray();
        for (Attachment attachment : sorted) {
            PdfIndirectReference file = write(writer, attachment, info);
            associated.add(file);
            names.add(PdfIdentity.text(attachment.name()));
            names.add(file);
        }
        PdfDictionary tree = new PdfDictionary();
        tree.put(PdfName.NAMES, names);
        PdfDictionary all = new PdfDictionary();
        all.put(PdfName.EMBEDDEDFILES, writer.addToBody(tree).getIndirectReference());
        writer.getExtraCatalog().put(PdfName.NAMES, all);
        writer.getExtraCatalog().put(AF, associated);
    }

    private static PdfIndirectReference write(PdfWriter writer, Attachment attachment, DocumentInfo info)
            throws IOException {
        PdfDictionary about = new PdfDictionary();
        about.put(PdfName.SIZE, new PdfNumber(attachment.content().size()));
        about.put(PdfName.MODDATE, PdfIdentity.date(info));
        PdfStream stream = new PdfStream(attachment.content().deflated());
        stream.put(PdfName.TYPE, PdfName.EMBEDDEDFILE);
        stream.put(PdfName.SUBTYPE, new PdfName(attachment.mimeType()));
        stream.put(PdfName.PARAMS, about);
        stream.put(PdfName.FILTER, PdfName.FLATEDECODE);
        PdfIndirectReference file = writer.addToBody(stream).getIndirectReference();
        PdfDictionary embedded = new PdfDictionary();
        embedded.put(PdfName.F, file);
        embedded.put(PdfName.UF, file);
        PdfDictionary specification = new PdfDictionary(PdfName.FILESPEC);
        specification.put(PdfName.F, PdfIdentity.text(attachment.name()));
        specification.put(PdfName.UF, PdfIdentity.text(attachment.name()));
        specification.put(PdfName.EF, embedded);
        specification.put(PdfName.DESC, PdfIdentity.text(attachment.description()));
        specification.put(AF_RELATIONSHIP, new PdfName(attachment.relation().key()));
        return writer.addToBody(specification).getIndirectReference();
    }
}
