package org.quaybook.seal;

import java.security.GeneralSecurityException;
import java.util.Arrays;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Keys from a key: HKDF with SHA-256 (RFC 5869). */
final class Hkdf {

    private static final String HASH = "HmacSHA256";
    private static final int HASH_BYTES = 32;

    private Hkdf() {}

    /**
     * Extracts and expands.
     *
     * @param key the secret that all is derived from
     * @param salt not secret
     * @param info what the derived key is for
     * @param length bytes wanted, 1 to 8160
     */
    static byte[] derive(byte[] key, byte[] salt, byte[] info, int length) {
        return expand(mac(salt.length == 0 ? new byte[HASH_BYTES] : salt, key), info, length);
    }

    private static byte[] expand(byte[] pseudorandom, byte[] info, int length) {
        byte[] derived = new byte[0];
        byte[] block = new byte[0];
        for (byte counter = 1; derived.length < length; counter++) {
            block = mac(pseudorandom, block, info, new byte[] {counter});
            derived = joined(derived, block);
        }
        return Arrays.copyOf(derived, length);
    }

    /** HMAC-SHA-256 (RFC 2104) of the parts one after the other. */
    static byte[] mac(byte[] key, byte[]... parts) {
        try {
            Mac mac = Mac.getInstance(HASH);
            mac.init(new SecretKeySpec(key, HASH));
            for (byte[] part : parts) {
                mac.update(part);
            }
            return mac.doFinal();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has " + HASH, e);
        }
    }

    private static byte[] joined(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }
}
