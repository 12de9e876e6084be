package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;

/** Measures dark shapes in a picture of a page, in millimetres; an inch is 25.4 mm. */
record Ruler(BufferedImage page, double dpi) {

    private static final int DARK = 128;

    boolean isDark(double x, double y) {
        return isDark(page, pixel(x), pixel(y));
    }

    /** Beyond the page nothing is dark. */
    static boolean isDark(BufferedImage image, int column, int row) {
        return column >= 0
                && row >= 0
                && column < image.getWidth()
                && row < image.getHeight()
                && image.getRaster().getSample(column, row, 0) < DARK;
    }

    private int pixel(double millimetres) {
        return (int) Math.floor(millimetres / 25.4 * dpi);
    }

    /** The edge of the dark shape around a point, going one way in whole pixels. */
    private double edge(double x, double y, int stepX, int stepY) {
        int column = pixel(x);
        int row = pixel(y);
        assertThat(isDark(x, y)).as("dark at " + x + ", " + y).isTrue();
        while (isDark(page, column + stepX, row + stepY)) {
            column += stepX;
            row += stepY;
        }
        int last = stepX != 0 ? column : row;
        return (stepX + stepY > 0 ? last + 1 : last) * 25.4 / dpi;
    }

    double left(double x, double y) {
        return edge(x, y, -1, 0);
    }

    double right(double x, double y) {
        return edge(x, y, 1, 0);
    }

    double top(double x, double y) {
        return edge(x, y, 0, -1);
    }

    double bottom(double x, double y) {
        return edge(x, y, 0, 1);
    }

    double firstDark(double x, double y) {
        double at = x;
        while (!isDark(at, y)) {
            at += 25.4 / dpi;
        }
        return at;
    }
}
