package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.checks.Assessment;
import org.quaybook.job.TestResult;
import org.quaybook.quantity.Count;
import org.quaybook.quantity.Unit;

/** The whole road on every demo. */
class DemoPacksTest {

    private static final Path DEMOS = Path.of("demo-jobs");

    @TempDir
    Path folder;

    static Stream<Path> demos() throws IOException {
        try (Stream<Path> list = Files.list(DEMOS)) {
            return list.filter(Files::isDirectory).sorted().toList().stream();
        }
    }

    private static final Map<Path, Map<String, byte[]>> PACKED = new ConcurrentHashMap<>();

    private static Map<String, byte[]> pack(Path job) {
        return PACKED.computeIfAbsent(job, DemoPacksTest::packed);
    }

    private static Map<String, byte[]> packed(Path job) {
        Road.Judged judged = Road.judge(job);
        assertThat(judged.problems()).isEmpty();
        try {
            return Road.documents(judged, null, "test");
        } catch (NotPrinted e) {
            throw new AssertionError(e);
        }
    }

    private static String text(Map<String, byte[]> pack, String document) {
        byte[] pdf = Objects.requireNonNull(pack.get(document));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(read).replaceAll("[\\s\u00A0]+", " ");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String record(Map<String, byte[]> pack) {
        return pack.entrySet().stream()
                .filter(file -> file.getKey().matches("record/[0-9A-Z]{21}/index.html"))
                .map(file -> new String(file.getValue(), StandardCharsets.UTF_8))
                .map(html ->
                        html.replace("&nbsp;", " ").replaceAll("<[^>]*>", " ").replaceAll("[\\s\u00A0]+", " "))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void sameJobSameBytes(Path demo) {
        Map<String, byte[]> first = pack(demo);
        Map<String, byte[]> second = packed(demo);
        assertThat(second.keySet()).isEqualTo(first.keySet());
        first.forEach((path, content) -> assertThat(second.get(path)).as(path).isEqualTo(content));
    }

    /** A share of 0.8 is 80 where the unit is per cent. */
    @ParameterizedTest
    @MethodSource("demos")
    void figuresForProgramsAreCountedInTheirUnit(Path demo) throws IOException {
        JsonNode figures =
                new ObjectMapper().readTree(pack(demo).get("figures.json")).get("figures");
        Map<String, JsonNode> byName = new HashMap<>();
        figures.forEach(figure -> byName.put(figure.get("name").asText(), figure));
        Objects.requireNonNull(Road.judge(demo).assessment()).figures().all().stream()
                .filter(figure -> !(figure.value() instanceof Count))
                .forEach(figure -> {
                    JsonNode node = Objects.requireNonNull(byName.get(figure.key()), figure.key());
                    Unit unit = figure.value()
                            .kind()
                            .unit(node.get("unit").asText())
                            .orElseThrow();
                    assertThat(unit.toCanonical(node.get("value").asDouble()))
                            .as(figure.key())
                            .isCloseTo(figure.value().canonical(), withinPercentage(1e-9));
                });
    }

    @ParameterizedTest
    @MethodSource("demos")
    void issueHoldsTheDigestOfEveryOtherFile(Path demo) throws Exception {
        Map<String, byte[]> pack = pack(demo);
        JsonNode digests = new ObjectMapper().readTree(pack.get("issue.json")).get("sha256");
        assertThat(digests.size()).isEqualTo(pack.size() - 1);
        for (Map.Entry<String, byte[]> file : pack.entrySet()) {
            if (!file.getKey().equals("issue.json")) {
                byte[] digest =
                        java.security.MessageDigest.getInstance("SHA-256").digest(file.getValue());
                assertThat(digests.get(file.getKey()).asText())
                        .isEqualTo(HexFormat.of().formatHex(digest));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theRecordOffersItsDatesInEachLanguage(Path demo) {
        Map<String, byte[]> pack = pack(demo);
        List<String> pages = pack.keySet().stream()
                .filter(path -> path.matches("record/[0-9A-Z]{21}/index(-[a-z]{2})?\\.html"))
                .toList();
        assertThat(pages).isNotEmpty().allSatisfy(page -> {
            String calendar = page.replace("/index", "/calendar").replace(".html", ".ics");
            assertThat(new String(pack.get(page), StandardCharsets.UTF_8))
                    .contains("href=\"" + calendar.substring(calendar.lastIndexOf('/') + 1) + "\"");
            assertThat(new String(pack.get(calendar), StandardCharsets.UTF_8)).contains("\r\nBEGIN:VEVENT\r\n");
        });
    }

    /** The worksheet is the installer's: who tested, and with what, is not for the record. */
    @ParameterizedTest
    @MethodSource("demos")
    void theRecordHoldsNothingOfTheWorksheet(Path demo) {
        Map<String, byte[]> pack = pack(demo);
        assertThat(pack).containsKey("worksheet.pdf");
        assertThat(pack.keySet().stream().filter(path -> path.startsWith("record/")))
                .noneMatch(path -> path.contains("worksheet") || path.contains("sheet-"))
                .filteredOn(path -> path.endsWith(".pdf"))
                .allMatch(path -> path.matches("record/[0-9A-Z]{21}/(guide(-[a-z]{2})?|labels)\\.pdf"));
        assertThat(record(pack)).doesNotContain("worksheet.pdf");
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everyFigureIsTraceable(Path demo) throws Exception {
        JsonNode figures =
                new ObjectMapper().readTree(pack(demo).get("figures.json")).get("figures");
        assertThat(figures.size()).isGreaterThan(60);
        for (JsonNode figure : figures) {
            assertThat(figure.get("value").isNumber()).as(figure.toString()).isTrue();
            assertThat(figure.get("printed").asText()).isNotBlank();
            assertThat(figure.get("source").asText()).isNotBlank();
            assertThat(figure.get("rounding").asText()).isIn("up", "down", "nearest");
        }
    }

    /** "the cut-out voltage changes the figures, the guide, the labels and the record consistently" */
    @Test
    void oneChangedNumberChangesEveryDocumentAlike() throws Exception {
        Map<String, byte[]> before = pack(DEMOS.resolve("lantern-moth"));
        Path changed = copy("lantern-moth", "cut-out: 21.5 V", "cut-out: 22.5 V");
        Map<String, byte[]> after = pack(changed);
        for (String document : new String[] {"guide.pdf", "labels.pdf", "worksheet.pdf"}) {
            assertThat(text(before, document)).as(document).contains("21.5 V").doesNotContain("22.5 V");
            assertThat(text(after, document)).as(document).contains("22.5 V").doesNotContain("21.5 V");
        }
        assertThat(record(before)).contains("21.5 V").doesNotContain("22.5 V");
        assertThat(record(after)).contains("22.5 V").doesNotContain("21.5 V");
        String current = printed(after, "inverter.worst-current");
        assertThat(current).isNotEqualTo(printed(before, "inverter.worst-current"));
        assertThat(text(after, "guide.pdf")).contains(current.replace('\u00A0', ' '));
        assertThat(record(after)).contains(current.replace('\u00A0', ' '));
    }

    @Test
    void aLongerCableDropsMoreInFiguresAndGuide() throws Exception {
        Map<String, byte[]> before = pack(DEMOS.resolve("second-biscuit"));
        Map<String, byte[]> after = pack(copy("second-biscuit", "length: 4.6 m", "length: 6.6 m"));
        String drop = printed(after, "supply.drop");
        assertThat(drop).isNotEqualTo(printed(before, "supply.drop"));
        assertThat(text(after, "guide.pdf")).contains(drop.replace('\u00A0', ' '));
    }

    private static String printed(Map<String, byte[]> pack, String figure) throws IOException {
        for (JsonNode node :
                new ObjectMapper().readTree(pack.get("figures.json")).get("figures")) {
            if (node.get("name").asText().equals(figure)) {
                return node.get("printed").asText();
            }
        }
        throw new AssertionError("no figure " + figure);
    }

    private Path copy(String demo, String find, String replace) throws IOException {
        try (Stream<Path> files = Files.list(DEMOS.resolve(demo))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        Path job = folder.resolve("job.yaml");
        String text = Files.readString(job);
        assertThat(text).contains(find);
        Files.writeString(job, text.replace(find, replace));
        return folder;
    }

    /** The published schema (draft 2020-12), by a validator of its own. */
    @ParameterizedTest
    @MethodSource("demos")
    void figuresFollowTheirSchema(Path job) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(FiguresSchema.text());
        Map<String, byte[]> pack = pack(job);

        pack.forEach((path, content) -> {
            if (path.endsWith("figures.json")) {
                assertThat(schema.validate(new String(content, StandardCharsets.UTF_8), InputFormat.JSON))
                        .as(path)
                        .isEmpty();
            }
        });
        assertThat(schema.validate("{}", InputFormat.JSON)).isNotEmpty();
    }

    /** GDPR Art. 5(1)(c), from memory: no name, berth or number of a person in any file that is published. */
    @ParameterizedTest
    @MethodSource("demos")
    void nobodyIsNamedInWhatIsPublished(Path job) {
        Assessment it = Objects.requireNonNull(Road.judge(job).assessment());
        List<String> personal = Stream.concat(
                        Stream.of(
                                Objects.requireNonNull(it.job().owner()).name(),
                                it.job().owner().phone(),
                                it.job().owner().email(),
                                it.job().craft().berth(),
                                it.job().job().fitter(),
                                it.installer().contact()),
                        it.job().tests().stream().map(TestResult::by))
                .filter(Objects::nonNull)
                .toList();

        assertThat(personal).hasSizeGreaterThan(4);
        pack(job).forEach((path, content) -> {
            if (path.startsWith("record/")) {
                String text =
                        path.endsWith(".pdf") ? text(pack(job), path) : new String(content, StandardCharsets.UTF_8);
                assertThat(text).as(path).doesNotContainIgnoringCase(personal.toArray(String[]::new));
            }
        });
    }

    /** Where the installer keeps his jobs is nobody's business, and must not change what is issued. */
    @Test
    void figuresDoNotSayWhereTheJobLies(@TempDir Path elsewhere) throws IOException {
        Path demo = DEMOS.resolve("lantern-moth");
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, elsewhere.resolve(file.getFileName()));
            }
        }

        assertThat(packed(elsewhere)).containsAllEntriesOf(pack(demo));
    }
}
