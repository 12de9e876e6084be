package org.quaybook.render;

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
     * Lays out a document in the largest type in which it fits: what fits in one size fits in all smaller ones.
     *
     * @param pages how many pages it fills, each begun by the document itself
     * @param xhtml the whole document by the size of its running text
     * @throws RenderException if it does not fit at the least size either, or for what {@link Handbook} refuses
     */
    public byte[] toPdf(int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources) {
        return fitted(pages, xhtml, info, resources, 1).document().pdf(List.of());
    }

    /**
     * The type in which {@link #toPdf} would set a document, for a part of a larger one.
     *
     * @param scale of the pages, as {@link Handbook} has it
     */
    public String size(
            int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources, double scale) {
        return fitted(pages, xhtml, info, resources, scale).size();
    }

    private record Fitted(String size, LaidOut document) {}

    private Fitted fitted(
            int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources, double scale) {
        Fitted fitted = null;
        int filled = 0;
        int low = 0;
        int high = sizes.size();
        while (low < high) {
            int middle = (low + high) / 2;
            String size = sizes.get(middle);
            LaidOut document = new Handbook().layOut(xhtml.apply(size), info, resources, scale);
            filled = document.pages();
            if (filled == pages) {
                fitted = new Fitted(size, document);
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        if (fitted != null) {
            return fitted;
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
}
