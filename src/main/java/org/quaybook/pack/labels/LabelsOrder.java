package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.quaybook.render.Sheet;
import org.quaybook.render.SheetRows;
import org.quaybook.render.SheetRows.Way;

/**
 * Saves label stock: a label may overtake a few others when it fills a row or a sheet that would stay empty. The walking
 * order is kept as far as that allows.
 */
final class LabelsOrder {

    /** How many labels one may overtake; common practice, no source. */
    private static final int REACH = 8;

    private final SheetRows rows;
    private final List<LabelSetter.Sized> waiting;
    private final List<LabelSetter.Sized> ordered = new ArrayList<>();

    private LabelsOrder(List<LabelSetter.Sized> labels, Sheet sheet) {
        this.rows = new SheetRows(sheet.room(), sheet.gap());
        this.waiting = new ArrayList<>(labels);
    }

    /** The same labels, to be laid in rows in the new order. */
    static List<LabelSetter.Sized> fill(List<LabelSetter.Sized> labels, Sheet sheet) {
        LabelsOrder order = new LabelsOrder(labels, sheet);
        while (!order.waiting.isEmpty()) {
            order.next();
        }
        return order.ordered;
    }

    private void next() {
        LabelSetter.Sized label = Arrays.stream(Way.values())
                .flatMap(way -> waiting.stream().limit(REACH).filter(one -> fits(way, one)))
                .findFirst()
                .orElseThrow();
        waiting.remove(label);
        ordered.add(label);
        rows.put(label.label().width(), label.heightOnSheet());
    }

    private boolean fits(Way way, LabelSetter.Sized one) {
        return rows.fits(way, one.label().width(), one.heightOnSheet());
    }
}
