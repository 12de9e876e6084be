package org.quaybook.pack.site;

import org.quaybook.diag.MessageKey;

/** What publishing has to say. */
public enum SiteMessage implements MessageKey {
    /** {0} folder, {1} why. */
    NOT_A_PACK("site.not-a-pack"),
    /** {0} files that are not as the manifest says. */
    PACK_ALTERED("site.pack-altered"),
    PACK_ALTERED_HINT("site.pack-altered.hint"),
    /** {0} fingerprint that the documents name, {1} that of the key given. */
    OTHER_KEY("site.other-key"),
    /** {0} revision, {1} its date, {2} the next revision. */
    ISSUED_OTHERWISE("site.issued-otherwise"),
    /** {0} revision of the pack, {1} revision that is published. */
    OLDER("site.older"),
    /** {0} revision that the pack follows, {1} revision that is published. */
    DOES_NOT_FOLLOW("site.does-not-follow"),
    /** {0} revision that the pack follows. */
    BEFORE_MISSING("site.before-missing"),
    /** {0} file of the published record that is not as issued. */
    RECORD_ALTERED("site.record-altered"),
    RECORD_ALTERED_HINT("site.record-altered.hint"),
    WITHDRAWN("site.withdrawn"),
    /** {0} code. */
    NOT_THERE("site.not-there"),
    /** {0} folder that holds something else. */
    NOT_A_SITE("site.not-a-site"),
    /** {0} folder. */
    BUSY("site.busy"),
    INDEX_INSIDE("site.index-inside"),
    /** {0} folder, {1} what the system said. */
    CANNOT_WRITE("site.cannot-write");

    private final String key;

    SiteMessage(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
