package org.quaybook.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    /** Nothing is laid out by those, and what is written into is no job. */
    @Test
    void whatIsNoPackIsNotCounted() throws Exception {
        assertThat(called("check", "a season")).contains(QUICK);
        assertThat(called("pack", "--to", "a season", "few/job 1")).contains(QUICK);
        assertThat(called("pack", "--to=a season", "--templates", "a season", "few/job 1"))
                .contains(QUICK);
    }
}
