package org.quaybook.calc;

/**
 * The resistor ladder of parallel strings: plus posts and minus posts each joined by links, a string between each pair.
 * String voltages are taken as equal, which a settled bank's are.
 */
final class Ladder {

    private final double[] string;
    private final double link;

    Ladder(double[] string, double link) {
        this.string = string;
        this.link = link;
    }

    /**
     * Current of each string when 1 A is drawn, plus at the first post.
     *
     * <p>Nodal equations: unknowns are the voltages of all posts against the string voltage, the minus post of the
     * take-off being grounded. Solved by Gaussian elimination with pivoting.
     */
    double[] currents(boolean sameEnd) {
        int n = string.length;
        int ground = sameEnd ? n : 2 * n - 1;
        double[][] a = new double[2 * n][2 * n + 1];
        for (int i = 0; i < n; i++) {
            join(a, i, n + i, 1 / string[i]);
            if (i + 1 < n) {
                join(a, i, i + 1, 1 / link);
                join(a, n + i, n + i + 1, 1 / link);
            }
        }
        a[0][2 * n] = -1;
        java.util.Arrays.fill(a[ground], 0);
        a[ground][ground] = 1;
        double[] v = solve(a);
        double[] currents = new double[n];
        for (int i = 0; i < n; i++) {
            currents[i] = (v[n + i] - v[i]) / string[i];
        }
        return currents;
    }

    private static void join(double[][] a, int i, int j, double conductance) {
        a[i][i] += conductance;
        a[j][j] += conductance;
        a[i][j] -= conductance;
        a[j][i] -= conductance;
    }

    private static double[] solve(double[][] a) {
        int n = a.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++) {
                if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) {
                    pivot = row;
                }
            }
            double[] swap = a[column];
            a[column] = a[pivot];
            a[pivot] = swap;
            for (int row = column + 1; row < n; row++) {
                double factor = a[row][column] / a[column][column];
                for (int k = column; k <= n; k++) {
                    a[row][k] -= factor * a[column][k];
                }
            }
        }
        double[] x = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double rest = a[row][n];
            for (int k = row + 1; k < n; k++) {
                rest -= a[row][k] * x[k];
            }
            x[row] = rest / a[row][row];
        }
        return x;
    }
}
