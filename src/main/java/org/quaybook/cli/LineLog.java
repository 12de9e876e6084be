package org.quaybook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Consumer;

/**
 * A file that lines are added to. It is opened anew for each, so that whoever takes the file away to keep it by the day
 * need not tell.
 */
final class LineLog implements Consumer<String> {

    private final Path file;
    private final Consumer<IOException> unwritable;
    private boolean told;

    /** @param unwritable hears once why lines are lost, and again after some could be written */
    LineLog(Path file, Consumer<IOException> unwritable) {
        this.file = file;
        this.unwritable = unwritable;
    }

    @Override
    public synchronized void accept(String line) {
        try {
            Files.writeString(
                    file, line + System.lineSeparator(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            told = false;
        } catch (IOException e) {
            if (!told) {
                unwritable.accept(e);
            }
            told = true;
        }
    }
}
