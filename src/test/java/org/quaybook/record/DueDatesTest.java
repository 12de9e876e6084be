package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figures;
import org.quaybook.job.Job;
import org.quaybook.record.DueDates.Due;
import org.quaybook.text.Words;

/** What falls due: intervals are common practice, no source; the file's form is RFC 5545, judged by ical4j. */
class DueDatesTest {

    static final List<String> DEMOS = Demos.NAMES;

    @TempDir
    Path folder;

    private static Edition edition(Demos demo, String language) {
        Assessment it = demo.assessment();
        Job job = demo.job().in(language);
        Figures figures = Objects.requireNonNull(Figures.of(job, it.tables()).figures());
        return new Edition(Assessment.of(job, it.installer(), figures, it.tables()), Words.of(language));
    }

    private static List<Due> dues(Demos demo, String language) {
        return DueDates.of(edition(demo, language), edition(demo, "en-GB"));
    }

    private static String calendar(Demos demo, String language) {
        return new String(
                DueDates.calendar(PublicEdition.of(edition(demo, language)), PublicEdition.of(edition(demo, "en-GB"))),
                StandardCharsets.UTF_8);
    }

    private static LocalDate on(Demos demo, String id) {
        return dues(demo, "en-GB").stream()
                .filter(due -> due.id().equals(id))
                .map(Due::first)
                .findFirst()
                .orElseThrow();
    }

    /** The job is of 2026-05-14; its RCDs were timed and a drop was read the day before. */
    @Test
    void countedFromTheLastTestOrTheIssue() {
        Demos demo = Demos.of("lantern-moth");

        assertThat(on(demo, "rcd-button")).isEqualTo(LocalDate.of(2026, 6, 13));
        assertThat(on(demo, "rcd-trip")).isEqualTo(LocalDate.of(2027, 5, 13));
        assertThat(on(demo, "alarms")).isEqualTo(LocalDate.of(2026, 11, 14));
        assertThat(on(demo, "joints")).isEqualTo(LocalDate.of(2026, 11, 13));
        assertThat(dues(demo, "en-GB"))
                .anySatisfy(due -> {
                    assertThat(due.what()).isEqualTo("Replace the carbon monoxide alarm");
                    assertThat(due.first()).isEqualTo(LocalDate.of(2031, 3, 1));
                    assertThat(due.months()).isZero();
                })
                .isSortedAccordingTo(Comparator.comparing(Due::first));
    }

    /** Somebody who only changes a word has tested nothing. */
    @Test
    void aLaterRevisionPutsNoTestOff() throws IOException {
        Demos later = Demos.changed(
                "lantern-moth", folder, Map.of("revision: 1", "revision: 2", "date: 2026-05-14", "date: 2028-09-01"));

        for (String id : List.of("rcd-button", "rcd-trip", "joints")) {
            assertThat(on(later, id)).isEqualTo(on(Demos.of("lantern-moth"), id));
        }
    }

    /** New joints settle (common practice, no source); once somebody has looked again, a year is enough. */
    @Test
    void jointsLookedAtTwiceAreDueInAYear() throws IOException {
        String found = "tests:\n";
        Demos later = Demos.changed(
                "lantern-moth",
                folder,
                Map.of(
                        "date: 2026-05-14",
                        "date: 2026-11-20",
                        found,
                        found
                                + "  - { test: voltage-drop, of: [B1, B2], at: 90 A, result: 0.13 V, on: 2026-11-20 }\n"));

        assertThat(on(later, "joints")).isEqualTo(LocalDate.of(2027, 11, 20));
    }

    /** Another language or a moved date replaces an event in a calendar that has it; it adds none. */
    @Test
    void idsStay() throws IOException {
        Demos demo = Demos.of("lantern-moth");
        Demos later =
                Demos.changed("lantern-moth", folder, Map.of("revision: 1", "revision: 2", "2031-03-01", "2032-03-01"));
        List<String> ids = dues(demo, "en-GB").stream().map(Due::id).toList();

        assertThat(ids).doesNotHaveDuplicates();
        assertThat(dues(demo, "nl").stream().map(Due::id)).containsExactlyElementsOf(ids);
        assertThat(dues(later, "en-GB").stream().map(Due::id)).containsExactlyElementsOf(ids);
        assertThat(calendar(later, "en-GB")).contains("SEQUENCE:2").doesNotContain("SEQUENCE:1\r");
    }

    @Test
    void theYearsWorkSaysThatItIsTheElectricians() {
        assertThat(dues(Demos.of("lantern-moth"), "en-GB"))
                .filteredOn(due -> due.months() == 12)
                .hasSize(2)
                .allSatisfy(due -> assertThat(due.what()).startsWith("Every year, by a qualified electrician: "));
    }

    @ParameterizedTest
    @FieldSource("DEMOS")
    void isACalendarAndNamesNobody(String name) throws IOException, ParserException {
        Demos demo = Demos.of(name);
        for (String language : List.of("en-GB", "de", "fr")) {
            String text = calendar(demo, language);
            Calendar read = new CalendarBuilder().build(new StringReader(text));
            assertThat(read.validate().getEntries()).isEmpty();
            assertThat(read.getComponents("VEVENT"))
                    .hasSize(dues(demo, language).size());
            String unfolded = text.replace("\r\n ", "");
            assertThat(unfolded)
                    .doesNotContain(Objects.requireNonNull(demo.job().owner()).name());
        }
    }

    /** Calendars are kept on other people's servers, so their link does not open a sealed record. */
    @Test
    void theLinkHasNoKey() throws IOException {
        String text = calendar(Demos.sealed("lantern-moth", folder), "en-GB").replace("\r\n ", "");

        assertThat(text)
                .contains("/81EZD3SWFGV4RK1ZH0YDQ\r\n")
                .doesNotContain(Demos.SEAL_KEY, Demos.SEAL_KEY.replace("-", ""));
    }
}
