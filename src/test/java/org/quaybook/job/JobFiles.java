package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

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

    /**
     * Holds a text against the file that keeps it. With {@code -Drenew=<name>} the file is written anew first; look at the
     * difference before committing it.
     */
    static void assertSame(Path kept, String text, String name) {
        if (name.equals(System.getProperty("renew"))) {
            try {
                Files.writeString(kept, text);
            } catch (IOException unwritable) {
                throw new UncheckedIOException(unwritable);
            }
        }
        assertThat(text)
                .as("%s: if the change is meant, renew it with mvn test -Drenew=%s", kept, name)
                .isEqualTo(text(kept));
    }

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
