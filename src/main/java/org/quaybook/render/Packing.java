package org.quaybook.render;

import java.util.ArrayList;
import java.util.List;

/** Puts labels onto sheets in rows, in the order given, from the top left. */
final class Packing {

    private Packing() {}

    /**
     * Every label must be smaller than the room on the sheet.
     *
     * @param bleed beyond each label, millimetres
     */
    static List<Placed> pack(List<Label> labels, Sheet sheet, double bleed) {
        Box room = sheet.room();
        SheetRows rows = new SheetRows(room, sheet.gap() + 2 * bleed);
        List<Placed> placed = new ArrayList<>();
        for (Label label : labels) {
            SheetRows.Spot spot = rows.put(label.width(), label.heightOnSheet(bleed));
            placed.add(new Placed(
                    label.id(), spot.page(), room.x() + spot.x(), room.y() + spot.y(), label.width(), label.height()));
        }
        return placed;
    }
}
