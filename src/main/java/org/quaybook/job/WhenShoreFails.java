package org.quaybook.job;

/** What an automatic changeover does when shore power fails. */
public enum WhenShoreFails {
    @Means("the inverter feeds the circuits at once")
    TAKE_OVER,
    @Means("the inverter stays off until somebody starts it")
    STAY_OFF
}
