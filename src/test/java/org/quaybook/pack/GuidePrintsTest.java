package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of the guide that job and installer profile ask for; what else a pack holds does not hang on them. */
class GuidePrintsTest {

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "-, -, true, true",
                "all, small, true, true",
                "-, small, false, false",
                "-, booklet, true, false",
                "whole-pages, small, false, true",
                "small, -, false, false"
            })
    void jobComesBeforeProfile(String job, String profile, boolean booklet, boolean whole, @TempDir Path folder)
            throws IOException, NotPrinted {
        Path demo = Path.of("demo-jobs", "persimmon-tug");
        write(demo, folder, "installer.yaml", "records:", profile == null ? "" : "guide-prints: " + profile + "\n");
        write(demo, folder, "job.yaml", "  fitter:", job == null ? "" : "  guide-prints: " + job + "\n");
        Road.Judged judged = Road.judge(folder);
        assertThat(judged.problems()).isEmpty();
        Map<String, byte[]> pack = Road.documents(judged, null, "test");
        assertThat(pack.containsKey("guide-booklet.pdf")).isEqualTo(booklet);
        assertThat(pack.containsKey("guide-a4.pdf")).isEqualTo(whole);
        assertThat(pack)
                .containsKeys("guide.pdf", "quick-card.pdf", "labels.pdf", "worksheet.pdf", "figures.json")
                .containsKey("record/NEG8KHQNYXPWTE8ST5FB9/guide.pdf");
        assertThat(new ObjectMapper()
                        .readTree(pack.get("issue.json"))
                        .get("sha256")
                        .has("guide-a4.pdf"))
                .isEqualTo(whole);
    }

    private static void write(Path demo, Path folder, String file, String before, String line) throws IOException {
        String text = Files.readString(demo.resolve(file)).replaceAll("(?m)^(logo|chapter|tables):.*\n", "");
        assertThat(text).contains("\n" + before);
        Files.writeString(folder.resolve(file), text.replace("\n" + before, "\n" + line + before));
    }
}
