package org.quaybook.pack;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The right to change what lies at a place, for one program at a time. It is held through a lock on a file beside the place:
 * the system takes it back when the program ends, however it ends.
 */
final class Claim implements AutoCloseable {

    /** Each turn means that another program gave its claim back meanwhile. */
    private static final int TURNS = 10;

    private final Path file;
    private final FileChannel channel;

    private Claim(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the right to change a place; empty if another program, or another part of this one, has it.
     *
     * @param place a file or a folder, there or not, in a folder that is there
     * @throws IOException if the system refuses
     */
    static Optional<Claim> on(Path place) throws IOException {
        Path file = place.resolveSibling("." + place.getFileName() + ".lock");
        for (int turn = 0; turn < TURNS; turn++) {
            FileChannel channel = null;
            try {
                create(file);
                Object before = identity(file);
                channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = lock(channel);
                if (lock == null) {
                    channel.close();
                    return Optional.empty();
                }
                // Whoever gives a claim back deletes the file: a lock on a deleted one is worth nothing.
                if (Objects.equals(identity(file), before)) {
                    return Optional.of(new Claim(file, channel));
                }
                channel.close();
            } catch (NoSuchFileException deleted) {
                if (channel != null) {
                    channel.close();
                }
                if (!Files.isDirectory(Objects.requireNonNull(file.getParent()))) {
                    throw deleted;
                }
            } catch (IOException e) {
                if (channel != null) {
                    channel.close();
                }
                throw e;
            }
        }
        return Optional.empty();
    }

    private static void create(Path file) throws IOException {
        try {
            Files.createFile(file);
        } catch (FileAlreadyExistsException e) {
            // Another has it, or has left it.
        }
    }

    /** Of the file that the name stands for now; null where the system does not say. */
    private static @Nullable Object identity(Path file) throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class).fileKey();
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    /** Gives the right back. */
    @Override
    public void close() {
        try {
            Files.deleteIfExists(file);
            channel.close();
        } catch (IOException e) {
            // A file that is left keeps nobody out: only a lock on it does.
        }
    }
}
