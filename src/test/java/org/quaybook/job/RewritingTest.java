package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A job's texts in another language: names and their uses alike, values and words of the format untouched. */
class TranslatorTest {

    private static Job job(String text) {
        return Objects.requireNonNull(
                JobReader.parse(text, "job.yaml", JobFiles.VOCABULARY).job());
    }

    private final Job job = job(JobFiles.text("full.yaml")
            .replace(
                    "- Galley left = Kombuis links",
                    "- Galley left = Kombuis links\n      - Cheese fridge = Kaaskast\n"
                            + "      - shore = wal\n      - aft = achter")
            .replace("where: foredeck box", "where: aft")
            .replace("device: Inverter,", "device: shore,"));

    @Test
    void namesAndWhatRefersToThemAreTranslatedAlike() {
        Job dutch = job.in("nl");
        assertThat(dutch.sockets().get(0).name()).isEqualTo("Kombuis links");
        assertThat(dutch.sockets().get(0).where())
                .isNotNull()
                .satisfies(where -> assertThat(String.valueOf(where)).contains("links van de gootsteen"));
        assertThat(dutch.appliances().get(2).name()).isEqualTo("Kaaskast");
        assertThat(dutch.together().get(0).appliances()).containsExactly("Slow kettle", "Kaaskast");
    }

    /** {@code shore} is a word of the format where a source is due, and a text elsewhere. */
    @Test
    void wordsOfTheFormatStay() {
        Job dutch = job.in("nl");
        assertThat(dutch.settings().get(0).device()).isEqualTo("wal");
        assertThat(dutch.isolators()).isEqualTo(job.isolators());
        assertThat(dutch.charging().get(0).fedBy())
                .isEqualTo(job.charging().get(0).fedBy());
        assertThat(dutch.job()).isEqualTo(job.job());
    }

    @Test
    void valuesAndPlacesStay() {
        Job dutch = job.in("nl");
        assertThat(dutch.bank()).isEqualTo(job.bank());
        assertThat(dutch.appliances().get(2).power())
                .isEqualTo(job.appliances().get(2).power());
        assertThat(dutch.appliances().get(2).place())
                .isEqualTo(job.appliances().get(2).place());
    }

    @Test
    void withoutTranslationsTheJobIsItself() {
        assertThat(job.in("en-GB")).isSameAs(job);
    }
}
