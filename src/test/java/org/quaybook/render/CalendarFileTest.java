package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.Test;
import org.quaybook.render.CalendarFile.Event;

/** RFC 5545, read and validated by ical4j; limits of its section 3.1 checked on the bytes (sections from memory). */
class CalendarFileTest {

    private static final CalendarFile FILE =
            new CalendarFile("-//Example//Days//EN", LocalDate.of(2026, 5, 14), 7, "https://example.org/r/CODE");

    private static final String LONG = "Überprüfen; „Klemmen“, 12 Nm \\ Schlüssel 🔧 ".repeat(6) + "\nzweite Zeile";

    private static String text(Event... events) {
        return new String(FILE.of(List.of(events)), StandardCharsets.UTF_8);
    }

    private static Calendar read(String text) throws IOException, ParserException {
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        assertThat(calendar.validate().getEntries()).isEmpty();
        return calendar;
    }

    private static VEvent only(Event event) throws IOException, ParserException {
        List<VEvent> events = read(text(event)).getComponents("VEVENT");
        assertThat(events).hasSize(1);
        return events.get(0);
    }

    @Test
    void whatGoesInIsWhatAReaderFinds() throws IOException, ParserException {
        VEvent event = only(new Event("a-1", LocalDate.of(2027, 3, 1), 0, LONG, "x,y;z"));

        assertThat(event.getSummary().getValue()).isEqualTo(LONG);
        assertThat(event.getDescription().getValue()).isEqualTo("x,y;z");
        assertThat(event.getUid().orElseThrow().getValue()).isEqualTo("a-1");
        assertThat(event.getSequence().getSequenceNo()).isEqualTo(7);
        assertThat(event.<LocalDate>getDateTimeStart().getDate()).isEqualTo(LocalDate.of(2027, 3, 1));
        assertThat(event.getDateTimeStamp().getValue()).isEqualTo("20260514T000000Z");
    }

    @Test
    void noLineIsLongerThan75OctetsAndNoCharacterIsCut() {
        String text = text(new Event("a-1", LocalDate.of(2027, 3, 1), 0, LONG, LONG));

        assertThat(text).endsWith("\r\n").doesNotContain("\uFFFD");
        assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(text.split("\r\n"))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
        assertThat(text.lines().filter(line -> line.startsWith(" "))).hasSizeGreaterThan(5);
    }

    /** The 31st would come seven times a year: a month without the day is left out (RFC 5545, 3.3.10). */
    @Test
    void aMonthlyDayComesInEveryMonth() throws IOException, ParserException {
        VEvent event = only(new Event("a-1", LocalDate.of(2027, 1, 31), 1, "s", "d"));

        assertThat(days(event, LocalDate.of(2027, 12, 31)))
                .hasSize(12)
                .allSatisfy(day -> assertThat(day.getDayOfMonth()).isEqualTo(28));
    }

    @Test
    void halfYearlyAndYearly() throws IOException, ParserException {
        assertThat(days(only(new Event("a-1", LocalDate.of(2026, 11, 14), 6, "s", "d")), LocalDate.of(2027, 12, 31)))
                .containsExactly(LocalDate.of(2026, 11, 14), LocalDate.of(2027, 5, 14), LocalDate.of(2027, 11, 14));
        assertThat(days(only(new Event("a-1", LocalDate.of(2028, 2, 29), 12, "s", "d")), LocalDate.of(2030, 12, 31)))
                .containsExactly(LocalDate.of(2028, 2, 28), LocalDate.of(2029, 2, 28), LocalDate.of(2030, 2, 28));
    }

    private static List<LocalDate> days(VEvent event, LocalDate until) {
        LocalDate first = event.<LocalDate>getDateTimeStart().getDate();
        net.fortuna.ical4j.model.property.RRule<LocalDate> rule = event.<net.fortuna.ical4j.model.property.RRule<
                                LocalDate>>
                        getProperty("RRULE")
                .orElseThrow();
        return rule.getRecur().getDates(first, first, until);
    }
}
