package org.quaybook.figures;

import java.util.List;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;

/** The job leaves no figure to reach; carries what to tell the user. Never leaves this package. */
final class Unanswerable extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Diagnostic diagnostic;

    Unanswerable(Place place, FiguresMessage message, FiguresMessage hint, Object... arguments) {
        super(message.key(), null, false, false);
        this.diagnostic = new Diagnostic(
                Severity.ERROR,
                message.key(),
                place,
                "",
                new Message(message, List.of(arguments)),
                List.of(Message.of(hint)));
    }

    Diagnostic diagnostic() {
        return diagnostic;
    }
}
