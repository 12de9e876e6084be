package org.quaybook.trust;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.pack.NotPrinted;
import org.quaybook.pack.Road;

/**
 * What somebody writes into a job stays text in every document: it becomes no markup, no script, no template code and no
 * address. The hostile texts follow the forms of injection that the OWASP cheat sheets on cross-site scripting and
 * server-side template injection list (from memory).
 */
class HostileTextsTest {

    private static final Path DEMO = Path.of("demo-jobs", "second-biscuit");

    /** Where each stands in the job, and what is written there instead. */
    private static final Map<String, String> HOSTILE = Map.of(
            "(?m)^  name: Second Biscuit$", "  name: \"<script>x\"",
            "(?m)^  type: coastal sloop, 9.6 m$", "  type: \"${.vars} <#assign x=1>\"",
            "(?m)^  where: under the forward berth$", "  where: \"\\\" onmouseover=alert(2) x=\\\"\"",
            "(?m)^  stack: lug, flat washer, spring washer, nut$",
                    "  stack: \"]]><img src=http://127.0.0.1:9/x onerror=alert(3)>\"",
            "(?m)^(.*what: )First terminal tightness check", "$1\"--><svg onload=alert(4)>&#x6A;\"");

    private static Map<String, byte[]> documents = Map.of();

    @BeforeAll
    static void pack(@TempDir Path folder) throws IOException, NotPrinted {
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        String job = Files.readString(DEMO.resolve("job.yaml"));
        for (Map.Entry<String, String> hostile : HOSTILE.entrySet()) {
            Matcher place = Pattern.compile(hostile.getKey()).matcher(job);
            assertThat(place.find()).as(hostile.getKey()).isTrue();
            job = place.replaceAll(
                    hostile.getValue().startsWith("$1")
                            ? "$1" + Matcher.quoteReplacement(hostile.getValue().substring(2))
                            : Matcher.quoteReplacement(hostile.getValue()));
        }
        Files.writeString(folder.resolve("job.yaml"), job);
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.assessment()).as(judged.problems().toString()).isNotNull();
        documents = Road.documents(judged, null, "test");
    }

    private static List<String> pages() {
        return documents.entrySet().stream()
                .filter(file -> file.getKey().endsWith(".html"))
                .map(file -> new String(file.getValue(), StandardCharsets.UTF_8))
                .toList();
    }

    @Test
    void pagesHaveNoMarkupOfTheJobs() {
        assertThat(pages())
                .hasSizeGreaterThan(4)
                .allSatisfy(page -> assertThat(page)
                        .doesNotContain("<script>x", "<svg onload", "<img src=http", "\" onmouseover")
                        .doesNotContainPattern("<[^>]*\\bon(?:load|error|mouseover)="));
        assertThat(pages()).anySatisfy(page -> assertThat(page).contains("&lt;script&gt;x"));
    }

    /** Data inside a script element must not end it. */
    @Test
    void dataForMachinesEndsNoScript() {
        Pattern data = Pattern.compile("<script type=\"application/ld\\+json\">(.*?)</script>", Pattern.DOTALL);
        assertThat(pages().stream()
                        .flatMap(page -> data.matcher(page).results())
                        .toList())
                .isNotEmpty()
                .allSatisfy(found -> assertThat(found.group(1)).endsWith("}").doesNotContain("<"));
    }

    @Test
    void guideAndLabelsPrintThemAsTheyStand() throws IOException {
        assertThat(text("guide.pdf")).contains("<script>x").contains("${.vars} <#assign x=1>");
        assertThat(text("labels.pdf")).contains("<svg onload=alert(4)>&#x6A;");
    }

    private static String text(String name) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(Objects.requireNonNull(documents.get(name)))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s*\\R\\s*", "");
        }
    }
}
