package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;

/**
 * Values along an edge of a chart.
 *
 * @param from value at the start
 * @param to value at the end
 * @param start where the first lies in the drawing
 * @param end where the second lies
 */
record Scale(double from, double to, double start, double end) {

    /** Spare part of a step: what binary fractions leave over must not cost a tick. */
    private static final double SPARE = 1e-9;

    double at(double value) {
        return start + (value - from) / (to - from) * (end - start);
    }

    /** Round values from the least to the largest, so many apart. */
    List<Double> ticks(double step) {
        double least = Math.min(from, to);
        double most = Math.max(from, to);
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(least / step - SPARE); i * step <= most + step * SPARE; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** The least step of 1, 2 or 5 times a power of ten that cuts a span into no more than so many parts. */
    static double step(double span, int most) {
        double power = StrictMath.pow(10, Math.floor(StrictMath.log10(span / most)));
        for (double step : new double[] {1, 2, 5}) {
            if (span / (step * power) <= most + SPARE) {
                return step * power;
            }
        }
        return 10 * power;
    }
}
