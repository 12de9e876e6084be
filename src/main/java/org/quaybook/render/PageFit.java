package org.quaybook.render;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;

/** Sets a document in the largest type at which it fills exactly as many pages as it may; says what becomes of the rest. */
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
     * @param wordings the whole document by the size of its running text, the wording that says most first; the first
     *     that fits in any size is the one that is laid out; at least one
     * @throws RenderException if none fits at the least size either, or for what {@link Handbook} refuses
     */
    public byte[] toPdf(int pages, List<Function<String, String>> wordings, DocumentInfo info, Resources resources) {
        int filled = 0;
        for (Function<String, String> wording : wordings) {
            Attempt attempt = attempt(pages, wording, info, resources, /* toTheLeast= */ true);
            if (attempt.fitting != null) {
                return attempt.fitting.pdf(List.of());
            }
            filled = attempt.filled;
        }
        throw tooLarge(info, filled, pages);
    }

    /**
     * Lays out a document on one page in the largest type in which it fits there; what fits in none runs on over as many
     * pages as it takes. So much to say makes a document neither too small to read nor none at all.
     *
     * @param onePage the wordings for one page, as above
     * @param runningOn the same with what further pages need, in a type of its own; asked for only if it is laid out
     * @throws RenderException for what {@link Handbook} refuses
     */
    public byte[] toPdf(
            List<Function<String, String>> onePage,
            Supplier<String> runningOn,
            DocumentInfo info,
            Resources resources) {
        for (Function<String, String> wording : onePage) {
            LaidOut fitting = attempt(1, wording, info, resources, /* toTheLeast= */ false).fitting;
            if (fitting != null) {
                return fitting.pdf(List.of());
            }
        }
        return new Handbook().layOut(runningOn.get(), info, resources, 1).pdf(List.of());
    }

    /**
     * The largest type in which a part of a larger document fits on one page; empty if it does not fit at the least size
     * either.
     *
     * @param inEachSize a document that has the part once in each of the sizes, in their order, each on a page of its own
     * @param part name of its class
     */
    public Optional<String> size(LaidOut inEachSize, String part) {
        List<PartEnd> ends = inEachSize.ends(part);
        for (int i = 0; i < sizes.size(); i++) {
            if (pages(ends.get(i)) == 1) {
                return Optional.of(sizes.get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * What to throw about a part that fits in no size.
     *
     * @param inEachSize as above
     * @param info of the document
     */
    public RenderException tooLarge(LaidOut inEachSize, String part, DocumentInfo info) {
        return tooLarge(info, pages(inEachSize.ends(part).get(sizes.size() - 1)), 1);
    }

    private static int pages(PartEnd part) {
        return part.lastPage() - part.firstPage() + 1;
    }

    /** The sizes of the running text in points, the largest first. */
    public List<String> sizes() {
        return sizes;
    }

    /**
     * What came of trying the sizes.
     *
     * @param fitting in the largest size that will do; null if none does
     * @param filled pages in the size that was tried last
     */
    private record Attempt(@Nullable LaidOut fitting, int filled) {}

    /** @param toTheLeast whether the least size is tried even where it is plain that it cannot fit either */
    private Attempt attempt(
            int pages, Function<String, String> xhtml, DocumentInfo info, Resources resources, boolean toTheLeast) {
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
            if (!toTheLeast && isFarBeyond(filled, pages, next)) {
                break;
            }
            boolean between = low > 0 && high < sizes.size();
            next = between ? (low + high) / 2 : clamped(low > 0 ? next + step : next - step);
            step *= 2;
        }
        return new Attempt(fitted, filled);
    }

    /** The room that letters take goes with the square of their size; for the breaking of lines it is allowed thrice. */
    private boolean isFarBeyond(int filled, int pages, int place) {
        double smaller = Double.parseDouble(sizes.get(sizes.size() - 1)) / Double.parseDouble(sizes.get(place));
        return filled * smaller * smaller > 3.0 * pages;
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
