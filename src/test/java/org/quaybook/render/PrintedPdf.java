package org.quaybook.render;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF as another program, PDFBox, sees it. */
final class PrintedPdf implements AutoCloseable {

    private final PDDocument document;

    PrintedPdf(byte[] bytes) throws IOException {
        this.document = Loader.loadPDF(bytes);
    }

    PDDocument document() {
        return document;
    }

    int pages() {
        return document.getNumberOfPages();
    }

    String text() throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setSortByPosition(true);
        stripper.setLineSeparator("\n");
        // Words are told apart by a space at the end of a line too.
        return stripper.getText(document).replace(" \n", "\n");
    }

    /** Names of all fonts, those inside drawings too, and whether each is embedded. */
    Map<String, Boolean> fonts() throws IOException {
        Map<String, Boolean> fonts = new TreeMap<>();
        for (PDPage page : document.getPages()) {
            collect(page.getResources(), fonts);
        }
        return fonts;
    }

    private static void collect(PDResources resources, Map<String, Boolean> fonts) throws IOException {
        for (COSName name : resources.getFontNames()) {
            PDFont font = resources.getFont(name);
            fonts.merge(font.getName(), font.isEmbedded(), Boolean::logicalAnd);
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof PDFormXObject form && form.getResources() != null) {
                collect(form.getResources(), fonts);
            }
        }
    }

    /** How many pictures made of pixels the pages use. */
    int rasters() throws IOException {
        int count = 0;
        for (PDPage page : document.getPages()) {
            count += rasters(page.getResources());
        }
        return count;
    }

    private static int rasters(PDResources resources) throws IOException {
        int count = 0;
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDImageXObject) {
                count++;
            } else if (object instanceof PDFormXObject form && form.getResources() != null) {
                count += rasters(form.getResources());
            }
        }
        return count;
    }

    /** @param page from 1 */
    BufferedImage image(int page, float dpi) {
        try {
            return new PDFRenderer(document).renderImageWithDPI(page - 1, dpi, ImageType.GRAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
