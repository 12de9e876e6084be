package org.quaybook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files of the project that tests make from the code. */
public final class KeptFile {

    private KeptFile() {}

    /**
     * Holds a text against the file that keeps it. With {@code -Drenew=<name>} the file is written anew first; look at the
     * difference before committing it.
     */
    public static void assertSame(Path kept, String text, String name) {
        try {
            if (name.equals(System.getProperty("renew"))) {
                Files.writeString(kept, text);
            }
            assertThat(text)
                    .as("%s: if the change is meant, renew it with mvn test -Drenew=%s", kept, name)
                    .isEqualTo(Files.readString(kept));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
