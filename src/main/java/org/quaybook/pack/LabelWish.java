package org.quaybook.pack;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.pack.labels.LabelOrder.Form;
import org.quaybook.render.Dots;
import org.quaybook.render.PrintSettings;
import org.quaybook.render.Stock;

/**
 * What somebody wants printed of a job's labels.
 *
 * @param stocks a label goes on the first that has room for it; empty for plain sheets of the job's paper
 * @param settings where the print begins and by how much it is moved
 * @param oneColour whether black must do
 * @param only ids of labels; empty for all
 * @param issued text of figures.json of the pack issued before: labels that say the same are not printed again; null to print all
 * @param issuedAt where that pack is, for messages
 * @param forms what is made of each label besides its place on a sheet
 * @param dots of the printer where a stock does not say them
 */
public record LabelWish(
        List<Stock> stocks,
        PrintSettings settings,
        boolean oneColour,
        List<String> only,
        @Nullable String issued,
        String issuedAt,
        Set<Form> forms,
        Dots dots) {

    public LabelWish {
        stocks = List.copyOf(stocks);
        only = List.copyOf(only);
        forms = Set.copyOf(forms);
    }
}
