package org.quaybook.render;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths on paper. */
final class Millimetres {

    /** ISO 32000-1, 8.3.2.3: the default unit of a PDF is 1/72 inch; an inch is 25.4 mm. */
    private static final double POINTS = 72 / 25.4;

    private Millimetres() {}

    static double toPoints(double millimetres) {
        return millimetres * POINTS;
    }

    static double fromPoints(double points) {
        return points / POINTS;
    }

    /** To a thousandth, without needless zeros: {@code 18.5}. */
    static String plain(double millimetres) {
        return BigDecimal.valueOf(millimetres)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
