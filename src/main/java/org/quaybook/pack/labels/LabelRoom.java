package org.quaybook.pack.labels;

import java.util.List;
import java.util.Objects;
import org.quaybook.render.Box;
import org.quaybook.render.Dots;
import org.quaybook.render.Roll;
import org.quaybook.render.Sheet;
import org.quaybook.render.Stock;

/**
 * What a stock leaves for a label, millimetres.
 *
 * @param stock name of the stock, for messages
 * @param widths that a label may have, the narrowest first; at least one
 * @param height that no label may exceed
 * @param dots of the printer: codes are made of whole ones
 * @param turned whether the label lies turned by a quarter on the stock
 */
record LabelRoom(String stock, List<Double> widths, double height, Dots dots, boolean turned) {

    /**
     * Widths that share a sheet of A4 or Letter without waste: a third, a half, two thirds and the whole, less the gaps.
     */
    static final List<Double> WIDTHS = List.of(60.0, 92.5, 125.0, 190.0);

    /** The same and more, for tape of free length. */
    private static final List<Double> LENGTHS = List.of(60.0, 92.5, 125.0, 190.0, 250.0, 320.0);

    /** No label is taller than this, of its width, unless only the greatest width is left. Common practice, no source. */
    private static final double TALLEST = 1.1;

    LabelRoom {
        widths = List.copyOf(widths);
        if (widths.isEmpty()) {
            throw new IllegalArgumentException("no room on " + stock);
        }
    }

    /** On paper that is cut apart, without limit: what a label needs where nothing bounds it. */
    static LabelRoom free(Dots dots) {
        return new LabelRoom("", WIDTHS, Double.MAX_VALUE, dots, false);
    }

    /**
     * The ways in which a label can lie on a stock, the best first.
     *
     * @param usual dots where the stock does not say them
     */
    static List<LabelRoom> of(Stock stock, Dots usual) {
        Dots dots = Objects.requireNonNullElse(stock.dots(), usual);
        Box room = stock.room();
        if (stock.medium() instanceof Sheet) {
            return List.of(new LabelRoom(
                    stock.id(),
                    WIDTHS.stream().filter(width -> width <= room.width()).toList(),
                    room.height() - LabelsPlacing.STRIP,
                    dots,
                    false));
        }
        boolean free = stock.medium() instanceof Roll roll && roll.length() == null;
        return List.of(
                new LabelRoom(stock.id(), List.of(room.width()), room.height(), dots, false),
                new LabelRoom(stock.id(), free ? LENGTHS : List.of(room.height()), room.width(), dots, true));
    }

    double widest() {
        return widths.get(widths.size() - 1);
    }

    boolean bears(double height) {
        return height <= this.height + LabelSetter.SLACK;
    }

    /** Whether a label has a shape that does not look wrong. */
    boolean suits(double width, double height) {
        return widths.size() == 1 || height <= TALLEST * width;
    }
}
