package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.DemoJobs;
import org.quaybook.diag.Place;

/** Data protection: what belongs to the owner stays with the installer. */
class HandoverCopyTest {

    private static final Vocabulary VOCABULARY = new Vocabulary(
            List.of("iso-13297", "abyc-e11", "caravan", "cabin"), List.of("en-GB", "en-US", "de", "fr", "nl", "es"));

    private static Job read(String text) {
        JobReading reading = JobReader.parse(text, "", VOCABULARY);
        return Objects.requireNonNull(reading.job(), reading.problems()::toString);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void keepsEveryOtherLineAsItIs(String demo) {
        String text = JobFiles.text(Path.of("demo-jobs", demo, "job.yaml"));
        Job job = read(text);
        String copy = HandoverCopy.of(text, job, VOCABULARY).orElseThrow();
        Owner owner = Objects.requireNonNull(job.owner());
        assertThat(copy).doesNotContain(owner.name()).doesNotContainPattern("(?m)^owner:");
        assertThat(text.lines().toList())
                .containsSubsequence(
                        copy.lines().filter(line -> !line.contains("–")).toList());
        assertThat(copy.lines().count()).isGreaterThan(text.lines().count() - 12);
        assertThat(read(copy).bank())
                .usingRecursiveComparison()
                .ignoringFieldsOfTypes(Place.class)
                .isEqualTo(job.bank());
    }

    @Test
    void leavesOutAccountsBerthAndEveryMention() {
        String text = JobFiles.text(Path.of("src/test/resources/jobs/full.yaml"));
        String copy = HandoverCopy.of(text, read(text), VOCABULARY).orElseThrow();
        for (String secret : Arrays.asList("Barnaby", "7700 900123", "barnaby@example.org", "Gherkin Basin")) {
            assertThat(text).contains(secret);
            assertThat(copy).doesNotContain(secret);
        }
        assertThat(copy).doesNotContainPattern("(?m)^(owner|accounts):").contains("name: Slow Pickle");
    }

    /** Better no copy than one that tells too much. */
    @Test
    void refusesAFileThatItCannotPart() {
        String text = JobFiles.text(Path.of("demo-jobs", DemoJobs.ALL.get(0), "job.yaml"));
        String quoted = text.replaceFirst("(?m)^owner:", "\"owner\":");
        assertThat(HandoverCopy.of(quoted, read(quoted), VOCABULARY)).isEmpty();
    }
}
