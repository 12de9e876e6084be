package org.quaybook.proof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.InvalidKeyException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.SignatureException;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.quaybook.diag.Message;

/** The public half of an installer's key: Ed25519 (RFC 8032). */
public final class VerifyingKey {

    /** Bytes of a public key. */
    static final int LENGTH = 32;

    private static final int SIGNATURE_LENGTH = 64;

    /** What a SubjectPublicKeyInfo says before the 32 bytes of the key (RFC 8410, section 4). */
    private static final byte[] SPKI = HexFormat.of().parseHex("302a300506032b6570032100");

    private static final long LARGEST_FILE = 64 << 10;

    private final byte[] raw;
    private final PublicKey key;

    private VerifyingKey(byte[] raw, PublicKey key) {
        this.raw = raw;
        this.key = key;
    }

    /**
     * A key from its 32 bytes.
     *
     * @throws Refused if they name no point of the curve
     */
    static VerifyingKey of(byte[] raw) throws Refused {
        try {
            PublicKey key = KeyFactory.getInstance("Ed25519").generatePublic(new X509EncodedKeySpec(spki(raw)));
            VerifyingKey made = new VerifyingKey(raw.clone(), key);
            made.verify(new byte[0], new byte[SIGNATURE_LENGTH]);
            return made;
        } catch (InvalidKeyException e) {
            throw new Refused(Message.of(ProofMessage.NOT_A_PUBLIC_KEY));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java since 15 has Ed25519", e);
        }
    }

    private static boolean isSpki(byte[] der) {
        return der.length == SPKI.length + LENGTH && Arrays.equals(der, 0, SPKI.length, SPKI, 0, SPKI.length);
    }

    private static byte[] spki(byte[] raw) {
        byte[] whole = Arrays.copyOf(SPKI, SPKI.length + LENGTH);
        System.arraycopy(raw, 0, whole, SPKI.length, LENGTH);
        return whole;
    }

    /**
     * Reads a key: PEM, or base64 of the 32 bytes or of the SubjectPublicKeyInfo.
     *
     * @throws Refused if it is none of these, or no Ed25519 key
     */
    public static VerifyingKey parse(String text) throws Refused {
        String trimmed = text.strip();
        Optional<byte[]> whole = Pem.read(Pem.PUBLIC_KEY, trimmed)
                .or(() -> Base64Text.read(trimmed, SPKI.length + LENGTH))
                .filter(VerifyingKey::isSpki);
        byte[] raw = whole.map(der -> Arrays.copyOfRange(der, SPKI.length, der.length))
                .or(() -> Base64Text.read(trimmed, LENGTH))
                .orElseThrow(() -> new Refused(Message.of(ProofMessage.NOT_A_PUBLIC_KEY)));
        return of(raw);
    }

    /**
     * Reads the file of a key.
     *
     * @throws Refused if it cannot be read, or as {@link #parse}
     */
    public static VerifyingKey read(Path file) throws Refused {
        try {
            if (Files.size(file) <= LARGEST_FILE) {
                return parse(Files.readString(file));
            }
        } catch (IOException e) {
            throw new Refused(Message.of(ProofMessage.KEY_UNREADABLE, file.toString()));
        }
        throw new Refused(Message.of(ProofMessage.NOT_A_PUBLIC_KEY));
    }

    /** Whether this key signed the message; a signature of another length or form did not. */
    public boolean signed(byte[] message, byte[] signature) {
        try {
            return signature.length == SIGNATURE_LENGTH && verify(message, signature);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the key was tried when it was made", e);
        }
    }

    private boolean verify(byte[] message, byte[] signature) throws GeneralSecurityException {
        Signature verifier = Signature.getInstance("Ed25519");
        verifier.initVerify(key);
        verifier.update(message);
        try {
            return verifier.verify(signature);
        } catch (SignatureException e) {
            // So the JDK says that a number of the signature is out of its range (RFC 8032, section 5.1.7).
            return false;
        }
    }

    /** Base64 of the 32 bytes, as the installer profile and issue.sig state it. */
    public String base64() {
        return Base64Text.of(raw);
    }

    /** The content of a public key file: SubjectPublicKeyInfo (RFC 8410) in PEM. */
    public String pem() {
        return Pem.of(Pem.PUBLIC_KEY, spki(raw));
    }

    public Fingerprint fingerprint() {
        return Fingerprint.of(raw);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VerifyingKey key && Arrays.equals(raw, key.raw);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(raw);
    }

    @Override
    public String toString() {
        return fingerprint().toString();
    }
}
