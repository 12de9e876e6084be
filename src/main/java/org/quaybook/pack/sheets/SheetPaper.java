package org.quaybook.pack.sheets;

import org.quaybook.checks.Assessment;
import org.quaybook.quantity.ConductorSize;

/** The paper of single sheets: metric, or American where the rulebook counts conductors in AWG. */
enum SheetPaper {
    METRIC("148mm 210mm", "210mm 297mm"),
    AMERICAN("5.5in 8.5in", "8.5in 11in");

    private final String card;
    private final String sheet;

    SheetPaper(String card, String sheet) {
        this.card = card;
        this.sheet = sheet;
    }

    static SheetPaper of(Assessment it) {
        return it.tables().rules().conductors() == ConductorSize.Series.AWG ? AMERICAN : METRIC;
    }

    /** Width and height of the quick card, as style sheets write them. */
    String card() {
        return card;
    }

    /** Width and height of a full sheet. */
    String sheet() {
        return sheet;
    }
}
