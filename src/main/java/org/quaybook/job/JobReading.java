package org.quaybook.job;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;

/**
 * What came of reading a job file.
 *
 * @param job the job; null exactly if the job file has an error
 * @param installer the installer profile that the job names; null if it has an error or could not be looked for
 * @param text the job file as it was read; empty if it could not be read as text
 * @param problems everything to say about the two files, job file first, each in the order of the file
 */
public record JobReading(@Nullable Job job, @Nullable Installer installer, String text, List<Diagnostic> problems) {
    public JobReading {
        problems = List.copyOf(problems);
    }
}
