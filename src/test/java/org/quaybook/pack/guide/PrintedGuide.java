package org.quaybook.pack.guide;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A guide or a sheet as another program, PDFBox, sees it. */
public final class PrintedGuide implements AutoCloseable {

    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    /** A letter on a page; millimetres from the top left corner, {@code y} is the baseline, size in points. */
    public record Letter(String text, double x, double y, double width, double size, boolean bold) {}

    private final byte[] bytes;
    private final PDDocument document;
    private final List<List<Letter>> letters = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();

    public PrintedGuide(byte[] bytes) {
        this.bytes = bytes.clone();
        try {
            this.document = Loader.loadPDF(bytes);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                read(page);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(int page) throws IOException {
        List<Letter> found = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) throws IOException {
                positions.forEach(position -> found.add(letter(position)));
                super.writeString(text, positions);
            }
        };
        stripper.setSortByPosition(true);
        stripper.setLineSeparator("\n");
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        // A space that does not break is a space to whoever reads.
        texts.add(stripper.getText(document).replace('\u00a0', ' '));
        letters.add(found);
    }

    private static Letter letter(TextPosition position) {
        return new Letter(
                position.getUnicode(),
                position.getXDirAdj() * MILLIMETRES_PER_POINT,
                position.getYDirAdj() * MILLIMETRES_PER_POINT,
                position.getWidthDirAdj() * MILLIMETRES_PER_POINT,
                position.getYScale(),
                position.getFont().getName().contains("Bold"));
    }

    public byte[] bytes() {
        return bytes.clone();
    }

    public PDDocument document() {
        return document;
    }

    public int pages() {
        return texts.size();
    }

    /** @param page from 1 */
    public String text(int page) {
        return texts.get(page - 1);
    }

    public String text() {
        return String.join("\n", texts);
    }

    /** The text with line breaks as spaces, so that a sentence is found wherever its lines end. */
    public String flowing() {
        return text().replaceAll("\\s+", " ");
    }

    /** @param page from 1 */
    public List<Letter> letters(int page) {
        return letters.get(page - 1);
    }

    /** Names of all fonts, those inside drawings too, and whether each is embedded. */
    public Map<String, Boolean> fonts() throws IOException {
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

    public BufferedImage image(int page, float dpi) throws IOException {
        return new PDFRenderer(document).renderImageWithDPI(page - 1, dpi, ImageType.GRAY);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
