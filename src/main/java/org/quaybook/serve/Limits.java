package org.quaybook.serve;

import java.time.Duration;

/**
 * What nobody may use more of than this. The values are common practice, no source.
 *
 * @param headBytes bytes of request line and header fields together
 * @param connections connections at a time; further ones wait to be accepted
 * @param idle longest time without a byte
 * @param asking longest time from the opening of a connection, or from the last answer, to the end of a request
 * @param answering longest time for one answer
 * @param stopping longest time that answers under way get to finish when the server stops
 */
record Limits(int headBytes, int connections, Duration idle, Duration asking, Duration answering, Duration stopping) {

    /** A guide of some megabytes goes through a weak signal in ten minutes. */
    static final Limits USUAL = new Limits(
            8 * 1024,
            256,
            Duration.ofSeconds(20),
            Duration.ofSeconds(20),
            Duration.ofMinutes(10),
            Duration.ofSeconds(5));
}
