package org.quaybook.figures;

import java.util.List;
import java.util.function.Supplier;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Severity;
import org.quaybook.reference.NotInTable;

/** The job leaves no figure to reach; carries what to tell the user. Never leaves this package. */
final class Unanswerable extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Diagnostic diagnostic;

    Unanswerable(Place place, FiguresMessage message, FiguresMessage hint, Object... arguments) {
        this(place, new Message(message, List.of(arguments)), List.of(Message.of(hint)));
    }

    private Unanswerable(Place place, Message message, List<Message> hints) {
        super(message.key().key(), null, false, false);
        this.diagnostic = new Diagnostic(Severity.ERROR, message.key().key(), place, "", message, hints);
    }

    /**
     * What a look-up gives for a value of the job.
     *
     * @param place where the value stands: what no table holds is told there
     */
    static <T> T lookedUpFor(Place place, Supplier<T> lookUp) {
        try {
            return lookUp.get();
        } catch (NotInTable e) {
            throw new Unanswerable(
                    place, Message.of(FiguresMessage.NOT_IN_TABLE, e.table(), e.wanted(), e.holds()), List.of());
        }
    }

    Diagnostic diagnostic() {
        return diagnostic;
    }
}
