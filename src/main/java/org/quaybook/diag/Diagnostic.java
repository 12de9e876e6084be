package org.quaybook.diag;

import java.util.List;

/**
 * One thing to tell the user.
 *
 * @param severity how much it matters
 * @param rule stable name of what was violated
 * @param place where it stands
 * @param excerpt the line of the file at that place; empty when there is none
 * @param message what is wrong
 * @param hints what to do about it
 */
public record Diagnostic(
        Severity severity, String rule, Place place, String excerpt, Message message, List<Message> hints) {

    public Diagnostic {
        hints = List.copyOf(hints);
    }
}
