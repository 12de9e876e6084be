package org.quaybook.pack;

import org.quaybook.diag.MessageKey;

/** What the road has to say besides what its stages say. */
public enum PackMessage implements MessageKey {
    /** {0} the logo's file name. */
    LOGO_UNREADABLE("pack.logo-unreadable"),
    /** {0} folder, {1} what the system said. */
    CANNOT_WRITE("pack.cannot-write"),
    /** {0} folder that holds something else than a pack. */
    NOT_A_PACK("pack.not-a-pack"),
    NOT_A_PACK_HINT("pack.not-a-pack.hint"),
    /** {0} what stands where a file is to be written. */
    NOT_A_FILE("pack.not-a-file");

    private final String key;

    PackMessage(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
