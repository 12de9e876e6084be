package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.Conformance;
import org.quaybook.pack.sheets.QrReader;

/** The whole road of a job whose record is sealed. */
class SealedPackTest {

    private static final Path DEMO = Path.of("demo-jobs/lantern-moth");
    private static final String KEY = "3M8V-41QD-ZT7C-0W9X-KE5H-62RB-FY4";
    private static final String LINK =
            "HTTPS://RECORDS.MUDLARK-THIMBLE.EXAMPLE.ORG/81EZD3SWFGV4RK1ZH0YDQ#3M8V41QDZT7C0W9XKE5H62RBFY4";
    private static final String RECORD = "record/81EZD3SWFGV4RK1ZH0YDQ/";

    /** Letters; shorter texts are units and words that every page has, and occur by chance in what is sealed. */
    private static final int SHORTEST = 7;

    @TempDir
    static Path jobs;

    private static Path folder;
    private static Map<String, byte[]> pack;

    @BeforeAll
    static void make() throws Exception {
        folder = Files.createDirectories(jobs.resolve("sealed"));
        pack = pack(folder, "yes");
    }

    private static Map<String, byte[]> pack(Path folder, String sealed) throws IOException, NotPrinted {
        String job = Files.readString(DEMO.resolve("job.yaml"));
        Files.writeString(
                folder.resolve("job.yaml"),
                job.replace("  revision: 1\n", "  sealed: " + sealed + "\n  seal-key: " + KEY + "\n  revision: 1\n"));
        for (String other : Set.of("installer.yaml", "logo.svg")) {
            Files.write(folder.resolve(other), Files.readAllBytes(DEMO.resolve(other)));
        }
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.problems()).isEmpty();
        return Road.documents(judged, null, "test");
    }

    /** Only what lies under record/ is published, and the manifest: pages that say nothing, and sealed files. */
    @Test
    void publishesNothingReadable() throws Exception {
        Map<String, byte[]> published = new TreeMap<>(pack);
        published.keySet().removeIf(path -> !path.startsWith("record/"));

        assertThat(published.keySet())
                .contains(
                        RECORD + "record.html.sealed",
                        RECORD + "guide-nl.pdf.sealed",
                        RECORD + "labels.pdf.sealed",
                        RECORD + "calendar.ics.sealed")
                .allMatch(path -> path.endsWith(".sealed")
                        || Set.of("index.html", "index-nl.html", "offline.js", "404.html")
                                .contains(path.substring(path.lastIndexOf('/') + 1)));
        published.put("issue.json", content("issue.json"));
        List<String> secrets = secrets(content("figures.json"));
        assertThat(secrets)
                .contains("Lantern Moth", "stern locker", KEY, KEY.replace("-", ""))
                .hasSizeGreaterThan(500);
        published.forEach((path, content) -> {
            String text = new String(content, StandardCharsets.UTF_8);
            assertThat(secrets).as(path).noneMatch(text::contains);
        });
    }

    /** All texts of the job and its figures that no other record has, and the key. */
    private List<String> secrets(byte[] figures) throws IOException {
        Set<String> usual =
                texts(new YAMLMapper().readTree(folder.resolve("installer.yaml").toFile()));
        usual.addAll(Set.of(
                "26-118", "81EZ-D3SW-FGV4-RK1Z-H0YD-Q", "2026-05-14", "quaybook test", "installer.yaml", "nothing"));
        Set<String> secrets =
                texts(new YAMLMapper().readTree(folder.resolve("job.yaml").toFile()));
        secrets.addAll(texts(new ObjectMapper().readTree(figures)));
        secrets.removeAll(usual);
        secrets.add(KEY.replace("-", ""));
        secrets.removeIf(secret -> secret.length() < SHORTEST);
        return List.copyOf(secrets);
    }

    private static Set<String> texts(JsonNode node) {
        Set<String> texts = new TreeSet<>();
        if (node.isContainerNode()) {
            node.forEach(child -> texts.addAll(texts(child)));
        } else {
            texts.add(node.asText());
        }
        return texts;
    }

    /** Whoever has the pack reads the record without a key, and so does the comparison with the next revision. */
    @Test
    void keepsTheRecordReadableInThePack() {
        assertThat(text("unsealed/record.html")).contains("Lantern Moth", "the web host cannot");
        assertThat(pack)
                .containsKeys("unsealed/record-nl.html", "unsealed/guide-nl.html", "unsealed/figures.json")
                .doesNotContainKey("unsealed/calendar.ics");
        assertThat(text("figures.json")).doesNotContain(KEY, KEY.replace("-", ""));
    }

    /** Whatever is handed over leads to the record with its key; the other code on the labels is plain text. */
    @ParameterizedTest
    @CsvSource({
        "guide.pdf, 1",
        "guide-nl.pdf, 1",
        "guide-a4.pdf, 1",
        "quick-card.pdf, 2",
        "sheet-harbour.pdf, 1",
        "sheet-surveyor.pdf, 1",
        "sheet-electrician.pdf, 1",
        "labels.pdf, 1"
    })
    void everyPrintedCodeOpensTheRecord(String name, int codes) throws Exception {
        List<String> read = new ArrayList<>();
        try (PDDocument printed = Loader.loadPDF(content(name))) {
            PDFRenderer renderer = new PDFRenderer(printed);
            for (int page = 0; page < printed.getNumberOfPages(); page++) {
                read.addAll(QrReader.read(renderer.renderImageWithDPI(page, 200, ImageType.GRAY)));
            }
        }

        assertThat(read.stream().filter(code -> code.startsWith("HTTP")))
                .hasSize(codes)
                .containsOnly(LINK);
    }

    /** The longer link changes the page of the guide and the labels; they can still be archived and read aloud. */
    @ParameterizedTest
    @ValueSource(strings = {"guide.pdf", "guide-nl.pdf", "quick-card.pdf", "labels.pdf"})
    void documentsConform(String name) throws Exception {
        assertThat(Conformance.faultsAsArchive(content(name))).isEmpty();
        assertThat(Conformance.faultsForListening(content(name))).isEmpty();
    }

    private static byte[] content(String path) {
        return Objects.requireNonNull(pack.get(path), path);
    }

    private static String text(String path) {
        return new String(content(path), StandardCharsets.UTF_8);
    }

    /** The decision is the job's: a key that is kept for later seals nothing. */
    @Test
    void publishesReadableIfTheJobSaysSo() throws Exception {
        Map<String, byte[]> open = pack(Files.createDirectories(jobs.resolve("open")), "no");

        assertThat(open.keySet().stream()
                        .filter(path -> path.startsWith(RECORD))
                        .collect(Collectors.toSet()))
                .contains(RECORD + "record.html", RECORD + "guide.html")
                .noneMatch(path -> path.endsWith(".sealed"));
        assertThat(open.keySet()).noneMatch(path -> path.startsWith("unsealed"));
        open.forEach((path, content) -> {
            if (path.startsWith("record/")) {
                assertThat(new String(content, StandardCharsets.ISO_8859_1)).doesNotContain(KEY);
            }
        });
    }
}
