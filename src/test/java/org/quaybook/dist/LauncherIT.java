package org.quaybook.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How the launcher calls Java; in the place of which stands a script that repeats what it was called with. */
class LauncherIT {

    private static final String QUICK = "-XX:TieredStopAtLevel=1";

    @TempDir
    static Path folder;

    private static Installed installed;

    @BeforeAll
    static void folders() throws Exception {
        Path java = Files.createDirectories(folder.resolve("jdk/bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\necho \"$@\"\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        Files.writeString(folder.resolve("jdk/release"), "JAVA_VERSION=\"17.0.1\"\n");
        installed = Installed.at(Path.of("quaybook").toAbsolutePath(), folder)
                .with("JAVA_HOME", folder.resolve("jdk").toString())
                .with("QUAYBOOK_NO_ARCHIVE", "1");
        jobs("few", 59);
        jobs("a season", 60);
        Files.writeString(folder.resolve("short.txt"), list(30));
        Files.writeString(folder.resolve("long.txt"), list(60));
    }

    private static void jobs(String name, int number) throws IOException {
        for (int i = 0; i < number; i++) {
            Path job = Files.createDirectories(folder.resolve(name).resolve("job " + i));
            Files.writeString(job.resolve("job.yaml"), "");
        }
    }

    private static String list(int number) {
        return IntStream.range(0, number).mapToObj(i -> "few/job " + i + "\n").collect(Collectors.joining());
    }

    private static String called(String... arguments) throws Exception {
        Installed.Ended ended = installed.run(arguments);
        assertThat(ended.err()).isEmpty();
        assertThat(ended.code()).isZero();
        assertThat(ended.out()).contains("org.quaybook.cli.Main");
        return ended.out();
    }

    @Test
    void fewJobsAreCompiledQuickly() throws Exception {
        assertThat(called()).contains(QUICK);
        assertThat(called("pack")).contains(QUICK);
        assertThat(called("pack", "few")).contains(QUICK);
        assertThat(called("pack", "a season/job 1", "few/job 2/job.yaml")).contains(QUICK);
        assertThat(called("pack", "--list", "short.txt")).contains(QUICK);
        assertThat(called("pack", "--list", "-")).contains(QUICK);
    }

    @Test
    void manyPacksAreCompiledWell() throws Exception {
        assertThat(called("pack", "a season")).doesNotContain(QUICK).endsWith("pack a season\n");
        assertThat(called("pack", "--to", "x", "few", "a season/job 1")).doesNotContain(QUICK);
        assertThat(called("pack", "--list", "long.txt", "--to", "x")).doesNotContain(QUICK);
        assertThat(called("pack", "--list=short.txt", "--list=short.txt")).doesNotContain(QUICK);
    }

    /** Read, not run: what each launcher knows of Java and of the arguments, the other knows too. */
    @Test
    void theLauncherForWindowsKnowsTheSame() throws Exception {
        String posix = Files.readString(Path.of("quaybook"));
        List<String> windows = Files.readAllLines(Path.of("src/main/dist/quaybook.cmd"));
        String call = windows.get(windows.size() - 1);
        assertThat(call).startsWith("\"%java%\" ").endsWith(" org.quaybook.cli.Main %*");
        assertThat(call.split(" ")).contains(set(posix, "options").split(" ")).contains("%speed%");
        assertThat(windows)
                .contains(
                        "set \"speed=" + set(posix, "quick") + "\"",
                        "if %jobs% geq " + set(posix, "many") + " set \"speed=\"");
        String valued = "--list --to --templates --at-once";
        assertThat(posix).contains("    " + valued.replace(" ", " | ") + ") before=$argument ;;");
        assertThat(windows).contains("for %%o in (" + valued + ") do if \"%argument%\"==\"%%o\" set \"before=%%o\"");
    }

    private static String set(String script, String variable) {
        Matcher line =
                Pattern.compile("(?m)^" + variable + "=\"?([^\"\n]+)\"?$").matcher(script);
        assertThat(line.find()).as(variable).isTrue();
        return line.group(1);
    }

    @Test
    void everyWayInTheLauncherForWindowsLeadsToALabelAndBack() throws Exception {
        String windows = Files.readString(Path.of("src/main/dist/quaybook.cmd"));
        List<String> labels = found("(?m)^:(\\w+)$", windows);
        assertThat(labels).doesNotHaveDuplicates();
        assertThat(found("\\b(?:goto|call) :(\\w+)", windows))
                .isNotEmpty()
                .allSatisfy(way -> assertThat(labels).contains(way));
        // A subroutine ends before the code that follows it begins.
        assertThat(windows).containsPattern("(?m)^:home\nset \"home=%~dp0\"\nexit /b 0$");
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(result -> result.group(1))
                .toList();
    }

    /** Nothing is laid out by those, and what is written into is no job. */
    @Test
    void whatIsNoPackIsNotCounted() throws Exception {
        assertThat(called("check", "a season")).contains(QUICK);
        assertThat(called("pack", "--to", "a season", "few/job 1")).contains(QUICK);
        assertThat(called("pack", "--to=a season", "--templates", "a season", "few/job 1"))
                .contains(QUICK);
    }
}
