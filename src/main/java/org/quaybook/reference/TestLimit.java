package org.quaybook.reference;

import java.util.Optional;

/**
 * A measurement made at hand-over and what it must show.
 *
 * @param name the key
 * @param measurement what is measured
 * @param unit unit of the limits; {@code yes-no} for something that is only seen
 * @param least smallest value that passes; empty when there is none or the job decides it
 * @param most largest value that passes; empty as above
 * @param condition how to read the limits, or the rule that gives them; {@code -} when nothing needs saying
 * @param supply which supply must be on
 * @param citation where the row comes from
 */
public record TestLimit(
        String name,
        String measurement,
        String unit,
        Optional<Double> least,
        Optional<Double> most,
        String condition,
        Supply supply,
        Citation citation) {

    /** The supply that a measurement is made on. */
    public enum Supply {
        DC,
        INVERTER,
        SHORE,
        /** Once on the inverter and once on shore power. */
        BOTH
    }
}
