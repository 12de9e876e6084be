package org.quaybook.proof;

import java.nio.ByteBuffer;

/**
 * What people compare instead of a public key: the first 60 bits of its SHA-256 as 12 symbols of the alphabet of record
 * codes (Crockford's base 32), in groups of four. Own definition.
 *
 * @param symbols the 12 symbols without hyphens
 */
public record Fingerprint(String symbols) {

    private static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int LENGTH = 12;
    private static final int BITS = 5;

    /** @param raw the 32 bytes of an Ed25519 public key (RFC 8032, section 5.1.5) */
    static Fingerprint of(byte[] raw) {
        long first = ByteBuffer.wrap(Digest.bytes(raw)).getLong() >>> (Long.SIZE - LENGTH * BITS);
        StringBuilder symbols = new StringBuilder();
        for (int left = LENGTH - 1; left >= 0; left--) {
            int value = (int) (first >>> (left * BITS)) & (ALPHABET.length() - 1);
            symbols.append(ALPHABET.charAt(value));
        }
        return new Fingerprint(symbols.toString());
    }

    /**
     * Of a public key as the installer profile states it.
     *
     * @throws IllegalArgumentException if it is not the base64 of 32 bytes
     */
    public static Fingerprint of(String publicKey) {
        return of(Base64Text.read(publicKey, VerifyingKey.LENGTH)
                .orElseThrow(() -> new IllegalArgumentException("no public key: " + publicKey)));
    }

    /** In groups of four, as printed. */
    @Override
    public String toString() {
        return symbols.replaceAll("(.{4})(?!$)", "$1-");
    }
}
