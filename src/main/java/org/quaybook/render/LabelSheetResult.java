package org.quaybook.render;

import java.util.List;

/** Labels ready to print. */
public final class LabelSheetResult {

    private final byte[] pdf;
    private final List<Placed> placed;

    LabelSheetResult(byte[] pdf, List<Placed> placed) {
        this.pdf = pdf;
        this.placed = List.copyOf(placed);
    }

    /** The file. */
    public byte[] pdf() {
        return pdf.clone();
    }

    /** Where each label stands, in the order given. */
    public List<Placed> placed() {
        return placed;
    }
}
