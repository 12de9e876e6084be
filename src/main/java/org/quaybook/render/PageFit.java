package org.quaybook.render;

import java.util.List;
import java.util.function.Function;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;

/** Sets a document in the largest type at which it fills exactly as many pages as it may. */
public final class PageFit {

    private final List<String> sizes;

    /** Place of the size that is tried first. */
    private final int start;

    /** @param sizes of the running text in points, as style sheets write them, the largest first; at least one */
    public PageFit(List<String> sizes) {
        this(sizes, 0);
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("no size to try");
        }
    }

    private PageFit(List<String> sizes, int start) {
        this.sizes = List.copyOf(sizes);
        this.start = start;
    }

    /**
     * The same sizes for documents that mostly get one that is not the largest: it is tried first, and what is found does
     * not hang on it.
     */
    public PageFit startingAt(String usual) {
        int place = sizes.indexOf(usual);
        if (place < 0) {
            throw new IllegalArgumentException("not a size to try: " + usual);
        }
        return new PageFit(sizes, place);
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
        int next = start;
        int step = 1;
        while (low < high) {
            LaidOut document = new Handbook().layOut(xhtml.apply(sizes.get(next)), info, resources, 1);
            filled = document.pages();
            if (filled == pages) {
                fitted = document;
                high = next;
            } else {
                low = next + 1;
            }
            boolean between = low > 0 && high < sizes.size();
            next = between ? (low + high) / 2 : clamped(low > 0 ? next + step : next - step);
            step *= 2;
        }
        if (fitted != null) {
            return fitted;
        }
        throw tooLarge(info, filled, pages);
    }

    private int clamped(int place) {
        return Math.max(0, Math.min(place, sizes.size() - 1));
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
