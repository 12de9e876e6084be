package org.quaybook.trust;

import java.io.IOException;

/** The same to the end: each job text that can be calculated is made into all documents of a pack. */
public final class WholeRoadTarget {

    private WholeRoadTarget() {}

    public static void fuzzerTestOneInput(byte[] job) throws IOException {
        JobTextTarget.tried(job, () -> true);
    }
}
