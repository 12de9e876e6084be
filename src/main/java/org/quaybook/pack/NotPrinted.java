package org.quaybook.pack;

import java.util.List;
import org.quaybook.diag.Diagnostic;
import org.quaybook.render.RenderException;

/** A document cannot be printed as the job, the templates, the words and the paper stand; says why, every reason at once. */
public final class NotPrinted extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<Diagnostic> diagnostics;

    NotPrinted(RenderException cause) {
        super(cause);
        this.diagnostics = cause.diagnostics();
    }

    /** @param diagnostics at least one */
    NotPrinted(List<Diagnostic> diagnostics) {
        super(diagnostics.get(0).rule());
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** At least one. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
