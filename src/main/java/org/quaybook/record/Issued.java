package org.quaybook.record;

import java.time.LocalDate;

/**
 * An earlier revision of a record.
 *
 * @param revision its number
 * @param date its date
 * @param sha256 of its manifest, in hexadecimal digits
 */
public record Issued(int revision, LocalDate date, String sha256) {

    /** The folder below the record where its files stay. */
    public String folder() {
        return "revision-" + revision;
    }
}
