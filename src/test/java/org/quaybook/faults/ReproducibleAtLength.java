package org.quaybook.faults;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All demos on every JDK of this machine, at home and far away. {@code src/test/faults} runs it and prints figures. */
class ReproducibleAtLength {

    @TempDir
    Path folder;

    @Test
    void allDemosOnEveryJdk() throws Exception {
        Path jobs = Path.of("demo-jobs").toAbsolutePath();
        List<String> demos;
        try (Stream<Path> all = Files.list(jobs)) {
            demos = all.filter(Files::isDirectory)
                    .map(demo -> demo.getFileName().toString())
                    .sorted()
                    .toList();
        }
        Map<String, Path> jdks = Program.jdks();
        Path first = folder.resolve("first");
        Elsewhere.packs(Program.here(), jobs, demos, demos, first);
        int turn = 0;
        for (Map.Entry<String, Path> jdk : jdks.entrySet()) {
            turn++;
            Path near = folder.resolve("near " + turn);
            Elsewhere.packs(Program.on(jdk.getValue()), jobs, demos, demos, near);
            int files = Elsewhere.same(first, near);
            Path far = Files.createDirectories(folder.resolve("Übersee " + turn));
            Elsewhere.packs(
                    Elsewhere.far(Program.on(jdk.getValue()), far),
                    Elsewhere.copy(demos, far),
                    demos,
                    demos,
                    far.resolve("ß"));
            Elsewhere.same(first, far.resolve("ß"));
            System.out.println(
                    "JDK " + jdk.getKey() + ": " + files + " files of " + demos.size() + " jobs, twice, all the same");
        }
    }
}
