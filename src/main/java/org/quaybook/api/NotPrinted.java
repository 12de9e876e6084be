package org.quaybook.api;

/** A document cannot be printed as the job, the templates, the words and the paper stand, or this revision may not be made. */
public final class NotPrinted extends QuaybookException {
    private static final long serialVersionUID = 1;

    NotPrinted(org.quaybook.pack.NotPrinted cause) {
        super(cause.diagnostics(), cause);
    }
}
