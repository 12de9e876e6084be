package org.quaybook.api;

import java.util.List;
import org.quaybook.pack.PackFolder;

/** A pack could not be put in place; what was there before is still there. */
public final class NotWritten extends QuaybookException {
    private static final long serialVersionUID = 1;

    NotWritten(PackFolder.NotWritten cause) {
        super(List.of(cause.diagnostic()), cause);
    }
}
