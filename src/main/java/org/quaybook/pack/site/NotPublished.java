package org.quaybook.pack.site;

import java.nio.file.Path;
import java.util.List;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;

/** A pack was not put onto a site, or a record not taken off it; what was there before is still there. */
public final class NotPublished extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Diagnostic diagnostic;
    private final boolean system;

    private NotPublished(Path at, boolean system, Message message, Message... hints) {
        super(message.key().key());
        this.system = system;
        this.diagnostic = new Diagnostic(
                Severity.ERROR,
                message.key().key(),
                new Place(at.toString(), "", Position.START),
                "",
                message,
                List.of(hints));
    }

    /** The pack or the site is not as it should be. */
    static NotPublished refused(Path at, Message message, Message... hints) {
        return new NotPublished(at, false, message, hints);
    }

    /** The system would not write. */
    static NotPublished unwritten(Path at, Exception cause) {
        NotPublished refused = new NotPublished(
                at, true, Message.of(SiteMessage.CANNOT_WRITE, at.toString(), String.valueOf(cause.getMessage())));
        refused.initCause(cause);
        return refused;
    }

    public Diagnostic diagnostic() {
        return diagnostic;
    }

    /** Whether the system refused, not we. */
    public boolean bySystem() {
        return system;
    }
}
