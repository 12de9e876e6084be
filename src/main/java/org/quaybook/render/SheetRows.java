package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the next thing comes to lie when things are put onto sheets one after the other: in rows from the top left. Before
 * a new sheet begins, what is no wider goes under a lower one of the last row.
 */
public final class SheetRows {

    /**
     * A place.
     *
     * @param page from 1
     * @param x millimetres from the left edge of the room
     * @param y millimetres from its top edge
     */
    public record Spot(int page, double x, double y) {}

    /** Where a thing may be put without a new sheet, the best first. */
    public enum Way {
        ROW,
        NEXT_ROW,
        BELOW,
        NEXT_SHEET
    }

    /** What stands above each other in the last row. */
    private record Column(double x, double width, double end) {}

    private final Box room;
    private final double gap;
    private final List<Column> row = new ArrayList<>();
    private int page = 1;
    private double y;

    /**
     * @param room of every sheet; only its size counts
     * @param gap between things, millimetres
     */
    public SheetRows(Box room, double gap) {
        this.room = room;
        this.gap = gap;
    }

    /** Whether a thing of this size has room in one way; on a new sheet everything has. */
    public boolean fits(Way way, double width, double height) {
        return switch (way) {
            case ROW -> within(x() + width, y + height);
            case NEXT_ROW -> !row.isEmpty() && within(width, nextRow() + height);
            case BELOW -> below(width, height) >= 0;
            case NEXT_SHEET -> true;
        };
    }

    /** Puts a thing in the first way that has room for it. */
    public Spot put(double width, double height) {
        if (fits(Way.ROW, width, height)) {
            return begin(width, height);
        }
        if (fits(Way.NEXT_ROW, width, height)) {
            y = nextRow();
            row.clear();
            return begin(width, height);
        }
        int at = below(width, height);
        if (at >= 0) {
            Column above = row.get(at);
            double top = above.end() + gap;
            row.set(at, new Column(above.x(), above.width(), top + height));
            return new Spot(page, above.x(), top);
        }
        page++;
        y = 0;
        row.clear();
        return begin(width, height);
    }

    private Spot begin(double width, double height) {
        double x = x();
        row.add(new Column(x, width, y + height));
        return new Spot(page, x, y);
    }

    private double x() {
        return row.isEmpty()
                ? 0
                : row.get(row.size() - 1).x() + row.get(row.size() - 1).width() + gap;
    }

    private double nextRow() {
        return row.stream().mapToDouble(Column::end).max().orElse(y) + gap;
    }

    /** The first column with room at its foot; -1 for none. */
    private int below(double width, double height) {
        for (int at = 0; at < row.size(); at++) {
            Column column = row.get(at);
            if (Box.fits(width, column.end() + gap + height, column.width(), room.height())) {
                return at;
            }
        }
        return -1;
    }

    private boolean within(double right, double bottom) {
        return Box.fits(right, bottom, room.width(), room.height());
    }
}
