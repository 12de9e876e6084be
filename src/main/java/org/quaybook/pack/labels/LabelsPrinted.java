package org.quaybook.pack.labels;

import java.util.List;
import org.quaybook.render.LabelSheetResult;

/**
 * The label sheets of a job.
 *
 * @param sheet the file and where each label stands on it
 * @param notes which label goes where and why
 */
public record LabelsPrinted(LabelSheetResult sheet, List<LabelNote> notes) {

    public LabelsPrinted {
        notes = List.copyOf(notes);
    }
}
