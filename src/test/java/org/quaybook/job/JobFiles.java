package org.quaybook.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The job files that the tests read. */
final class JobFiles {

    static final Path FOLDER = Path.of("src/test/resources/jobs");

    static final Vocabulary VOCABULARY =
            new Vocabulary(List.of("iso-13297", "abyc-e11", "caravan", "cabin"), List.of("en-GB", "nl"));

    private JobFiles() {}

    static String text(String name) {
        return text(FOLDER.resolve(name));
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
