package org.quaybook.job;

/** The magnetic trip band of an AC breaker (IEC 60898-1). */
public enum BreakerCurve {
    @Means("3 to 5 times the rating")
    B,
    @Means("5 to 10 times the rating")
    C,
    @Means("10 to 20 times the rating")
    D
}
