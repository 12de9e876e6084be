package org.quaybook.pack.labels;

import java.util.List;
import java.util.Set;
import org.quaybook.render.Dots;
import org.quaybook.render.PrintSettings;
import org.quaybook.render.Stock;

/**
 * Which labels of a job are printed, on what and how.
 *
 * @param stocks a label goes on the first of them that has room for it at a size that can be read
 * @param settings where the print begins and by how much it is moved
 * @param oneColour whether black must do; on a stock that has one colour only it does so anyway
 * @param only ids of the labels to print
 * @param forms what is written besides the sheets
 * @param dots of the printer for the pictures
 */
public record LabelOrder(
        List<Stock> stocks, PrintSettings settings, boolean oneColour, Set<String> only, Set<Form> forms, Dots dots) {

    /** What can be made of a label besides its place on a sheet. */
    public enum Form {
        /** Pictures of one pixel a dot. */
        PNG,
        /** The same in black and white without grey. */
        PNG_ONE_BIT,
        /** Outlines, for engraving. */
        SVG,
        /** The words alone, for engraving. */
        TEXT
    }

    public LabelOrder {
        stocks = List.copyOf(stocks);
        only = Set.copyOf(only);
        forms = Set.copyOf(forms);
        if (stocks.isEmpty()) {
            throw new IllegalArgumentException("nothing to print on");
        }
    }
}
