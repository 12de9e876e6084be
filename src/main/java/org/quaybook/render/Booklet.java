package org.quaybook.render;

import com.lowagie.text.Document;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfImportedPage;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts the pages of a small document side by side on sheets that are printed on both sides, turned on the short edge,
 * folded in the middle and stapled. For the printer only: links, bookmarks and tags stay in the document itself. Paper is
 * taken to have no thickness.
 */
public final class Booklet {

    private static final int PAGES_A_SHEET = 4;
    private static final float LINE_SIZE = 7;
    private static final double LINE_FROM_FOLD = 4;
    private static final Color LINE_COLOUR = new Color(0x55, 0x55, 0x55);
    private static final PdfName DUPLEX = new PdfName("Duplex");
    private static final PdfName SHORT_EDGE = new PdfName("DuplexFlipShortEdge");

    private Booklet() {}

    /**
     * One side of a sheet.
     *
     * @param left number of the page on the left, from 1
     * @param right number of the page on the right
     */
    public record Side(int left, int right) {}

    /** How many pages a document lacks to fill whole sheets. */
    public static int missing(int pages) {
        return Math.floorMod(-pages, PAGES_A_SHEET);
    }

    /**
     * Pages of a PDF that a booklet takes, one after another to the last.
     *
     * @param skipped how many at its beginning are not taken
     */
    @SuppressWarnings("ArrayRecordComponent") // Made, handed over and never changed.
    public record Part(byte[] pdf, int skipped) {}

    /**
     * Which pages lie side by side, in the order in which the sides are printed.
     *
     * @param pages a multiple of four
     */
    public static List<Side> sides(int pages) {
        if (pages <= 0 || missing(pages) != 0) {
            throw new IllegalArgumentException("no booklet of " + pages + " pages");
        }
        List<Side> sides = new ArrayList<>();
        for (int side = 0; side < pages / 2; side++) {
            int low = side + 1;
            int high = pages - side;
            sides.add(side % 2 == 0 ? new Side(high, low) : new Side(low, high));
        }
        return sides;
    }

    /**
     * Lays out the sheets.
     *
     * @param parts together a multiple of four pages, all of the format
     * @param page its format
     * @param width of the sheet, millimetres, at least two pages
     * @param height of the sheet, millimetres
     * @param line how to print, fold and staple; stands small along the fold of the first side
     */
    public static byte[] toPdf(
            List<Part> parts, PageFormat page, double width, double height, String line, DocumentInfo info) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        float wide = (float) Millimetres.toPoints(width);
        float high = (float) Millimetres.toPoints(height);
        float pageWide = (float) Millimetres.toPoints(page.width());
        float foot = (high - (float) Millimetres.toPoints(page.height())) / 2;
        try (Document document = new Document(new Rectangle(wide, high))) {
            List<Leaf> leaves = leaves(parts);
            PdfWriter writer = PdfWriter.getInstance(document, out);
            writer.setPdfVersion(PdfWriter.VERSION_1_7);
            writer.setFullCompression();
            PdfIdentity.describe(writer, info);
            writer.addViewerPreference(PdfName.PRINTSCALING, PdfName.NONE);
            writer.addViewerPreference(DUPLEX, SHORT_EDGE);
            document.open();
            for (Side side : sides(leaves.size())) {
                document.newPage();
                PdfContentByte content = writer.getDirectContent();
                content.addTemplate(leaves.get(side.left() - 1).in(writer), wide / 2 - pageWide, foot);
                content.addTemplate(leaves.get(side.right() - 1).in(writer), wide / 2, foot);
                if (side.right() == 1) {
                    tell(content, line, wide / 2 - (float) Millimetres.toPoints(LINE_FROM_FOLD), high / 2);
                }
            }
            // By itself the writer takes the readers in an order that differs from run to run.
            for (PdfReader reader : leaves.stream().map(Leaf::from).distinct().toList()) {
                writer.freeReader(reader);
            }
            List<byte[]> digests = new ArrayList<>();
            for (Part part : parts) {
                digests.add(PdfIdentity.digest(part.pdf()));
            }
            digests.add(PdfIdentity.digest((info + line).getBytes(StandardCharsets.UTF_8)));
            PdfIdentity.identify(writer, digests);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A page and the file that it is taken from. */
    private record Leaf(PdfReader from, int number) {

        PdfImportedPage in(PdfWriter writer) {
            return writer.getImportedPage(from, number);
        }
    }

    private static List<Leaf> leaves(List<Part> parts) throws IOException {
        List<Leaf> leaves = new ArrayList<>();
        for (Part part : parts) {
            PdfReader reader = new PdfReader(part.pdf());
            for (int number = part.skipped() + 1; number <= reader.getNumberOfPages(); number++) {
                leaves.add(new Leaf(reader, number));
            }
        }
        return leaves;
    }

    private static void tell(PdfContentByte content, String line, float x, float y) {
        content.beginText();
        content.setColorFill(LINE_COLOUR);
        content.setFontAndSize(Typeface.SANS.font(), LINE_SIZE);
        content.showTextAligned(PdfContentByte.ALIGN_CENTER, line, x, y, 90);
        content.endText();
    }
}
