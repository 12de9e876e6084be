package org.quaybook.proof;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Optional;
import java.util.Set;
import org.quaybook.diag.Message;

/**
 * The signature of a manifest as {@code issue.sig} holds it: a JSON object with {@code algorithm} (always
 * {@code Ed25519}), {@code publicKey} and {@code signature}, the last two in base64. It is over the exact bytes of
 * issue.json.
 */
public final class Signing {

    private static final String ALGORITHM = "Ed25519";
    private static final int LENGTH = 64;
    private static final Set<String> KEYS = Set.of("algorithm", "publicKey", "signature");

    private final VerifyingKey key;
    private final byte[] signature;

    private Signing(VerifyingKey key, byte[] signature) {
        this.key = key;
        this.signature = signature;
    }

    /**
     * Signs a manifest.
     *
     * @param manifest the bytes of issue.json
     * @return the bytes of issue.sig; the same manifest and key give the same bytes
     */
    public static byte[] sign(byte[] manifest, PrivateKeyFile key) {
        return JsonText.of(JsonNodeFactory.instance
                .objectNode()
                .put("algorithm", ALGORITHM)
                .put("publicKey", key.verifyingKey().base64())
                .put("signature", Base64Text.of(key.sign(manifest))));
    }

    /**
     * Reads issue.sig strictly.
     *
     * @throws Refused saying what is wrong with it
     */
    static Signing read(byte[] content) throws Refused {
        JsonNode root = JsonText.read(content);
        JsonText.holdsExactly(root, KEYS);
        value(root, "algorithm", ALGORITHM);
        byte[] raw = bytes(root, "publicKey", VerifyingKey.LENGTH);
        return new Signing(VerifyingKey.of(raw), bytes(root, "signature", LENGTH));
    }

    private static String value(JsonNode root, String key, String form) throws Refused {
        return JsonText.text(root, key, form)
                .orElseThrow(() -> new Refused(
                        Message.of(ProofMessage.VALUE, key, root.path(key).toString())));
    }

    private static byte[] bytes(JsonNode root, String key, int length) throws Refused {
        Optional<byte[]> bytes = Base64Text.read(value(root, key, "[A-Za-z0-9+/=]+"), length);
        return bytes.orElseThrow(() ->
                new Refused(Message.of(ProofMessage.VALUE, key, root.path(key).toString())));
    }

    /** The key that the signature says it is by; trust it only if {@link #isOf} and somebody knows its owner. */
    VerifyingKey key() {
        return key;
    }

    /** Whether these are the bytes that were signed. */
    boolean isOf(byte[] manifest) {
        return key.signed(manifest, signature);
    }
}
