package org.quaybook.cli;

/** Exit codes. */
final class Exit {
    static final int DONE = 0;
    static final int FORBIDDEN = 1;
    static final int BAD_INPUT = 2;
    static final int NOT_WRITTEN = 3;
    static final int OUR_FAULT = 4;

    private Exit() {}
}
