package org.quaybook.render;

import com.lowagie.text.pdf.PdfReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Function;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;

/** Sets a document in the largest type at which it fills exactly as many pages as it may. */
public final class PageFit {

    private final List<String> sizes;

    /** @param sizes of the running text in points, as style sheets write them, the largest first; at least one */
    public PageFit(List<String> sizes) {
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("no size to try");
        }
        this.sizes = List.copyOf(sizes);
    }

    /**
     * Lays out a document, smaller and smaller until it fits.
     *
     * @param pages how many pages it fills, each begun by the document itself
     * @param xhtml the whole document by the size of its running text
     * @throws RenderException if it does not fit at the least size either, or for what {@link Handbook} refuses
     */
    public byte[] toPdf(int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources) {
        return new Handbook().toPdf(xhtml.apply(size(pages, xhtml, info, resources, 1)), info, resources);
    }

    /**
     * The type in which {@link #toPdf} would set a document, for a part of a larger one.
     *
     * @param scale of the pages, as {@link Handbook} has it
     */
    public String size(
            int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources, double scale) {
        int filled = 0;
        for (String size : sizes) {
            byte[] pdf = new Handbook().toPdf(xhtml.apply(size), info, resources, scale, List.of());
            filled = pagesOf(pdf);
            if (filled == pages) {
                return size;
            }
        }
        throw RenderException.of(
                new Place(info.title(), "", Position.START),
                null,
                RenderMessage.TOO_MANY_PAGES,
                info.title(),
                sizes.get(sizes.size() - 1),
                filled,
                pages);
    }

    private static int pagesOf(byte[] pdf) {
        try (PdfReader reader = new PdfReader(pdf)) {
            return reader.getNumberOfPages();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
