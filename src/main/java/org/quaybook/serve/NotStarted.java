package org.quaybook.serve;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;

/** A site cannot be served; nothing listens. */
public final class NotStarted extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Diagnostic diagnostic;

    NotStarted(@Nullable Throwable cause, Message message, Message... hints) {
        super(message.key().key(), cause);
        this.diagnostic =
                new Diagnostic(Severity.ERROR, message.key().key(), Place.NOWHERE, "", message, List.of(hints));
    }

    public Diagnostic diagnostic() {
        return diagnostic;
    }
}
