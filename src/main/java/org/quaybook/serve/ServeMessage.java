package org.quaybook.serve;

import org.quaybook.diag.MessageKey;

/** Why a site is not served. */
public enum ServeMessage implements MessageKey {
    /** {0} what was named as the site. */
    NO_FOLDER("serve.no-folder"),
    /** {0} the folder, {1} the file that every site has. */
    NOT_A_SITE("serve.not-a-site"),
    /** {0} address, {1} port. */
    PORT_TAKEN("serve.port-taken"),
    PORT_TAKEN_HINT("serve.port-taken.hint"),
    /** {0} address, {1} port, {2} what the system said. */
    CANNOT_LISTEN("serve.cannot-listen");

    private final String key;

    ServeMessage(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
