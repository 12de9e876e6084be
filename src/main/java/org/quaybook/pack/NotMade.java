package org.quaybook.pack;

import java.util.List;
import org.quaybook.diag.Diagnostic;

/** The documents of a job cannot be made as the job, the templates or the words beside them stand. */
public final class NotMade extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<Diagnostic> diagnostics;

    /** @param diagnostics what is wrong, at least one */
    NotMade(List<Diagnostic> diagnostics) {
        this(diagnostics, null);
    }

    NotMade(List<Diagnostic> diagnostics, @org.jspecify.annotations.Nullable Throwable cause) {
        super(diagnostics.get(0).rule(), cause);
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** What is wrong, all of it. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
