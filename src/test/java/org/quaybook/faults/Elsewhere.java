package org.quaybook.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Packs and labels made with other settings of the machine, and their comparison byte by byte. */
final class Elsewhere {

    private Elsewhere() {}

    /** The settings of a machine far away: clock, language, charset, folder and what the JDK makes of them. */
    static Program far(Program program, Path folder) {
        return program.with("-Dfile.encoding=ISO-8859-1", "-Duser.timezone=Asia/Kathmandu", "-Duser.language=ar")
                .with("-Duser.country=EG", "-Dline.separator=\r\n")
                .where("TZ", "Pacific/Kiritimati")
                .where("LANG", "de_DE.UTF-8")
                .where("LC_ALL", "C.UTF-8")
                .in(folder);
    }

    /** Copies demo jobs into a folder of another name; gives where they are. */
    static Path copy(List<String> demos, Path folder) throws IOException {
        Path jobs = folder.resolve("meine Jobs");
        for (String demo : demos) {
            Path from = Path.of("demo-jobs", demo);
            Path to = Files.createDirectories(jobs.resolve(demo));
            try (Stream<Path> files = Files.list(from)) {
                for (Path file : files.toList()) {
                    Files.copy(file, to.resolve(file.getFileName()));
                }
            }
        }
        return jobs;
    }

    /** Makes packs, and labels of some of the jobs in every form. */
    static void packs(Program program, Path jobs, List<String> demos, List<String> labelled, Path to)
            throws IOException, InterruptedException {
        run(program, "pack", jobs, demos, to.resolve("packs"), List.of());
        run(program, "labels", jobs, labelled, to.resolve("labels"), List.of("--also", "png,png_one_bit,svg,text"));
    }

    private static void run(
            Program program, String command, Path jobs, List<String> demos, Path to, List<String> options)
            throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(List.of(command, "--to", to.toString()));
        arguments.addAll(options);
        demos.forEach(demo -> arguments.add(jobs.resolve(demo).toString()));
        Program.Ended ended = program.run(arguments.toArray(String[]::new));
        assertThat(ended.code()).as(ended.said()).isZero();
    }

    /** Compares every file; gives how many. */
    static int same(Path one, Path other) {
        var digests = SmallPack.digests(one);
        assertThat(SmallPack.digests(other)).isEqualTo(digests);
        assertThat(digests.keySet())
                .anyMatch(file -> file.endsWith(".pdf"))
                .anyMatch(file -> file.endsWith(".png"))
                .anyMatch(file -> file.endsWith(".html"))
                .anyMatch(file -> file.endsWith(".json"))
                .anyMatch(file -> file.endsWith(".svg"));
        return digests.size();
    }
}
