package org.quaybook.diag;

import java.util.List;

/**
 * A sentence not yet made: its key and what fills its numbered places.
 *
 * @param arguments texts, numbers, quantities with their rounding, or other messages
 */
public record Message(MessageKey key, List<Object> arguments) {

    public Message {
        arguments = List.copyOf(arguments);
    }

    public static Message of(MessageKey key, Object... arguments) {
        return new Message(key, List.of(arguments));
    }
}
