package org.quaybook.render;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * Days for a calendar program (RFC 5545, section numbers from memory): all-day events, once or again and again, that keep
 * nobody's day occupied.
 *
 * @param product what made the file, for PRODID
 * @param stamp day of the information; nothing here reads a clock
 * @param sequence number of the issue: a program that has an event with a lower one replaces it (3.8.7.4)
 * @param link address that each event points to
 */
public record CalendarFile(String product, LocalDate stamp, int sequence, String link) {

    /** Octets a line may have, its end not counted (3.1). */
    private static final int LONGEST_LINE = 75;

    /** A day that every month has: a month without the day of a repeated event would leave it out (3.3.10). */
    private static final int LAST_DAY_OF_EVERY_MONTH = 28;

    /**
     * A day.
     *
     * @param id unique among all events anywhere, the same in every issue
     * @param first the day, or the first of them; one that comes again begins on the 28th at the latest
     * @param months after how many months it comes again; 0 for once
     */
    public record Event(String id, LocalDate first, int months, String summary, String description) {
        public Event {
            if (months > 0 && first.getDayOfMonth() > LAST_DAY_OF_EVERY_MONTH) {
                first = first.withDayOfMonth(LAST_DAY_OF_EVERY_MONTH);
            }
        }

        private String rule() {
            return months % 12 == 0 ? "FREQ=YEARLY" + interval(months / 12) : "FREQ=MONTHLY" + interval(months);
        }

        private static String interval(int every) {
            return every == 1 ? "" : ";INTERVAL=" + every;
        }
    }

    /** The file. */
    public byte[] of(List<Event> events) {
        StringBuilder text = new StringBuilder();
        line(text, "BEGIN", "VCALENDAR");
        line(text, "VERSION", "2.0");
        line(text, "PRODID", escaped(product));
        for (Event event : events) {
            line(text, "BEGIN", "VEVENT");
            line(text, "UID", escaped(event.id()));
            line(text, "DTSTAMP", day(stamp) + "T000000Z");
            line(text, "SEQUENCE", String.format(Locale.ROOT, "%d", sequence));
            line(text, "DTSTART;VALUE=DATE", day(event.first()));
            if (event.months() > 0) {
                line(text, "RRULE", event.rule());
            }
            line(text, "SUMMARY", escaped(event.summary()));
            line(text, "DESCRIPTION", escaped(event.description()));
            line(text, "URL", link);
            line(text, "TRANSP", "TRANSPARENT");
            line(text, "END", "VEVENT");
        }
        line(text, "END", "VCALENDAR");
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String day(LocalDate day) {
        return DateTimeFormatter.BASIC_ISO_DATE.format(day);
    }

    /** A value of type TEXT (3.3.11). */
    private static String escaped(String text) {
        return text.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replaceAll("\\R", "\\\\n")
                .replaceAll("\\p{Cc}", "");
    }

    /** Folded between characters, never inside one, each further line begun with a space (3.1). */
    private static void line(StringBuilder text, String name, String value) {
        int used = 0;
        String line = name + ":" + value;
        for (int i = 0; i < line.length(); i = line.offsetByCodePoints(i, 1)) {
            String character = Character.toString(line.codePointAt(i));
            int octets = character.getBytes(StandardCharsets.UTF_8).length;
            if (used + octets > LONGEST_LINE) {
                text.append("\r\n ");
                used = 1;
            }
            text.append(character);
            used += octets;
        }
        text.append("\r\n");
    }
}
