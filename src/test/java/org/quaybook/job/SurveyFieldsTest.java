package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.quaybook.job.SurveyFields.Row;
import org.quaybook.quantity.Length;

/** What a survey asks for. */
class SurveyFieldsTest {

    private static Job job(String... replacements) {
        String text = JobFiles.text("full.yaml");
        for (int i = 0; i < replacements.length; i += 2) {
            assertThat(text).contains(replacements[i]);
            text = text.replace(replacements[i], replacements[i + 1]);
        }
        return Objects.requireNonNull(
                JobReader.parse(text, "full.yaml", JobFiles.VOCABULARY).job());
    }

    private static Row row(Job job, String field, String of) {
        return SurveyFields.of(job).stream()
                .filter(row -> row.field().equals(field) && row.of().equals(of))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void asksForWhatNobodyHasSeenAndForWhatWasOnlyTold() {
        Row length = row(job("length: 1.9 m", "length: not seen"), "cable.length", "B1");
        assertThat(length.group()).isEqualTo("cables");
        assertThat(length.kind()).contains(Length.KIND);
        assertThat(length.leftOut()).isFalse();
        Row told = row(job("length: 1.9 m", "length: 1.9 m (told)"), "cable.length", "B1");
        assertThat(told.given().orElseThrow().provenance()).isEqualTo(Provenance.TOLD);
        assertThat(SurveyFields.of(job("length: 1.9 m", "length: 1.9 m (measured)")))
                .noneMatch(row -> row.field().equals("cable.length") && row.of().equals("B1"));
    }

    @Test
    void asksForWhatTheInstallationLeavesOutButNotForWishes() {
        Job job = job("  pass-through: 50 A", "  # pass-through: 50 A");
        assertThat(row(job, "inverter.pass-through", "").leftOut()).isTrue();
        assertThat(SurveyFields.of(job))
                .noneMatch(row -> row.leftOut() && row.group().equals("appliances"));
    }

    @Test
    void choicesAndYesOrNoAreSaidToBeSuch() {
        assertThat(row(job("lamp: yes", "lamp: not seen"), "shore.polarity-lamp", "")
                        .yesOrNo())
                .isTrue();
        assertThat(row(job("chemistry: lithium-iron-phosphate (plate)", "chemistry: not seen"), "bank.chemistry", "")
                        .terms())
                .containsExactly((Enum<?>[]) Chemistry.values());
    }

    /** A main fuse may have no average, and a charger's has none. */
    @Test
    void asksOnlyABranchForWhatItDrawsOnAverage() {
        String branch = "  - { id: F8, role: branch }\n  - { id: F9, role: branch }\n";
        Job job =
                job("fuses:\n", "fuses:\n" + branch, "charging:\n", "charging:\n  - { kind: alternator, fuse: F9 }\n");
        assertThat(SurveyFields.of(job))
                .filteredOn(row -> row.field().equals("fuse.average") && row.leftOut())
                .extracting(Row::of)
                .containsExactly("F8");
    }

    private static List<String> asked(Job job) {
        return SurveyFields.of(job).stream()
                .filter(Row::leftOut)
                .map(Row::field)
                .distinct()
                .toList();
    }

    /** What a charger's cable is judged by is asked, as the finding that it was not judged asks for it. */
    @Test
    void asksForTheCableOfAChargerAndForNothingThatAnotherKindHas() {
        Job job = job("charging:\n", "charging:\n  - { kind: solar, name: Canopy }\n");
        assertThat(SurveyFields.of(job))
                .filteredOn(row -> row.of().equals("Canopy"))
                .extracting(Row::field)
                .containsExactly("charging.current", "charging.cable", "charging.length");
    }

    @Test
    void asksForNoGalvanicIsolatorWhereATransformerStandsOrNoWaterIs() {
        String isolator = "shore.galvanic-isolator";
        assertThat(asked(job())).doesNotContain(isolator);
        String[] none = {
            "  transformer: { neutral-tied: yes, shore-earth-goes-on: no }\n", "", "  galvanic-isolator: yes\n", ""
        };
        assertThat(asked(job(none))).contains(isolator);
        String[] onLand = {none[0], none[1], none[2], none[3], "kind: boat", "kind: motorhome"};
        assertThat(asked(job(onLand))).doesNotContain(isolator);
    }

    /** From the inlet to the bank, as one walks. */
    @Test
    void walksFromTheInletToTheBank() {
        List<String> groups =
                SurveyFields.of(job()).stream().map(Row::group).distinct().toList();
        assertThat(List.of("shore", "board", "inverter", "cables", "bank", "charging", "appliances"))
                .containsSubsequence(groups);
    }

    /** Every value that can be asked for has words in every language: the survey must not stop for want of a word. */
    @Test
    void everyFieldHasWords() throws IOException {
        Properties words = new Properties();
        try (Reader in = Files.newBufferedReader(Path.of("templates/words/en-GB/worksheet.properties"))) {
            words.load(in);
        }
        assertThat(words.stringPropertyNames())
                .filteredOn(key -> key.startsWith("survey."))
                .containsExactlyInAnyOrderElementsOf(fields().stream()
                        .map(field -> "survey." + field)
                        .distinct()
                        .toList());
    }

    private static List<String> fields() {
        Set<Class<?>> walked = Set.of(
                Craft.class,
                Shore.class,
                Generator.class,
                Rcd.class,
                AcCircuit.class,
                Earth.class,
                Socket.class,
                Inverter.class,
                Isolator.class,
                Cable.class,
                Fuse.class,
                Bank.class,
                Charging.class,
                Appliance.class);
        List<String> fields = new ArrayList<>();
        walked.forEach(record -> collect(record, fields));
        return fields;
    }

    private static void collect(Class<?> record, List<String> fields) {
        for (Field field : Field.written(record)) {
            if (field.isNested()) {
                collect(field.type(), fields);
            } else if (field.form() == Field.Form.GIVEN) {
                fields.add(SurveyFields.name(record, field));
            }
        }
    }
}
