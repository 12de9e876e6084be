package org.quaybook.trust;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.quaybook.text.Words;

/** What the fuzzer calls with each job text it makes up: the road to the figures and findings. */
public final class JobTextTarget {

    private static final Path DEMO = Path.of("demo-jobs", "second-biscuit");
    private static final Words WORDS = Words.of("en-GB");
    private static final Path FOLDER = folder();

    private JobTextTarget() {}

    public static void fuzzerTestOneInput(byte[] job) throws IOException {
        tried(job, () -> false);
    }

    /** @throws AssertionError if the program did not end as it should */
    static void tried(byte[] job, BooleanSupplier whole) throws IOException {
        Files.write(FOLDER.resolve("job.yaml"), job);
        Trial.Result result = new Trial(FOLDER, WORDS).run(whole);
        if (!result.faults().isEmpty()) {
            throw new AssertionError(String.join("\n", result.faults()));
        }
    }

    private static Path folder() {
        try {
            Path folder = Files.createTempDirectory("quaybook-fuzz");
            try (Stream<Path> files = Files.list(DEMO)) {
                for (Path file : files.toList()) {
                    Files.copy(file, folder.resolve(file.getFileName().toString()));
                }
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
