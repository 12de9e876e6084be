package org.quaybook.job;

import java.util.List;
import org.quaybook.diag.Message;

/** A value that cannot be taken; whoever reads it knows where it stands and reports it there. */
final class Refusal extends Exception {

    private final transient Message reason;
    private final transient List<Message> hints;

    Refusal(Message reason, Message... hints) {
        this(reason, List.of(hints));
    }

    Refusal(Message reason, List<Message> hints) {
        super(reason.key().key(), null, false, false);
        this.reason = reason;
        this.hints = List.copyOf(hints);
    }

    Message reason() {
        return reason;
    }

    List<Message> hints() {
        return hints;
    }
}
