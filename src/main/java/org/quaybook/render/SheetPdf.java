package org.quaybook.render;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfBoolean;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes a PDF of drawn pages. Viewers are told not to scale the print. It is tagged and claims PDF/UA-1 (ISO 14289-1)
 * and PDF/A-3a (ISO 19005-3), as a {@link Handbook} does.
 */
final class SheetPdf {

    private SheetPdf() {}

    /** Draws what stands on a page. */
    @FunctionalInterface
    interface Drawing {

        /** @param page counted from 1 */
        void draw(int page, Canvas canvas);
    }

    /**
     * Writes the file.
     *
     * @param papers the size of each page, millimetres
     * @param structure what is told of the pages, in the order of reading
     * @param input all that the pages are made from
     */
    static byte[] of(List<Box> papers, DocumentInfo info, Tag structure, String input, Drawing drawing) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Document document = new Document(size(papers.get(0)))) {
            PdfWriter writer = PdfWriter.getInstance(document, out);
            writer.setPdfVersion(PdfWriter.VERSION_1_7);
            writer.setFullCompression();
            writer.setTagged();
            writer.setTabs(PdfName.S);
            PdfIdentity.describe(writer, info);
            PdfIdentity.claim(writer, info);
            writer.addViewerPreference(PdfName.PRINTSCALING, PdfName.NONE);
            writer.addViewerPreference(PdfName.PICKTRAYBYPDFSIZE, PdfBoolean.PDFTRUE);
            document.open();
            for (int page = 1; page <= papers.size(); page++) {
                Box paper = papers.get(page - 1);
                document.setPageSize(size(paper));
                document.newPage();
                drawing.draw(page, PdfCanvas.ofPage(writer, paper.height()));
            }
            Archive.nameColours(writer);
            structure.writeAsRoot(writer);
            PdfIdentity.identify(writer, List.of(PdfIdentity.digest(input.getBytes(StandardCharsets.UTF_8))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static Rectangle size(Box paper) {
        return new Rectangle((float) Millimetres.toPoints(paper.width()), (float) Millimetres.toPoints(paper.height()));
    }
}
