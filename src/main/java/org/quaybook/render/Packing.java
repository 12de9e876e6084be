package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;

/** Puts labels onto sheets in rows, in the order given, from the top left. */
final class Packing {

    private final Sheet sheet;
    private final Box room;
    private final double bleed;
    private final List<Placed> placed = new ArrayList<>();
    private int page = 1;
    private double x;
    private double y;
    private double rowHeight;

    private Packing(Sheet sheet, double bleed) {
        this.sheet = sheet;
        this.bleed = bleed;
        this.room = sheet.room();
    }

    /**
     * Every label must be smaller than the room on the sheet.
     *
     * @param bleed beyond each label, millimetres
     */
    static List<Placed> pack(List<Label> labels, Sheet sheet, double bleed) {
        Packing packing = new Packing(sheet, bleed);
        labels.forEach(packing::put);
        return packing.placed;
    }

    private void put(Label label) {
        if (!fits(label)) {
            y += rowHeight + gap();
            x = 0;
            rowHeight = 0;
        }
        if (!fits(label)) {
            page++;
            y = 0;
        }
        placed.add(new Placed(label.id(), page, room.x() + x, room.y() + y, label.width(), label.height()));
        x += label.width() + gap();
        rowHeight = Math.max(rowHeight, label.heightOnSheet(bleed));
    }

    private double gap() {
        return sheet.gap() + 2 * bleed;
    }

    private boolean fits(Label label) {
        return Box.fits(x + label.width(), y + label.heightOnSheet(bleed), room.width(), room.height());
    }
}
