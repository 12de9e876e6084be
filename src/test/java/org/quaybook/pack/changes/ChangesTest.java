package org.quaybook.pack.changes;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.pack.changes.Changes.Found;
import org.quaybook.pack.changes.Changes.Label;
import org.quaybook.pack.changes.Changes.Task;
import org.quaybook.pack.changes.Changes.Value;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;

/** What is told of two revisions, by the project's own promise: each thing that came, went or reads otherwise, once. */
class ChangesTest {

    private static final String CODE = "81EZD3SWFGV4RK1ZH0YDQ";

    private static final String OLD = """
            {"figures": [{"name": "a", "printed": "1 V"}, {"name": "b", "printed": "2 V"}, {"name": "c", "printed": "3 V"}],
             "findings": [{"check": "x", "key": "bank", "message": "old"}, {"check": "y", "key": "bank", "message": "same"}],
             "settings": [{"device": "Charger", "name": "float", "value": "%s"}],
             "labels": [{"label": "stays", "sha256": "1", "title": "S", "place": "p"},
                        {"label": "changes", "sha256": "2", "title": "C", "place": "p"},
                        {"label": "goes", "sha256": "3", "title": "G", "place": "q"}]}""";

    private static final String NEW = """
            {"figures": [{"name": "a", "printed": "1 V"}, {"name": "b", "printed": "2.5 V"}, {"name": "d", "printed": "4 V"}],
             "findings": [{"check": "y", "key": "bank", "message": "same"}, {"check": "z", "key": "inverter", "message": "new"}],
             "settings": [{"device": "Charger", "name": "float", "value": "13.5 V"}],
             "labels": [{"label": "stays", "sha256": "1", "title": "S", "place": "elsewhere"},
                        {"label": "changes", "sha256": "9", "title": "C", "place": "p"},
                        {"label": "comes", "sha256": "4", "title": "N", "place": "r"}]}""";

    @TempDir
    Path folder;

    private IssuedBefore before() throws Exception {
        Map<String, String> files = Map.of(
                "figures.json",
                OLD.formatted("as W. Oatcake likes it"),
                "record/" + CODE + "/figures.json",
                OLD.formatted("as [name left out] likes it"),
                "record/" + CODE + "/guide.html",
                "<section class=\"chapter chapter-card\"><h1 id=\"card\">1 <b>Card</b></h1>same</section>"
                        + "<section class=\"chapter chapter-run\"><h1>2 Run &amp; wait</h1>old</section>");
        TreeMap<String, String> digests = new TreeMap<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
            digests.put(file.getKey(), Digest.of(file.getValue()));
        }
        Files.write(
                folder.resolve(Manifest.FILE),
                new Manifest(
                                "quaybook test",
                                "26-118",
                                "81EZ-D3SW-FGV4-RK1Z-H0YD-Q",
                                1,
                                LocalDate.of(2026, 5, 14),
                                Optional.empty(),
                                digests)
                        .json());
        assertThat(IssuedBefore.read(folder)).as("a draft").isEmpty();
        Files.writeString(folder.resolve(Manifest.SIGNATURE_FILE), "{}");
        return IssuedBefore.read(folder).orElseThrow();
    }

    private static JsonNode now() throws IOException {
        return new ObjectMapper().readTree(NEW);
    }

    @Test
    void whatCameWentAndReadsOtherwise() throws Exception {
        Changes changes = Changes.since(before(), now());

        assertThat(changes.from()).isEqualTo(1);
        assertThat(changes.figures())
                .containsExactly(
                        new Value("b", Optional.of("2 V"), Optional.of("2.5 V")),
                        new Value("d", Optional.empty(), Optional.of("4 V")),
                        new Value("c", Optional.of("3 V"), Optional.empty()));
        assertThat(changes.labels())
                .containsExactly(
                        new Label(Task.REPLACE, "changes", "C", "p"),
                        new Label(Task.PUT_ON, "comes", "N", "r"),
                        new Label(Task.TAKE_OFF, "goes", "G", "q"));
        assertThat(changes.findings()).containsExactly(new Found(false, "z", "new"), new Found(true, "x", "old"));
        assertThat(changes.settings())
                .containsExactly(
                        new Value("Charger: float", Optional.of("as W. Oatcake likes it"), Optional.of("13.5 V")));
    }

    /** What a text said of somebody before it was blanked does not come out as its former value. */
    @Test
    void thePublishedComparisonKnowsOnlyWhatWasPublished() throws Exception {
        assertThat(Changes.published(before(), now()).settings())
                .containsExactly(
                        new Value("Charger: float", Optional.of("as [name left out] likes it"), Optional.of("13.5 V")));
    }

    @Test
    void chaptersThatReadOtherwise() throws Exception {
        String page = "<section class=\"chapter chapter-card\"><h1 id=\"card\">1 <b>Card</b></h1>same</section>"
                + "<section class=\"chapter chapter-run\"><h1>2 Run &amp; wait</h1>new</section>"
                + "<section class=\"chapter chapter-away\"><h1>3 Away</h1>new</section>";

        IssuedBefore before = before();
        assertThat(Changes.chapters(before, "guide.html", page)).containsExactly("2 Run & wait", "3 Away");
        assertThat(Changes.chapters(before, "guide-nl.html", page))
                .isEqualTo(List.of("1 Card", "2 Run & wait", "3 Away"));
    }
}
