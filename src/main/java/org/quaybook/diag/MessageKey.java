package org.quaybook.diag;

/** Names a sentence of the message files. Enums of the package that raises the message implement it. */
public interface MessageKey {

    /** The key in the message files, lower case, words joined by dots and hyphens. */
    String key();
}
