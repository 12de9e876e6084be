package org.quaybook.checks;

import org.quaybook.diag.Message;
import org.quaybook.diag.MessageKey;
import org.quaybook.quantity.Stated;

/** What the rest of a bank carries when one block opens, for as many as there are. */
enum OtherBlocks implements MessageKey {
    ONE,
    SEVERAL;

    @Override
    public String key() {
        return "other-blocks." + (this == ONE ? "one" : "several");
    }

    /**
     * @param strings of the bank, 2 or more
     * @param carried by each of the others
     * @param limit at which its protection opens
     */
    static Message of(int strings, Stated carried, Stated limit) {
        return Message.of(strings == 2 ? ONE : SEVERAL, carried, limit);
    }
}
