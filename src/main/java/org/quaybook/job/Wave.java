package org.quaybook.job;

/** The form of the inverter output. */
public enum Wave {
    @Means("sine wave")
    SINE,
    @Means("stepped wave")
    MODIFIED
}
