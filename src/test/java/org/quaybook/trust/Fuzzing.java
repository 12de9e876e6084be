package org.quaybook.trust;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.DemoJobs;

/** Starts the coverage-guided fuzzer on a target, in a process of its own. */
final class Fuzzing {

    private static final Path BAD_JOBS = Path.of("src/test/resources/jobs/bad");
    private static final Path FULL_JOB = Path.of("src/test/resources/jobs/full.yaml");
    private static final Pattern KEY_OR_TERM = Pattern.compile("[a-z][a-z-]{2,}:?");

    private Fuzzing() {}

    /**
     * @param folder where the texts that reach new code, and those that bring out a fault, are kept
     * @param until what ends it, and what it begins from, in options of libFuzzer
     */
    static Process start(Class<?> target, Path folder, String... until) throws IOException {
        Path corpus = Files.createDirectories(folder.resolve(target.getSimpleName()));
        seeds(corpus, target.equals(WholeRoadTarget.class) ? List.of("second-biscuit") : DemoJobs.ALL);
        Path dictionary = folder.resolve("dictionary");
        Files.writeString(dictionary, dictionary());
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx1g",
                "-Djava.awt.headless=true",
                "-XX:+IgnoreUnrecognizedVMOptions",
                "-XX:+EnableDynamicAgentLoading",
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + target.getName(),
                "--instrumentation_includes=org.quaybook.**:org.yaml.snakeyaml.**",
                "--reproducer_path=" + folder,
                "-artifact_prefix=" + folder + "/",
                "-dict=" + dictionary,
                "-max_len=40000",
                "-timeout=300",
                "-rss_limit_mb=0",
                "-print_final_stats=1",
                corpus.toString()));
        command.addAll(List.of(until));
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve(target.getSimpleName() + ".log").toFile())
                .start();
    }

    /** A pack takes seconds and every seed is tried first, so that the whole road begins with few demo jobs. */
    private static void seeds(Path corpus, List<String> demos) throws IOException {
        for (String demo : demos) {
            Files.write(corpus.resolve(demo), Files.readAllBytes(Path.of("demo-jobs", demo, "job.yaml")));
        }
        try (Stream<Path> files = Files.list(BAD_JOBS)) {
            for (Path file :
                    files.filter(file -> file.toString().endsWith(".yaml")).toList()) {
                Files.write(corpus.resolve(file.getFileName().toString()), Files.readAllBytes(file));
            }
        }
    }

    /** The words of the job format, which no fuzzer would hit upon. */
    private static String dictionary() throws IOException {
        return KEY_OR_TERM
                .matcher(new String(Files.readAllBytes(FULL_JOB), StandardCharsets.UTF_8))
                .results()
                .map(found -> "\"" + found.group() + "\"")
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** Arguments: seconds for each target. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createDirectories(Path.of("target", "fuzz"));
        for (Class<?> target : List.of(JobTextTarget.class, WholeRoadTarget.class)) {
            Process fuzzer = start(target, folder, "-max_total_time=" + Integer.parseInt(arguments[0]));
            int code = fuzzer.waitFor();
            try (Stream<String> log = Files.lines(folder.resolve(target.getSimpleName() + ".log"))) {
                log.filter(line -> line.startsWith("stat::") || line.contains("ERROR") || line.startsWith("Done "))
                        .forEach(System.out::println);
            }
            System.out.println(target.getSimpleName() + " ended with " + code + "; all of it in " + folder);
            if (code != 0) {
                System.exit(code);
            }
        }
    }
}
