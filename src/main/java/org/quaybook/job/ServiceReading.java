package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;

/**
 * What came of reading a service log.
 *
 * @param log null exactly if the file has an error
 * @param text the file as it was read; empty if it could not be read as text
 * @param problems everything to say about the file, in its order
 */
public record ServiceReading(@Nullable ServiceLog log, String text, List<Diagnostic> problems) {
    public ServiceReading {
        problems = List.copyOf(problems);
    }
}
