package org.quaybook.pack;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.LabelStock;
import org.quaybook.pack.labels.LabelOrder.Form;

/**
 * What somebody wants printed of a job's labels.
 *
 * @param stocks a label goes on the first that has room for it; empty for plain sheets of the job's paper
 * @param start first unused label of a part-used sheet, from 1
 * @param move how the print is moved
 * @param bleed how far filled edges are drawn beyond the cut, millimetres
 * @param oneColour whether black must do
 * @param only ids of labels; empty for all
 * @param issued text of figures.json of the pack issued before: labels that say the same are not printed again; null to
 *     print all
 * @param issuedAt where that pack is, for messages
 * @param forms what is made of each label besides its place on a sheet
 * @param dpi dots an inch where a stock does not say them: 203, 300 or 600
 */
public record LabelWish(
        List<LabelStock> stocks,
        int start,
        PrintMove move,
        double bleed,
        boolean oneColour,
        List<String> only,
        @Nullable String issued,
        String issuedAt,
        Set<Form> forms,
        int dpi) {

    public LabelWish {
        stocks = List.copyOf(stocks);
        only = List.copyOf(only);
        forms = Set.copyOf(forms);
    }
}
