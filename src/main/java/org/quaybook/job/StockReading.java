package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;

/**
 * What came of reading a stock of labels.
 *
 * @param stock null exactly if the file has an error
 * @param problems everything to say about the file, in its order
 */
public record StockReading(@Nullable LabelStock stock, List<Diagnostic> problems) {
    public StockReading {
        problems = List.copyOf(problems);
    }
}
