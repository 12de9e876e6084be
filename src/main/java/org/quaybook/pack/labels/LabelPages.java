package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/** Parts rows among sheets: as many as there is room for, but never one alone on the last sheet. */
final class LabelPages {

    /** What a sheet keeps when it gives its last row to the next one. */
    private static final int LEAST_KEPT = 2;

    private LabelPages() {}

    /**
     * Parts rows among sheets, in their order.
     *
     * @param fits whether some rows have room on one sheet, which is the first one or a later one; a row that has none by
     *     itself gets a sheet of its own
     */
    static <T> List<List<T>> of(List<T> rows, BiPredicate<List<T>, Boolean> fits) {
        List<List<T>> pages = new ArrayList<>();
        int from = 0;
        while (from < rows.size()) {
            int to = from + 1;
            while (to < rows.size() && fits.test(rows.subList(from, to + 1), from == 0)) {
                to++;
            }
            pages.add(List.copyOf(rows.subList(from, to)));
            from = to;
        }
        return withoutOrphan(pages, fits);
    }

    private static <T> List<List<T>> withoutOrphan(List<List<T>> pages, BiPredicate<List<T>, Boolean> fits) {
        int last = pages.size() - 1;
        if (last < 1 || pages.get(last).size() > 1 || pages.get(last - 1).size() <= LEAST_KEPT) {
            return pages;
        }
        List<T> before = pages.get(last - 1);
        List<T> both = List.of(before.get(before.size() - 1), pages.get(last).get(0));
        if (fits.test(both, false)) {
            pages.set(last - 1, before.subList(0, before.size() - 1));
            pages.set(last, both);
        }
        return pages;
    }
}
