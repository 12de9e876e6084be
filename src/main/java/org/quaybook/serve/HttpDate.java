package org.quaybook.serve;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoField;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A moment as HTTP writes it, in one form, and reads it, in three (RFC 9110, 5.6.7). */
final class HttpDate {

    private static final DateTimeFormatter WRITTEN = form("EEE, dd MMM uuuu HH:mm:ss 'GMT'");
    private static final DateTimeFormatter ASCTIME = form("EEE MMM ppd HH:mm:ss uuuu");

    private HttpDate() {}

    static String write(Instant moment) {
        return WRITTEN.format(moment.atOffset(ZoneOffset.UTC));
    }

    /**
     * Reads a moment.
     *
     * @param now tells the century of a year of two digits: none is more than 50 years ahead
     * @return empty if it is none
     */
    static Optional<Instant> read(String text, Instant now) {
        for (DateTimeFormatter form : List.of(WRITTEN, withShortYear(now), ASCTIME)) {
            try {
                return Optional.of(LocalDateTime.parse(text, form).toInstant(ZoneOffset.UTC));
            } catch (DateTimeException otherForm) {
                // The next one may fit.
            }
        }
        return Optional.empty();
    }

    private static DateTimeFormatter withShortYear(Instant now) {
        return new DateTimeFormatterBuilder()
                .appendPattern("EEEE, dd-MMM-")
                .appendValueReduced(
                        ChronoField.YEAR, 2, 2, now.atOffset(ZoneOffset.UTC).getYear() - 49)
                .appendPattern(" HH:mm:ss 'GMT'")
                .toFormatter(Locale.US);
    }

    private static DateTimeFormatter form(String pattern) {
        return DateTimeFormatter.ofPattern(pattern, Locale.US);
    }
}
