package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;

/**
 * What came of reading a file of readings.
 *
 * @param readings null exactly if the file has an error
 * @param problems everything to say about the file, in its order
 */
public record ReadingsReading(@Nullable Readings readings, List<Diagnostic> problems) {
    public ReadingsReading {
        problems = List.copyOf(problems);
    }
}
