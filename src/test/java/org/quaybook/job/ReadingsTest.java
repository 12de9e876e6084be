package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.quaybook.diag.Diagnostic;

/** Readings of a later visit, read like a job file. */
class ReadingsTest {

    private static final Job JOB =
            Objects.requireNonNull(JobReader.parse(JobFiles.text("full.yaml"), "full.yaml", JobFiles.VOCABULARY)
                    .job());

    private static ReadingsReading read(String text) {
        return JobReader.parseReadings(text, "visit.yaml", JOB);
    }

    private static List<String> rules(String text) {
        return read(text).problems().stream().map(Diagnostic::rule).toList();
    }

    @Test
    void testsTakeDayTesterAndInstrumentOfTheVisit() {
        ReadingsReading reading = read("""
                job: 26-118
                on: 2027-05-14
                by: K. Sorrel
                instrument: ML-08
                tests:
                  - { test: voltage-drop, of: [B1, B2], at: 60 A, result: 0.11 V }
                  - { test: insulation, result: 20 MΩ, on: 2027-05-15, by: L. Sorrel, instrument: ML-09 }
                """);
        assertThat(reading.problems()).isEmpty();
        List<TestResult> tests = Objects.requireNonNull(reading.readings()).tests();
        assertThat(tests.get(0).on()).isEqualTo(LocalDate.of(2027, 5, 14));
        assertThat(tests.get(0).by()).isEqualTo("K. Sorrel");
        assertThat(tests.get(0).instrument()).isEqualTo("ML-08");
        assertThat(tests.get(1).on()).isEqualTo(LocalDate.of(2027, 5, 15));
        assertThat(tests.get(1).by()).isEqualTo("L. Sorrel");
        assertThat(tests.get(1).instrument()).isEqualTo("ML-09");
    }

    /** Every mistake in one run, each where it stands: line and column from 1. */
    @Test
    void saysAllThatIsWrongAtOnce() {
        ReadingsReading reading = read("""
                job: 26-118
                on: 14.5.2027
                tester: K. Sorrel
                tests:
                  - { test: voltage-drop, of: [B1, B9], at: 60 A, result: 0.11 V }
                  - { test: voltage-drop, of: [B1], at: 60 A, result: 0.11 A }
                  - { test: joint-drop, of: [bank], at: 60 A, result: 6 mV }
                """);
        assertThat(reading.readings()).isNull();
        assertThat(reading.problems())
                .extracting(problem -> problem.place() + " " + problem.rule())
                .containsExactly(
                        "visit.yaml:2:5 job.bad-date",
                        "visit.yaml:3:1 job.unknown-key",
                        "visit.yaml:5:36 job.name-unknown",
                        "visit.yaml:6:55 job.test-reading-kind",
                        "visit.yaml:7:5 job.joint-parts");
    }

    @Test
    void readingsOfAnotherJobOrOfADayBeforeAreRefused() {
        assertThat(rules("{ job: 26-119, on: 2027-05-14, tests: [] }")).containsExactly("job.readings-of-other-job");
        assertThat(rules("{ job: 26-118, on: 2026-05-13, tests: [] }")).containsExactly("job.visit-before-handover");
        assertThat(rules("{ job: 26-118, tests: [] }")).containsExactly("job.missing-key");
    }

    @Test
    void aMissingFileIsSaid() {
        assertThat(JobReader.readings(Path.of("no-such-visit.yaml"), JOB, JobFiles.VOCABULARY)
                        .problems())
                .extracting(Diagnostic::rule)
                .containsExactly("job.file-missing");
    }
}
