package org.quaybook.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.quaybook.KeptFile;

/** The example of docs/library.md compiles, runs as a program of its own, and tells the figures that the golden files keep. */
class LibraryExampleTest {

    private static final Path PAGE = Path.of("docs/library.md");
    private static final Path PROJECT = Path.of("docs/example-program");
    private static final Path SOURCE = PROJECT.resolve("src/main/java/example/PackAll.java");
    private static final Path KEPT_FIGURES = Path.of("src/test/resources/figures");

    private static final Pattern CODE = Pattern.compile("(?s)```java\n.*?```");
    private static final Pattern VERSION =
            Pattern.compile("<artifactId>quaybook</artifactId>\\s*<version>([^<]*)</version>");
    private static final Pattern LEFT_OUT =
            Pattern.compile("(?s)<exclusion>.*?<artifactId>([^<]*)</artifactId>.*?</exclusion>");
    private static final Pattern TIME = Pattern.compile("  ([^:]+): (.+), exactly [0-9.E]+ s");

    @TempDir
    Path folder;

    /** Renewed with {@code -Drenew=library}. */
    @Test
    void thePageShowsTheCode() throws IOException {
        String shown = Matcher.quoteReplacement("```java\n" + Files.readString(SOURCE) + "```");
        KeptFile.assertSame(PAGE, CODE.matcher(Files.readString(PAGE)).replaceFirst(shown), "library");
    }

    @Test
    void pageAndExampleAskForThisVersion() throws IOException {
        String ours = version(Path.of("pom.xml"));
        assertThat(ours).isNotEmpty();
        assertThat(version(PROJECT.resolve("pom.xml"))).isEqualTo(ours);
        assertThat(version(PAGE)).isEqualTo(ours);
    }

    private static String version(Path file) throws IOException {
        return VERSION.matcher(Files.readString(file))
                .results()
                .map(found -> found.group(1))
                .findFirst()
                .orElse("");
    }

    /** The jars that are shipped but for those that the example's pom leaves out, and our classes. */
    private static String classPath() throws IOException {
        List<String> leftOut = LEFT_OUT.matcher(Files.readString(PROJECT.resolve("pom.xml")))
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(leftOut).containsExactly("picocli", "jetty-server");
        return Stream.concat(
                        Stream.of("target/classes"),
                        Arrays.stream(System.getProperty("shipped.libraries").split(File.pathSeparator))
                                .filter(jar -> !jar.contains("picocli") && !jar.contains("jetty")))
                .collect(Collectors.joining(File.pathSeparator));
    }

    private void compile(String classPath) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter said = new StringWriter();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            List<String> options = List.of(
                    "-d",
                    folder.resolve("classes").toString(),
                    "-cp",
                    classPath,
                    "--release",
                    "17",
                    "-proc:none",
                    "-Xlint:all,-path,-classfile",
                    "-Werror");
            boolean compiled = compiler.getTask(said, files, null, options, null, files.getJavaFileObjects(SOURCE))
                    .call();
            assertThat(compiled).as(said.toString()).isTrue();
        }
    }

    private Path job(String name, Path from, Path file) throws IOException {
        Path job = Files.createDirectories(folder.resolve("jobs").resolve(name));
        try (Stream<Path> all = Files.list(from)) {
            for (Path it : all.filter(it -> !it.getFileName().toString().equals("job.yaml"))
                    .toList()) {
                Files.copy(it, job.resolve(it.getFileName()));
            }
        }
        return Files.copy(file, job.resolve("job.yaml"));
    }

    @Test
    void itPacksWhatMayBeHandedOver() throws Exception {
        Path hut = Path.of("demo-jobs/hut-seventeen");
        Path moth = Path.of("demo-jobs/lantern-moth");
        job("hut", hut, hut.resolve("job.yaml"));
        job("as-found", moth, moth.resolve("as-found.yaml"));
        Path unread = job("unread", hut, hut.resolve("job.yaml"));
        Files.writeString(unread, Files.readString(unread).replace("revision: 1", "revision: 0"));
        String classPath = classPath();
        compile(classPath);

        Path packs = folder.resolve("packs");
        Path errors = folder.resolve("errors");
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-cp",
                        folder.resolve("classes") + File.pathSeparator + classPath,
                        "example.PackAll",
                        folder.resolve("jobs").toString(),
                        packs.toString())
                .redirectError(errors.toFile())
                .start();
        List<String> lines = new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        int code = program.waitFor();

        assertThat(Files.readString(errors)).isEmpty();
        assertThat(code).isEqualTo(1);
        assertThat(lines).containsSubsequence("as-found", "hut", "unread");
        List<String> asFound = lines.subList(lines.indexOf("as-found"), lines.indexOf("hut"));
        List<String> packed = lines.subList(lines.indexOf("hut"), lines.indexOf("unread"));
        List<String> refused = lines.subList(lines.indexOf("unread"), lines.size());

        assertThat(asFound).anyMatch(line -> line.matches("  forbidden by cold-charge: .+ → .+"));
        assertThat(asFound).noneMatch(line -> line.contains("pack: "));
        assertThat(times(packed)).isEqualTo(keptTimes("hut-seventeen"));
        assertThat(packed).endsWith("  pack: 26-163, WRITTEN");
        assertThat(refused).hasSize(2).last().asString().contains("job.yaml:", "  problem: ");
        try (Stream<Path> made = Files.list(packs)) {
            assertThat(made).containsExactly(packs.resolve("26-163"));
        }
        assertThat(packs.resolve("26-163/guide.pdf")).isNotEmptyFile();
    }

    private static List<String> times(List<String> lines) {
        return lines.stream()
                .map(TIME::matcher)
                .filter(Matcher::matches)
                .map(found -> found.group(2))
                .toList();
    }

    /** The running times to plan on, in the order of the file that {@code GoldenFiguresTest} keeps. */
    private static List<String> keptTimes(String demo) throws IOException {
        List<String> times = Pattern.compile("(?m)^appliance\\.[^.]+\\.time-worn = (.+)$")
                .matcher(Files.readString(KEPT_FIGURES.resolve(demo + ".txt")))
                .results()
                .map((MatchResult found) -> found.group(1))
                .toList();
        assertThat(times).hasSizeGreaterThan(3);
        return times;
    }
}
