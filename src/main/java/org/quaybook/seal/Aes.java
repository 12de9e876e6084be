package org.quaybook.seal;

import java.security.GeneralSecurityException;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/** AES in Galois/counter mode (NIST SP 800-38D) with a tag of 128 bits at the end of the cipher text. */
final class Aes {

    /** Bytes. */
    static final int NONCE = 12;

    private static final int TAG_BITS = 128;

    private Aes() {}

    /**
     * Encrypts.
     *
     * @param key 16 or 32 bytes
     * @param nonce 12 bytes, never used twice with this key for different content
     * @param beside what is authenticated with the content, and not encrypted
     */
    static byte[] encrypt(byte[] key, byte[] nonce, byte[] beside, byte[] content) {
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(Cipher.ENCRYPT_MODE, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(beside);
            return cipher.doFinal(content);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has AES in this mode", e);
        }
    }
}
