package org.quaybook.pack;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.proof.Manifest;

/** Puts a pack into its folder: everything is written beside it first and moved into place at once. */
public final class PackFolder {

    /** Marks a folder as a pack; nothing else is ever replaced. */
    private static final String MARK = Manifest.FILE;

    private PackFolder() {}

    /** A pack could not be put in place; what was there before is still there. */
    public static final class NotWritten extends Exception {
        private static final long serialVersionUID = 1;

        private final transient Diagnostic diagnostic;

        NotWritten(Path folder, @Nullable Throwable cause, Message message, Message... hints) {
            super(message.key().key(), cause);
            this.diagnostic = new Diagnostic(
                    Severity.ERROR,
                    message.key().key(),
                    new Place(folder.toString(), "", Position.START),
                    "",
                    message,
                    java.util.List.of(hints));
        }

        public Diagnostic diagnostic() {
            return diagnostic;
        }
    }

    /**
     * Writes a pack.
     *
     * @param target the pack's folder; an earlier pack there is replaced
     * @param files path inside the pack to content
     * @throws NotWritten if the target is something else than a pack, or the system refuses
     */
    public static void write(Path target, Map<String, byte[]> files) throws NotWritten {
        write(target, MARK, files, Optional.empty());
    }

    /**
     * Writes a pack in the place of an issued one, which is kept.
     *
     * @param kept where the pack that lies there goes; nothing may be there yet
     * @throws NotWritten as above
     */
    public static void writeNext(Path target, Path kept, Map<String, byte[]> files) throws NotWritten {
        write(target, MARK, files, Optional.of(kept));
    }

    /**
     * Writes another folder of files that belong together.
     *
     * @param mark name of the file that such a folder always has: one without it is never replaced
     * @throws NotWritten as above
     */
    public static void write(Path target, String mark, Map<String, byte[]> files) throws NotWritten {
        write(target, mark, files, Optional.empty());
    }

    private static void write(Path target, String mark, Map<String, byte[]> files, Optional<Path> kept)
            throws NotWritten {
        Path place = target.toAbsolutePath().normalize();
        Path parent = java.util.Objects.requireNonNullElse(place.getParent(), place);
        @Nullable Path fresh = null;
        try {
            if (Files.exists(place) && !isOursOrEmpty(place, mark)) {
                throw new NotWritten(
                        target,
                        null,
                        Message.of(PackMessage.NOT_A_PACK, target.toString()),
                        Message.of(PackMessage.NOT_A_PACK_HINT));
            }
            Files.createDirectories(parent);
            fresh = Files.createTempDirectory(parent, "." + place.getFileName() + ".new-");
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Path path = fresh.resolve(file.getKey());
                Files.createDirectories(java.util.Objects.requireNonNull(path.getParent()));
                Files.write(path, file.getValue());
            }
            readable(fresh);
            swap(fresh, place, parent, kept);
        } catch (IOException e) {
            discard(fresh);
            throw new NotWritten(target, e, Message.of(PackMessage.CANNOT_WRITE, target.toString(), reason(e)));
        }
    }

    /**
     * Writes one file, complete or not at all; one of the same name is replaced.
     *
     * @throws NotWritten if the system refuses, or something else than a file stands there
     */
    public static void writeFile(Path target, byte[] content) throws NotWritten {
        Path place = target.toAbsolutePath().normalize();
        Path parent = java.util.Objects.requireNonNullElse(place.getParent(), place);
        try {
            if (Files.exists(place) && !Files.isRegularFile(place)) {
                throw new NotWritten(target, null, Message.of(PackMessage.NOT_A_FILE, target.toString()));
            }
            Files.createDirectories(parent);
            Path fresh = parent.resolve("." + place.getFileName() + ".new");
            Files.write(fresh, content);
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new NotWritten(target, e, Message.of(PackMessage.CANNOT_WRITE, target.toString(), reason(e)));
        }
    }

    private static String reason(IOException e) {
        return e.getClass().getSimpleName().replace("Exception", "")
                + (e.getMessage() == null ? "" : ": " + e.getMessage());
    }

    private static boolean isOursOrEmpty(Path folder, String mark) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
            return Files.isRegularFile(folder.resolve(mark))
                    || !inside.iterator().hasNext();
        }
    }

    /** A temporary folder is for its owner only; a pack is to be read like any other folder made here. */
    private static void readable(Path folder) throws IOException {
        Path parent = java.util.Objects.requireNonNull(folder.getParent());
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(folder, Files.getPosixFilePermissions(parent));
        }
    }

    private static void swap(Path fresh, Path place, Path parent, Optional<Path> kept) throws IOException {
        if (!Files.exists(place)) {
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        if (kept.isPresent()) {
            Files.move(place, kept.get(), StandardCopyOption.ATOMIC_MOVE);
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path old = Files.createTempDirectory(parent, "." + place.getFileName() + ".old-");
        Path before = old.resolve("pack");
        Files.move(place, before, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(before, place, StandardCopyOption.ATOMIC_MOVE);
            delete(old);
            throw e;
        }
        delete(old);
    }

    private static void discard(@Nullable Path folder) {
        if (folder != null) {
            try {
                delete(folder);
            } catch (IOException e) {
                // The reason for stopping is told; a leftover beside the pack harms nobody.
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path directory, @Nullable IOException e) throws IOException {
                if (e != null) {
                    throw e;
                }
                Files.delete(directory);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
