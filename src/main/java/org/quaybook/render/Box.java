package org.quaybook.render;

/**
 * A rectangle on a label or page, in millimetres from its top left corner; y grows downwards.
 *
 * @param width more than 0
 * @param height more than 0
 */
public record Box(double x, double y, double width, double height) {

    /** Less than a printer can show, more than the rounding of a sum. */
    private static final double SLACK = 1e-6;

    public Box {
        if (!(width > 0 && height > 0) || !Double.isFinite(x + y + width + height)) {
            throw new IllegalArgumentException("no box: " + x + ", " + y + ", " + width + " x " + height);
        }
    }

    /** This box less an edge of the given width on all sides. */
    public Box inside(double edge) {
        return new Box(x + edge, y + edge, width - 2 * edge, height - 2 * edge);
    }

    /** Whether another box lies in this one; the edges may touch. */
    boolean holds(Box other) {
        return other.x >= x - SLACK
                && other.y >= y - SLACK
                && fits(other.x + other.width, other.y + other.height, x + width, y + height);
    }

    /** This box drawn further, on those sides where it reaches the edge of a room that begins at 0, 0. */
    Box beyond(double further, double roomWidth, double roomHeight) {
        double before = x <= SLACK ? further : 0;
        double above = y <= SLACK ? further : 0;
        double after = x + width >= roomWidth - SLACK ? further : 0;
        double below = y + height >= roomHeight - SLACK ? further : 0;
        return new Box(x - before, y - above, width + before + after, height + above + below);
    }

    boolean isWithin(double roomWidth, double roomHeight) {
        return x >= -SLACK && y >= -SLACK && fits(x + width, y + height, roomWidth, roomHeight);
    }

    static boolean fits(double width, double height, double roomWidth, double roomHeight) {
        return width <= roomWidth + SLACK && height <= roomHeight + SLACK;
    }
}
