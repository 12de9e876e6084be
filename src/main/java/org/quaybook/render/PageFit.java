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
        return fitted(pages, xhtml, info, resources).pdf(List.of());
    }

    /**
     * The largest type in which a part of a larger document fits on one page.
     *
     * @param inEachSize a document that has the part once in each of the sizes, in their order, each on a page of its own
     * @param part name of its class
     * @param info of the document
     * @throws RenderException if it does not fit at the least size either
     */
    public String size(LaidOut inEachSize, String part, DocumentInfo info) {
        List<PartEnd> ends = inEachSize.ends(part);
        int filled = 0;
        for (int i = 0; i < sizes.size(); i++) {
            filled = ends.get(i).lastPage() - ends.get(i).firstPage() + 1;
            if (filled == 1) {
                return sizes.get(i);
            }
        }
        throw tooLarge(info, filled, 1);
    }

    /** The sizes of the running text in points, the largest first. */
    public List<String> sizes() {
        return sizes;
    }

    private LaidOut fitted(int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources) {
        LaidOut fitted = null;
        int filled = 0;
        int low = 0;
        int high = sizes.size();
        while (low < high) {
            int middle = (low + high) / 2;
            String size = sizes.get(middle);
            LaidOut document = new Handbook().layOut(xhtml.apply(size), info, resources, 1);
            filled = document.pages();
            if (filled == pages) {
                fitted = document;
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        if (fitted != null) {
            return fitted;
        }
        throw tooLarge(info, filled, pages);
    }

    private RenderException tooLarge(DocumentInfo info, int filled, int pages) {
        return RenderException.of(
                new Place(info.title(), "", Position.START),
                null,
                RenderMessage.TOO_MANY_PAGES,
                info.title(),
                sizes.get(sizes.size() - 1),
                filled,
                pages);
    }
}
