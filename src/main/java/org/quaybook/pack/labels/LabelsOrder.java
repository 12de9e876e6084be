package org.quaybook.pack.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.render.Box;
import org.quaybook.render.Sheet;

/**
 * Saves label stock: a label may overtake a few others when it fills a row or a sheet that would stay empty. The walking
 * order is kept as far as that allows.
 */
final class LabelsOrder {

    /** How many labels one may overtake; common practice, no source. */
    private static final int REACH = 8;

    private static final double SLACK = 1e-6;

    private final Box room;
    private final double gap;
    private final List<LabelSetter.Sized> waiting;
    private final List<LabelSetter.Sized> ordered = new ArrayList<>();
    private double x;
    private double y;
    private double rowHeight;

    private LabelsOrder(List<LabelSetter.Sized> labels, Sheet sheet) {
        this.room = sheet.room();
        this.gap = sheet.gap();
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
        Optional<LabelSetter.Sized> found = firstThatFits();
        if (found.isEmpty() && x > 0) {
            y += rowHeight + gap;
            x = 0;
            rowHeight = 0;
            found = firstThatFits();
        }
        if (found.isEmpty()) {
            y = 0;
        }
        LabelSetter.Sized label = found.orElse(waiting.get(0));
        waiting.remove(label);
        ordered.add(label);
        x += label.label().width() + gap;
        rowHeight = Math.max(rowHeight, label.heightOnSheet());
    }

    private Optional<LabelSetter.Sized> firstThatFits() {
        return waiting.stream().limit(REACH).filter(this::fits).findFirst();
    }

    private boolean fits(LabelSetter.Sized label) {
        return x + label.label().width() <= room.width() + SLACK && y + label.heightOnSheet() <= room.height() + SLACK;
    }
}
