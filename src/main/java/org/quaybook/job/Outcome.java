package org.quaybook.job;

/** How a test without a reading ended. */
public enum Outcome {
    @Means("as it should be")
    PASSED,
    @Means("not as it should be")
    FAILED
}
