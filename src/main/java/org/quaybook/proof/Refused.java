package org.quaybook.proof;

import org.quaybook.diag.Message;

/** Something cannot be read, used or written; the message says what and why. */
public final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Message reason;

    Refused(Message reason) {
        super(reason.key().key() + " " + reason.arguments());
        this.reason = reason;
    }

    /** What to tell. */
    public Message reason() {
        return reason;
    }
}
