package org.quaybook.proof;

import java.util.Base64;
import java.util.Optional;

/** Base64 (RFC 4648, section 4) in its one canonical form. */
final class Base64Text {

    private Base64Text() {}

    static String of(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    /** The bytes; empty unless the text is exactly what {@link #of} makes of so many bytes. */
    static Optional<byte[]> read(String text, int length) {
        try {
            byte[] bytes = Base64.getDecoder().decode(text);
            return bytes.length == length && of(bytes).equals(text) ? Optional.of(bytes) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
