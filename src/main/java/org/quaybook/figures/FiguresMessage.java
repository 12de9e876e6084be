package org.quaybook.figures;

import org.quaybook.diag.MessageKey;

/** What the translator from job to figures has to say. */
public enum FiguresMessage implements MessageKey {
    /** {0} path of a value that nobody has seen. */
    NEEDS_VALUE("figures.needs-value"),
    NEEDS_VALUE_HINT("figures.needs-value.hint"),
    /** {0} id of a cable that no conductor of the rulebook fits. */
    NO_CONDUCTOR("figures.no-conductor"),
    NO_CONDUCTOR_HINT("figures.no-conductor.hint"),
    /** {0} path, {1} what was looked up, {2} what the table holds. */
    NOT_IN_TABLE("figures.not-in-table"),
    /** {0} id of a string or branch fuse, {1} key that it cannot be judged without. */
    FUSE_OPEN("figures.fuse-open"),
    FUSE_OPEN_HINT("figures.fuse-open.hint"),
    /** {0} where it must stand. */
    NO_CABLES("figures.no-cables");

    private final String key;

    FiguresMessage(String key) {
        this.key = key;
    }

    @Override
    public String key() {
        return key;
    }
}
