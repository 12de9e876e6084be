package org.quaybook.pack.site;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.SystemReason;

/** A pack was not put onto a site, or a record not taken off it; what was there before is still there. */
public final class NotPublished extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Diagnostic diagnostic;
    private final boolean system;

    private NotPublished(Diagnostic diagnostic, boolean system, @Nullable Throwable cause) {
        super(diagnostic.rule(), cause);
        this.diagnostic = diagnostic;
        this.system = system;
    }

    private static Diagnostic at(Path place, Message message, Message... hints) {
        return new Diagnostic(
                Severity.ERROR,
                message.key().key(),
                new Place(place.toString(), "", Position.START),
                "",
                message,
                List.of(hints));
    }

    /** The pack or the site is not as it should be. */
    static NotPublished refused(Path at, Message message, Message... hints) {
        return new NotPublished(at(at, message, hints), false, null);
    }

    /** The system would not write. */
    static NotPublished unwritten(Path at, IOException cause) {
        return new NotPublished(
                at(at, Message.of(SiteMessage.CANNOT_WRITE, at.toString(), SystemReason.of(cause))), true, cause);
    }

    /** The pack would not be signed: another run is changing it, or the system would not write. */
    static NotPublished unsigned(PackFolder.NotWritten cause) {
        return new NotPublished(cause.diagnostic(), true, cause);
    }

    public Diagnostic diagnostic() {
        return diagnostic;
    }

    /** Whether the system refused, not we. */
    public boolean bySystem() {
        return system;
    }
}
