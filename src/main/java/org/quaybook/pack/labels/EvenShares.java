package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Shares the rows of a list among several labels so that all are about as full. */
final class EvenShares {

    /** A label of one row is taken for a scrap. */
    private static final int LEAST_ROWS = 2;

    private EvenShares() {}

    /**
     * Where each share ends: the index after its last row. The squares of the heights have the least sum, so that no
     * share is much fuller than another.
     *
     * @param heights of the rows
     * @param between what stands between two rows of a share
     * @param bundles how many rows, one after the other, are not parted
     * @param room for the rows of each share
     * @return empty if there is no room for all of them
     */
    static List<Integer> ends(List<Double> heights, double between, List<Integer> bundles, List<Double> room) {
        int count = room.size();
        int[] starts = new int[bundles.size() + 1];
        for (int i = 0; i < bundles.size(); i++) {
            starts[i + 1] = starts[i] + bundles.get(i);
        }
        double[] above = new double[heights.size() + 1];
        for (int i = 0; i < heights.size(); i++) {
            above[i + 1] = above[i] + heights.get(i) + between;
        }
        double[][] least = new double[count + 1][starts.length];
        int[][] from = new int[count + 1][starts.length];
        for (double[] row : least) {
            Arrays.fill(row, Double.MAX_VALUE);
        }
        least[0][0] = 0;
        for (int share = 1; share <= count; share++) {
            double most = room.get(share - 1) + LabelSetter.SLACK;
            for (int to = 1; to < starts.length; to++) {
                for (int begin = to - 1; begin >= 0; begin--) {
                    double height = above[starts[to]] - above[starts[begin]] - between;
                    if (height > most) {
                        break;
                    }
                    double sum = least[share - 1][begin] + height * height;
                    if (starts[to] - starts[begin] >= LEAST_ROWS && sum < least[share][to]) {
                        least[share][to] = sum;
                        from[share][to] = begin;
                    }
                }
            }
        }
        int at = starts.length - 1;
        if (least[count][at] == Double.MAX_VALUE) {
            return List.of();
        }
        List<Integer> ends = new ArrayList<>();
        for (int share = count; share > 0; share--) {
            ends.add(0, starts[at]);
            at = from[share][at];
        }
        return ends;
    }
}
