package org.quaybook.quantity;

/**
 * A time of day that was reckoned, for a reader.
 *
 * @param sinceMidnight at most 24 h
 */
public record ClockTime(TimeSpan sinceMidnight) {

    public ClockTime {
        if (sinceMidnight.hours() > 24) {
            throw new IllegalArgumentException("no clock shows " + sinceMidnight);
        }
    }
}
