package org.quaybook.api;

import java.util.List;
import org.quaybook.diag.Diagnostic;

/** A job cannot be calculated: a file has an error, or the job lacks a value that the figures need. */
public final class NotCalculated extends QuaybookException {
    private static final long serialVersionUID = 1;

    NotCalculated(List<Diagnostic> problems) {
        super(problems, null);
    }
}
