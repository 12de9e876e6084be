package org.quaybook.api;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;

/** A step was not done because of something that the caller, his files or his machine can put right. */
public abstract sealed class QuaybookException extends Exception
        permits HandoverForbidden, NotCalculated, NotPrinted, NotWritten {
    private static final long serialVersionUID = 1;

    private final transient List<Diagnostic> problems;

    QuaybookException(List<Diagnostic> problems, @Nullable Throwable cause) {
        super(cause);
        this.problems = List.copyOf(problems);
    }

    /**
     * What is wrong, every reason at once.
     *
     * @return as data; empty only where findings forbid handing over
     */
    public List<Diagnostic> problems() {
        return problems;
    }

    /** Every reason in English, one a line, with its place. */
    @Override
    public String getMessage() {
        return Sentences.of(problems);
    }
}
