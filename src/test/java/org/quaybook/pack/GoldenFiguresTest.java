package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.DemoJobs;
import org.quaybook.KeptFile;
import org.quaybook.checks.Assessment;
import org.quaybook.proof.Digest;
import org.quaybook.text.Words;

/**
 * No printed figure changes unnoticed. The figures kept are this program's own: they tell of a change, other tests hold them
 * against sources outside.
 */
class GoldenFiguresTest {

    private static final Path KEPT = Path.of("src/test/resources/figures");

    static Stream<String> demos() {
        return DemoJobs.ALL.stream();
    }

    /** Renewed with {@code -Drenew=figures}; then the test below asks for a line in the changelog. */
    @ParameterizedTest
    @MethodSource("demos")
    void printedFiguresAreAsKept(String demo) {
        KeptFile.assertSame(kept(demo), figures(demo), "figures");
    }

    private static String figures(String demo) {
        Assessment it =
                Objects.requireNonNull(Road.judge(Path.of("demo-jobs", demo)).assessment());
        Words words = Words.of(it.job().job().languages().get(0));
        return it.figures().all().stream()
                .map(figure -> figure.key() + " = " + words.word(figure.stated()) + "\n")
                .collect(Collectors.joining());
    }

    @Test
    void theChangelogStatesTheLastChangeOfAFigure() throws IOException {
        StringBuilder all = new StringBuilder();
        for (String demo : DemoJobs.ALL) {
            all.append(Files.readString(kept(demo)));
        }
        String mark = Digest.of(all.toString()).substring(0, 12);

        assertThat(Files.readString(Path.of("CHANGELOG.md")))
                .as(
                        "say in CHANGELOG.md which figures of the demo jobs change and why, and end the line with (figures %s)",
                        mark)
                .contains("(figures " + mark + ")");
    }

    private static Path kept(String demo) {
        return KEPT.resolve(demo + ".txt");
    }
}
