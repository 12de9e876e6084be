package org.quaybook.pack.changes;

/** A signed pack cannot be read, so what a new one changes cannot be told. */
public final class NotComparable extends Exception {
    private static final long serialVersionUID = 1;

    private final String at;

    NotComparable(String at, Exception cause) {
        super(at, cause);
        this.at = at;
    }

    /** The pack's folder. */
    public String at() {
        return at;
    }
}
