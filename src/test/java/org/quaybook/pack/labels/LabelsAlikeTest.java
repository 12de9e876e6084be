package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.record.Edition;
import org.quaybook.record.PublicEdition;
import org.quaybook.render.Sheet;
import org.quaybook.text.Words;

/** Whose label sheets may stand for whose: expected is what the printed files say, byte by byte. */
class LabelsAlikeTest {

    private static final String JOB = "lantern-moth";

    @TempDir
    private Path folder;

    private static Labels labels(DemoJob job, Edition edition) {
        return new Labels(List.of(edition), job.branding(), job.link());
    }

    private static Labels whole(DemoJob job) {
        return labels(job, new Edition(job.assessment(), job.words()));
    }

    private static Labels published(DemoJob job) {
        return labels(
                job,
                PublicEdition.of(new Edition(job.assessment(), job.words())).edition());
    }

    private static byte[] pdf(Labels labels) {
        return labels.sheets(Sheet.A4).sheet().pdf();
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void whatNamesNobodyIsPrintedAlike(String demo) {
        DemoJob job = DemoJob.demo(demo);
        assertThat(published(job).printLike(whole(job))).isTrue();
        assertThat(pdf(published(job))).isEqualTo(pdf(whole(job)));
    }

    /** The owner's name in a place, where labels say it. */
    @Test
    void aNameOnALabelIsNotPublished() {
        DemoJob job = DemoJob.changed(
                JOB, folder, "where: engine room, port side", "where: below the berth of Wilhelmina Oatcake");
        assertThat(published(job).printLike(whole(job))).isFalse();
        assertThat(published(job).notes()).extracting(LabelNote::place).noneMatch(place -> place.contains("Oatcake"));
        assertThat(whole(job).notes()).extracting(LabelNote::place).anyMatch(place -> place.contains("Oatcake"));
    }

    /** A stamp, a place, the header of the sheets, a fuse. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "revision: 1|revision: 2",
                "where: stern rail, port side|where: stern rail, starboard side",
                "name: Lantern Moth|name: Lantern Mouth",
                "rating: 225 A|rating: 200 A",
            })
    void anyOtherWordIsAnotherPrint(String from, String to) {
        DemoJob job = DemoJob.demo(JOB);
        DemoJob other = DemoJob.changed(JOB, folder, from, to);
        assertThat(whole(other).printLike(whole(job))).isFalse();
        assertThat(pdf(whole(other))).isNotEqualTo(pdf(whole(job)));
    }

    @Test
    void anotherLanguageIsAnotherPrint() {
        DemoJob job = DemoJob.demo(JOB);
        Labels german = labels(job, new Edition(job.assessment(), Words.of("de")));
        assertThat(german.printLike(whole(job))).isFalse();
    }

    @Test
    void theRecordIsPartOfThePrint() {
        DemoJob sealed = DemoJob.sealed(JOB, folder);
        DemoJob open = DemoJob.demo(JOB);
        assertThat(whole(sealed).printLike(whole(open))).isFalse();
    }
}
