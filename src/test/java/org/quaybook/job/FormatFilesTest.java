package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.KeptFile;

/** The schemas and the reference page say what the records say; judged by an independent validator. */
class FormatFilesTest {

    private static final Path SCHEMAS = Path.of("src/main/resources/org/quaybook/job");
    private static final Path PAGE = Path.of("docs/job-file.md");
    private static final String GENERATED = "<!-- Made from the records from here on: mvn test -Drenew=schema -->\n";

    @Test
    void schemasFitTheRecords() {
        KeptFile.assertSame(
                SCHEMAS.resolve("job.schema.json"), SchemaWriter.write(Job.class, "Quaybook job file"), "schema");
        KeptFile.assertSame(
                SCHEMAS.resolve("installer.schema.json"),
                SchemaWriter.write(Installer.class, "Quaybook installer profile"),
                "schema");
        KeptFile.assertSame(
                SCHEMAS.resolve("service.schema.json"),
                SchemaWriter.write(ServiceLog.class, "Quaybook service log"),
                "schema");
    }

    @Test
    void programShowsTheSchemas() {
        assertThat(JobSchema.job()).isEqualTo(JobFiles.text(SCHEMAS.resolve("job.schema.json")));
        assertThat(JobSchema.installer()).isEqualTo(JobFiles.text(SCHEMAS.resolve("installer.schema.json")));
        assertThat(JobSchema.service()).isEqualTo(JobFiles.text(SCHEMAS.resolve("service.schema.json")));
    }

    @Test
    void pageFitsTheRecords() {
        String page = JobFiles.text(PAGE);
        String written = page.substring(0, page.indexOf(GENERATED) + GENERATED.length());
        KeptFile.assertSame(PAGE, written + "\n" + FormatPage.tables(), "schema");
    }

    @Test
    void exampleOfThePageIsAJob() {
        String page = JobFiles.text(PAGE);
        String example = page.substring(page.indexOf("```yaml\njob:") + 8);
        example = example.substring(0, example.indexOf("```"));
        assertThat(JobReader.parse(example, "job-file.md", JobFiles.VOCABULARY).problems())
                .isEmpty();
        assertThat(job(example)).isEmpty();
    }

    @Test
    void fullJobAndInstallerAreValid() {
        assertThat(job(JobFiles.text("full.yaml"))).isEmpty();
        assertThat(schema(JobSchema.installer()).validate(JobFiles.text("installer.yaml"), InputFormat.YAML))
                .isEmpty();
    }

    /** What the reader refuses for its form alone, the schema refuses too, so that an editor shows it while typing. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "alarm: 23.0 V | alarm: 23.0 | /inverter/alarm",
                "alarm: 23.0 V | alarm: 23.0 A | /inverter/alarm",
                "alarm: 23.0 V | alarm: 23.0 V (guessed) | /inverter/alarm",
                "alarm: 23.0 V | alarm: {value: 23.0 V, known: not seen} | /inverter/alarm",
                "alarm: 23.0 V | alarm: {known: plate} | /inverter/alarm",
                "alarm: 23.0 V | alarum: 23.0 V | /inverter",
                "chemistry: lithium-iron-phosphate (plate) | chemistry: lithium | /bank/chemistry",
                "kind: boat | kind: raft | /craft/kind",
                "metal-hull: yes | metal-hull: perhaps | /craft/metal-hull",
                "lugs-per-stud: 3 | lugs-per-stud: 30 | /bank/lugs-per-stud",
                "number: 26-118 | number: 26/118 | /job/number",
                "number: 26-118 | number: 26-118. | /job/number",
                "number: 26-118 | number: Nul.2 | /job/number",
                "date: 2026-05-14 | date: 14.5.2026 | /job/date",
                "record: 9F3K-7TWM-X2QA-6HCE-D1RB-Y | record: 9F3K | /job/record",
                "fitted: 2026-04 | fitted: 2026-13 | /bank/block/fitted",
                "fitted: 2 x 70 mm2 | fitted: 70 | /cables/0/fitted",
                "protects: [B1, B2] | protects: B1 | /fuses/0/protects",
                "start: 2.2 | start: 20 | /appliances/1/start",
                "name: Slow Pickle | name: '' | /craft/name"
            })
    void schemaRefuses(String good, String bad, String where) {
        String text = JobFiles.text("full.yaml");
        assertThat(text).containsOnlyOnce(good);
        assertThat(job(text.replace(good, bad)))
                .anyMatch(error -> error.getInstanceLocation().toString().equals(where));
    }

    @Test
    void everyKeyHasADescription() throws IOException {
        JsonNode properties = new ObjectMapper()
                .readTree(JobSchema.job())
                .findParents("properties")
                .get(0);
        assertThat(properties.get("properties")).allMatch(field -> field.hasNonNull("description"));
    }

    private static List<com.networknt.schema.Error> job(String yaml) {
        return schema(JobSchema.job()).validate(yaml, InputFormat.YAML);
    }

    private static Schema schema(String text) {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text, InputFormat.JSON);
    }
}
