package org.quaybook.proof;

import org.quaybook.diag.MessageKey;

/** What verifying, signing and keeping keys have to say. */
public enum ProofMessage implements MessageKey {
    // What is wrong with a manifest or a signature.
    NOT_UTF8("proof.not-utf8"),
    /** {0} line. */
    NOT_JSON("proof.not-json"),
    /** {0} line. */
    KEY_TWICE("proof.key-twice"),
    /** {0} keys found, {1} keys due. */
    KEYS("proof.keys"),
    /** {0} key, {1} what stands there. */
    VALUE("proof.value"),
    /** {0} path. */
    PATH("proof.path"),
    /** {0} path, {1} what stands there. */
    NO_DIGEST("proof.no-digest"),

    // What was altered.
    ALTERED("proof.altered"),
    /** {0} name of the file that holds the same as issued. */
    SWAPPED("proof.swapped"),
    /** {0} revision that the content is of. */
    OLDER("proof.older"),
    MISSING("proof.missing"),
    ADDED("proof.added"),
    /** {0} name of the file that holds the same as issued. */
    ADDED_COPY("proof.added-copy"),
    NOT_PLAIN("proof.not-plain"),
    /** {0} most MiB. */
    TOO_LARGE("proof.too-large"),
    /** {0} what the system said. */
    UNREADABLE("proof.unreadable"),
    /** {0} status of HTTP. */
    STATUS("proof.status"),
    OUT_OF_TIME("proof.out-of-time"),
    NO_MANIFEST("proof.no-manifest"),
    /** {0} what is wrong with it. */
    BAD_MANIFEST("proof.bad-manifest"),
    UNSIGNED("proof.unsigned"),
    /** {0} what is wrong with it. */
    BAD_SIGNATURE("proof.bad-signature"),
    /** {0} fingerprint of the key that the signature names. */
    WRONG_SIGNATURE("proof.wrong-signature"),
    /** {0} fingerprint of the signer. */
    OTHER_KEY("proof.other-key"),
    /** {0} fingerprint of the signer, {1} that of the others. */
    KEYS_DIFFER("proof.keys-differ"),
    /** {0} fingerprint of the signer, {1} that which the documents name. */
    NOT_THE_NAMED_KEY("proof.not-the-named-key"),
    /** {0} revision, {1} revision that it names as the one before. */
    CHAIN_NUMBERS("proof.chain-numbers"),
    /** {0} revision that follows it. */
    CHAIN_BROKEN("proof.chain-broken"),
    /** {0} revision that follows it. */
    REVISION_MISSING("proof.revision-missing"),
    NOT_IN_CHAIN("proof.not-in-chain"),
    /** {0} revision of the folder's name, {1} that of its manifest. */
    REVISION_NUMBER("proof.revision-number"),
    /** {0} code found, {1} code of the newest revision. */
    OTHER_RECORD("proof.other-record"),
    /** {0} number found, {1} number of the newest revision. */
    OTHER_JOB("proof.other-job"),
    /** {0} name of the folder, {1} code in the manifest. */
    OTHER_FOLDER("proof.other-folder"),
    /** {0} key, {1} what figures.json says, {2} what the manifest says. */
    CONTRADICTS("proof.contradicts"),

    // Notes.
    ADDED_UNSEEN("proof.added-unseen"),
    /** {0} revision, {1} the one before. */
    CHAIN_ELSEWHERE("proof.chain-elsewhere"),
    /** {0} record, {1} its first revision here. */
    CHAIN_BEGINS("proof.chain-begins"),
    /** {0} names. */
    NOT_JUDGED("proof.not-judged"),
    /** {0} folder of the record. */
    WITHDRAWN("proof.withdrawn"),

    // What cannot be verified at all.
    /** {0} what was given. */
    NO_FOLDER("proof.no-folder"),
    /** {0} what was given. */
    NOTHING_ISSUED("proof.nothing-issued"),
    /** {0} what was given. */
    NOT_AN_ADDRESS("proof.not-an-address"),
    /** {0} address, {1} what the system said. */
    UNREACHABLE("proof.unreachable"),

    // Keys.
    NOT_A_PUBLIC_KEY("proof.not-a-public-key"),
    /** {0} file. */
    KEY_UNREADABLE("proof.key-unreadable"),
    /** {0} file. */
    NOT_A_PRIVATE_KEY("proof.not-a-private-key"),
    /** {0} file. */
    WRONG_PASSPHRASE("proof.wrong-passphrase"),
    PASSPHRASE_SYMBOLS("proof.passphrase-symbols"),
    /** {0} file. */
    KEY_EXISTS("proof.key-exists"),
    /** {0} file, {1} folder. */
    KEY_PLACE("proof.key-place"),
    /** {0} file. */
    KEY_NOT_WRITTEN("proof.key-not-written");

    private final String key;

    ProofMessage(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
