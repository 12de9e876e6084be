package org.quaybook.pack.sheets;

import org.quaybook.checks.Assessment;
import org.quaybook.pack.Paper;

/** The paper of single sheets: metric, or American. */
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
        return Paper.of(it) == Paper.LETTER ? AMERICAN : METRIC;
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
