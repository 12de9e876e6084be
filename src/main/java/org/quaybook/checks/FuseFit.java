package org.quaybook.checks;

import org.quaybook.diag.MessageKey;

/** A fuse that would do, as part of a sentence. */
enum FuseFit implements MessageKey {
    OTHER_FAMILY;

    @Override
    public String key() {
        return "fuse-fit.other-family";
    }
}
