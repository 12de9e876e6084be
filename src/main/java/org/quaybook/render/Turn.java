package org.quaybook.render;

import java.awt.geom.AffineTransform;

/** How a text is turned in its box. */
public enum Turn {
    UPRIGHT(1, 0),
    /** A quarter to the left: it reads from the bottom upwards. */
    QUARTER(0, -1),
    /** Upside down. */
    HALF(-1, 0);

    private final int acrossX;
    private final int acrossY;

    Turn(int acrossX, int acrossY) {
        this.acrossX = acrossX;
        this.acrossY = acrossY;
    }

    /** Turns what is drawn upright, around its beginning. */
    AffineTransform rotation() {
        return new AffineTransform(acrossX, acrossY, -acrossY, acrossX, 0, 0);
    }

    /** How far a step along the line of text goes to the right on the label: 1, 0 or −1. */
    int acrossX() {
        return acrossX;
    }

    /** How far a step along the line of text goes down on the label: 0 or −1. */
    int acrossY() {
        return acrossY;
    }

    /** The box as the text sees it, its top left corner at 0, 0. */
    Box upright(Box box) {
        return this == QUARTER ? new Box(0, 0, box.height(), box.width()) : new Box(0, 0, box.width(), box.height());
    }

    /** A place in the upright box, on the label. */
    Fitting.Line place(Fitting.Line line, Box box) {
        return switch (this) {
            case UPRIGHT -> new Fitting.Line(box.x() + line.x(), box.y() + line.baseline(), line.text());
            case QUARTER -> new Fitting.Line(box.x() + line.baseline(), box.y() + box.height() - line.x(), line.text());
            case HALF ->
                new Fitting.Line(
                        box.x() + box.width() - line.x(), box.y() + box.height() - line.baseline(), line.text());
        };
    }
}
