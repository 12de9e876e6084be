package org.quaybook.proof;

import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keys as text between dashes (RFC 7468). */
final class Pem {

    static final String PRIVATE_KEY = "PRIVATE KEY";
    static final String ENCRYPTED_PRIVATE_KEY = "ENCRYPTED PRIVATE KEY";
    static final String PUBLIC_KEY = "PUBLIC KEY";

    private static final int LINE = 64;

    private Pem() {}

    static String of(String label, byte[] der) {
        return "-----BEGIN " + label + "-----\n"
                + Base64.getMimeEncoder(LINE, new byte[] {'\n'}).encodeToString(der)
                + "\n-----END " + label + "-----\n";
    }

    /** The first block of a label in a text; empty if there is none. */
    static Optional<byte[]> read(String label, String text) {
        Matcher block = Pattern.compile(
                        "(?m)^-----BEGIN " + label + "-----\\s*([A-Za-z0-9+/=\\s]*?)\\s*^-----END " + label + "-----")
                .matcher(text);
        try {
            return block.find()
                    ? Optional.of(Base64.getDecoder().decode(block.group(1).replaceAll("\\s", "")))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
