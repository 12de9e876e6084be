package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rows shared among labels, compared with every way of sharing them. The rule itself is this project's own. */
class EvenSharesTest {

    private static final double BETWEEN = 0.5;

    private static List<Integer> ends(List<Double> heights, List<Integer> bundles, int count, double room) {
        return EvenShares.ends(heights, BETWEEN, bundles, Collections.nCopies(count, room));
    }

    private static List<Integer> singly(int rows) {
        return Collections.nCopies(rows, 1);
    }

    @Test
    void equalRowsAreSharedEvenly() {
        List<Integer> ends = ends(Collections.nCopies(10, 1.0), singly(10), 4, 4.5);
        List<Integer> shares = new ArrayList<>();
        int before = 0;
        for (int end : ends) {
            shares.add(end - before);
            before = end;
        }
        assertThat(shares).containsExactlyInAnyOrder(3, 3, 2, 2);
    }

    @Test
    void bundlesStayTogetherAndNoRowIsAlone() {
        assertThat(ends(Collections.nCopies(9, 1.0), List.of(2, 5, 2), 2, 20)).isIn(List.of(2, 9), List.of(7, 9));
        assertThat(ends(Collections.nCopies(5, 1.0), List.of(4, 1), 2, 20)).isEmpty();
    }

    @Test
    void nothingIsSharedWhereThereIsNoRoom() {
        assertThat(ends(Collections.nCopies(6, 1.0), singly(6), 2, 3.9)).isEmpty();
        assertThat(ends(Collections.nCopies(6, 1.0), singly(6), 2, 4.0)).containsExactly(3, 6);
    }

    /** A share that also bears something else gets fewer rows. */
    @Test
    void eachShareHasARoomOfItsOwn() {
        assertThat(EvenShares.ends(Collections.nCopies(8, 1.0), 0, singly(8), List.of(9.0, 2.0)))
                .containsExactly(6, 8);
    }

    @Test
    void noOtherSharingIsMoreEven() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            List<Double> heights = new ArrayList<>();
            for (int i = 0; i < 9; i++) {
                heights.add(1 + random.nextInt(3) * 0.75);
            }
            double room = 6 + random.nextInt(6);
            double best = Double.MAX_VALUE;
            for (int first = 2; first <= 5; first++) {
                for (int second = first + 2; second <= 7; second++) {
                    best = Math.min(best, squares(heights, List.of(first, second, 9), room));
                }
            }
            List<Integer> ends = ends(heights, singly(9), 3, room);
            if (best == Double.MAX_VALUE) {
                assertThat(ends).isEmpty();
            } else {
                assertThat(squares(heights, ends, room)).isCloseTo(best, within(1e-9));
            }
        }
    }

    private static double squares(List<Double> heights, List<Integer> ends, double room) {
        double sum = 0;
        int from = 0;
        for (int end : ends) {
            double height = heights.subList(from, end).stream()
                            .mapToDouble(Double::doubleValue)
                            .sum()
                    + (end - from - 1) * BETWEEN;
            if (height > room + 1e-9) {
                return Double.MAX_VALUE;
            }
            sum += height * height;
            from = end;
        }
        return sum;
    }
}
