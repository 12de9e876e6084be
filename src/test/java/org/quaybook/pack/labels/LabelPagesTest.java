package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Rows among sheets; common practice in typesetting, no source: no row alone at the end. */
class LabelPagesTest {

    private static List<List<Integer>> pages(int room, List<Integer> heights) {
        return LabelPages.of(
                heights,
                (rows, first) -> rows.stream().mapToInt(Integer::intValue).sum() <= (first ? room - 1 : room));
    }

    @Test
    void fillsSheetsInOrder() {
        assertThat(pages(4, List.of(1, 1, 1, 2, 2, 1, 1)))
                .containsExactly(List.of(1, 1, 1), List.of(2, 2), List.of(1, 1));
    }

    @Test
    void theLastRowIsNotAlone() {
        assertThat(pages(4, List.of(1, 1, 1, 1))).containsExactly(List.of(1, 1), List.of(1, 1));
    }

    /** Where that would only move the trouble, or find no room, the row stays where it is. */
    @Test
    void nothingIsMovedInVain() {
        assertThat(pages(4, List.of(2, 1, 1))).containsExactly(List.of(2, 1), List.of(1));
        assertThat(pages(4, List.of(1, 1, 1, 4))).containsExactly(List.of(1, 1, 1), List.of(4));
    }

    @Test
    void aRowTooHighForAnySheetStandsByItself() {
        assertThat(pages(4, List.of(9, 1, 1))).containsExactly(List.of(9), List.of(1, 1));
    }
}
