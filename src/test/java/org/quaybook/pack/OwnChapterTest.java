package org.quaybook.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.diag.Diagnostic;
import org.quaybook.render.Prose;

/** The chapter that an installer adds to the guide. */
class OwnChapterTest {

    private static final Path DEMO = Path.of("demo-jobs/second-biscuit");

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheDemo() throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
        Path profile = folder.resolve("installer.yaml");
        Files.writeString(
                profile, Files.readString(profile).replaceAll("(?m)^chapter:.*\\R", "") + "chapter: advice.md\n");
    }

    private Road.Judged judged() {
        return Road.judge(folder);
    }

    @Test
    void eachLanguageHasItsOwnOrTheOneForAll() throws IOException {
        Files.writeString(folder.resolve("advice.md"), "# Advice\n\nCall first.\n");
        Files.writeString(folder.resolve("advice.fr.md"), "# Conseils\n\nAppelez d’abord.\n");
        Road.Judged judged = judged();
        assertThat(judged.problems()).isEmpty();
        assertThat(judged.branding().chapter("fr").map(Prose::title)).contains("Conseils");
        assertThat(judged.branding().chapter("en-GB").map(Prose::title)).contains("Advice");
    }

    @Test
    void aMissingOrUntitledChapterIsAnErrorAtItsPlace() throws IOException {
        assertThat(judged().problems()).extracting(Diagnostic::rule).containsExactly("pack.chapter-unreadable");
        Files.writeString(folder.resolve("advice.md"), "no title\n");
        Road.Judged judged = judged();
        assertThat(judged.assessment()).isNull();
        assertThat(judged.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.place().file()).endsWith("advice.md"));
    }
}
