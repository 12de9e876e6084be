package org.quaybook.pack.workings;

import org.quaybook.figures.Formula;
import org.quaybook.text.Words;

/** Formulas as a language writes them. */
public final class FormulaWords {

    private FormulaWords() {}

    /** The formula; empty where a value is only taken over. */
    public static String text(Formula formula, Words words) {
        return words.symbols(formula.words().map(words::say).orElse(formula.symbols()));
    }
}
