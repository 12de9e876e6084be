package org.quaybook.pack;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;

/** Files that are there complete or not at all, also if the program or the machine stops at any moment. */
public final class WholeFile {

    private WholeFile() {}

    /**
     * Writes a file beside its place and moves it in; one of the same name is replaced.
     *
     * @throws IOException if the system refuses; what was there before is still there
     */
    public static void write(Path file, byte[] content) throws IOException {
        Path fresh = fresh(file);
        try {
            fill(fresh, content);
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            discard(fresh, e);
            throw e;
        }
    }

    /** Where a file is written before it is moved in; the next writing of the same file replaces one that was left there. */
    static Path fresh(Path file) {
        return file.resolveSibling("." + file.getFileName() + ".new");
    }

    /**
     * Writes a file where nobody looks for it yet, with the folders above it. It has reached the disk when this returns: a
     * file that is moved before that can be empty after a power cut.
     *
     * @throws IOException if the system refuses
     */
    public static void fill(Path file, byte[] content) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        try (FileChannel to = FileChannel.open(
                file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer rest = ByteBuffer.wrap(content);
            while (rest.hasRemaining()) {
                to.write(rest);
            }
            to.force(true);
        }
    }

    private static void discard(Path fresh, IOException reason) {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }
}
