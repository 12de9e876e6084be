package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.diag.Place;

/** Data protection: nothing of the former owner goes on; nothing of the installation is lost. */
class SoldCopyTest {

    private static final Vocabulary VOCABULARY = new Vocabulary(
            List.of("iso-13297", "abyc-e11", "caravan", "cabin"), List.of("en-GB", "en-US", "de", "fr", "nl", "es"));

    private static final LocalDate SALE = LocalDate.of(2029, 2, 3);

    private static Job read(String text) {
        JobReading reading = JobReader.parse(text, "", VOCABULARY);
        return Objects.requireNonNull(reading.job(), reading.problems()::toString);
    }

    private static String sold(String text) {
        return SoldCopy.of(text, read(text), 9, SALE, VOCABULARY).orElseThrow();
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void keepsTheInstallationAndItsCode(String demo) {
        String text = JobFiles.text(Path.of("demo-jobs", demo, "job.yaml"));
        Job before = read(text);
        String copy = sold(text);
        Job after = read(copy);

        assertThat(after.job().revision()).isEqualTo(9);
        assertThat(after.job().date()).isEqualTo(SALE);
        assertThat(after.job().record()).isEqualTo(before.job().record());
        assertThat(List.of(after.bank(), after.inverter(), after.cables(), after.fuses(), after.settings()))
                .usingRecursiveComparison()
                .ignoringFieldsOfTypes(Place.class)
                .isEqualTo(
                        List.of(before.bank(), before.inverter(), before.cables(), before.fuses(), before.settings()));
        assertThat(after.tests()).hasSameSizeAs(before.tests());
        assertThat(text.lines().toList())
                .containsSubsequence(copy.lines()
                        .filter(line -> !line.contains("–"))
                        .filter(line -> !line.matches("  (revision|date):.*"))
                        .toList());
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void nothingOfTheFormerOwnerGoesOn(String demo) {
        String text = JobFiles.text(Path.of("demo-jobs", demo, "job.yaml"));
        Job before = read(text);
        Job after = read(sold(text));
        Owner owner = Objects.requireNonNull(before.owner());

        assertThat(after.owner()).isNull();
        assertThat(after.craft().berth()).isNull();
        assertThat(after.accounts()).isEmpty();
        assertThat(after.policyConditions()).isEmpty();
        assertThat(after.rehearsal()).isNull();
        Stream.of(owner.name(), owner.phone(), owner.email(), before.craft().berth())
                .filter(Objects::nonNull)
                .forEach(secret -> assertThat(sold(text)).doesNotContain(secret));
    }

    /** The Dutch half of a line would still tell the berth. */
    @Test
    void translationsOfWhatWentGoToo() {
        String text = JobFiles.text(Path.of("demo-jobs", "lantern-moth", "job.yaml"));

        assertThat(text).contains("Nergensdok").contains("Geen verwarmingstoestel");
        assertThat(sold(text))
                .doesNotContain("Nergensdok", "Geen verwarmingstoestel")
                .contains("stern locker = achterpiek");
        assertThat(HandoverCopy.of(text, read(text), VOCABULARY).orElseThrow())
                .doesNotContain("Nergensdok")
                .contains("Geen verwarmingstoestel");
    }

    @Test
    void everyKeyOfTheFormatCanBeParted() {
        String text = JobFiles.text(Path.of("src/test/resources/jobs/full.yaml"));

        assertThat(sold(text)).doesNotContain("Barnaby", "Quillfeather", "Gherkin Basin", "battery monitor, holder");
    }

    @Test
    void refusesAFileThatItCannotPart() {
        String text = JobFiles.text(Path.of("demo-jobs", "lantern-moth", "job.yaml"));
        for (String quoted : List.of(
                text.replaceFirst("(?m)^owner:", "\"owner\":"),
                text.replaceFirst("(?m)^rehearsal:", "\"rehearsal\":"),
                text.replaceFirst("(?m)^  revision:", "  \"revision\":"))) {
            assertThat(SoldCopy.of(quoted, read(quoted), 9, SALE, VOCABULARY)).isEmpty();
        }
    }
}
