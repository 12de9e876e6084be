package org.quaybook.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A launcher that cannot tell whether there is a terminal leaves it to Java, as the one for Windows does. */
class TerminalIT {

    private static final String DEMO = "demo-jobs/hut-seventeen";

    @TempDir
    Path folder;

    /** What the program was said to say, in a locale: on a terminal of the system's (script, of util-linux), or into a pipe. */
    private static String said(boolean terminal, String locale, String typed, String... arguments) throws Exception {
        List<String> java = Stream.concat(
                        Stream.of(
                                Path.of(System.getProperty("java.home"), "bin", "java")
                                        .toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-Dquaybook.terminal=console",
                                "-Djdk.console=java.base",
                                "-cp",
                                Path.of("target/quaybook.jar").toAbsolutePath().toString(),
                                "org.quaybook.cli.Main"),
                        Stream.of(arguments))
                .toList();
        String line = java.stream().map(it -> "'" + it + "'").collect(Collectors.joining(" "));
        ProcessBuilder builder = new ProcessBuilder(terminal ? List.of("script", "-qec", line, "/dev/null") : java)
                .redirectErrorStream(true);
        builder.environment().put("LC_ALL", locale);
        Process process = builder.start();
        try (var to = process.getOutputStream()) {
            to.write(typed.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            // It has ended without reading.
        }
        return Installed.end(process).out();
    }

    @Test
    void startAsksOnATerminalAlone() throws Exception {
        Path job = folder.resolve("job.yaml");
        assertThat(said(true, "C.UTF-8", "27-001\nPelikan Süd\n", "start", job.toString()))
                .contains("Your job number: ", "Name of the craft");
        assertThat(Files.readString(folder.resolve("job.yaml.answers"))).contains("Pelikan Süd");
        assertThat(said(
                        false,
                        "C.UTF-8",
                        "27-002\n",
                        "start",
                        folder.resolve("other.yaml").toString()))
                .doesNotContain("Your job number: ");
    }

    @Test
    void speaksAsTheTerminalDoesAndIntoAPipeAlwaysAlike() throws Exception {
        String alike = said(false, "C.UTF-8", "", "check", DEMO);
        assertThat(alike).contains("the maker’s limit", "62\u00a0A");
        assertThat(said(false, "C", "", "check", DEMO)).isEqualTo(alike);
        assertThat(said(true, "C.UTF-8", "", "check", DEMO)).contains("the maker’s limit", "62\u00a0A");
        assertThat(said(true, "C", "", "check", DEMO)).contains("-> Write down the maker's limit", "62 A");
    }
}
