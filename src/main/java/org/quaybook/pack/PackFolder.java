package org.quaybook.pack;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.proof.Manifest;

/**
 * Puts a pack, or other files that belong together, into its folder: everything is written beside it first and moved into
 * place at once. While that is under way no other run changes the folder; what a run that was broken off has left is put
 * right by the next one.
 */
public final class PackFolder implements AutoCloseable {

    /** Marks a folder as a pack; nothing else is ever replaced. */
    private static final String MARK = Manifest.FILE;

    private final Path target;
    private final Path place;

    /** Folders around it that were not there, innermost first. */
    private final List<Path> made;

    private final Claim claim;

    private PackFolder(Path target, Path place, List<Path> made, Claim claim) {
        this.target = target;
        this.place = place;
        this.made = made;
        this.claim = claim;
    }

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
                    List.of(hints));
        }

        public Diagnostic diagnostic() {
            return diagnostic;
        }
    }

    /**
     * Takes the right to change a folder until it is given back.
     *
     * @param target the folder, there or not
     * @throws NotWritten if another run has it, or the system refuses
     */
    public static PackFolder claim(Path target) throws NotWritten {
        Path place = target.toAbsolutePath().normalize();
        try {
            List<Path> made = Stream.iterate(parent(place), Objects::nonNull, Path::getParent)
                    .takeWhile(folder -> !Files.exists(folder))
                    .toList();
            Files.createDirectories(parent(place));
            PackFolder claimed = new PackFolder(target, place, made, claim(target, place));
            try {
                claimed.restore();
            } catch (IOException e) {
                claimed.close();
                throw e;
            }
            return claimed;
        } catch (IOException e) {
            throw unwritten(target, e);
        }
    }

    private static Claim claim(Path target, Path place) throws NotWritten, IOException {
        Optional<Claim> claim = Claim.on(place);
        if (claim.isEmpty()) {
            throw new NotWritten(target, null, Message.of(PackMessage.BUSY, target.toString()));
        }
        return claim.get();
    }

    private static Path parent(Path place) {
        return Objects.requireNonNullElse(place.getParent(), place);
    }

    private static NotWritten unwritten(Path target, IOException e) {
        return new NotWritten(target, e, Message.of(PackMessage.CANNOT_WRITE, target.toString(), SystemReason.of(e)));
    }

    /**
     * Writes a pack; an earlier one there is replaced.
     *
     * @param files path inside the pack to content
     * @throws NotWritten if something else than a pack is there, or the system refuses; what was there is still there
     */
    public void write(Map<String, byte[]> files) throws NotWritten {
        write(MARK, files, Optional.empty());
    }

    /**
     * Writes a pack in the place of an issued one, which is kept.
     *
     * @param kept where the pack that lies there goes; nothing may be there yet
     * @throws NotWritten as above
     */
    public void writeNext(Path kept, Map<String, byte[]> files) throws NotWritten {
        write(MARK, files, Optional.of(kept));
    }

    /**
     * Writes a folder of files that belong together.
     *
     * @param mark name of the file that such a folder always has: one without it is never replaced
     * @throws NotWritten as above, or if another run is changing the folder
     */
    public static void write(Path target, String mark, Map<String, byte[]> files) throws NotWritten {
        try (PackFolder folder = claim(target)) {
            folder.write(mark, files, Optional.empty());
        }
    }

    private void write(String mark, Map<String, byte[]> files, Optional<Path> kept) throws NotWritten {
        try {
            if (Files.exists(place) && !isOursOrEmpty(place, mark)) {
                throw new NotWritten(
                        target,
                        null,
                        Message.of(PackMessage.NOT_A_PACK, target.toString()),
                        Message.of(PackMessage.NOT_A_PACK_HINT));
            }
            Path fresh = Files.createDirectory(fresh());
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                WholeFile.fill(fresh.resolve(file.getKey()), file.getValue());
            }
            swap(fresh, kept);
        } catch (IOException e) {
            discard(fresh());
            throw unwritten(target, e);
        }
    }

    /** Gives the right to change the folder back; of a folder that was not written nothing stays. */
    @Override
    public void close() {
        claim.close();
        try {
            for (Path folder : made) {
                Files.delete(folder);
            }
        } catch (IOException e) {
            // Something is in it.
        }
    }

    /**
     * Writes one file, complete or not at all; one of the same name is replaced.
     *
     * @throws NotWritten if the system refuses, something else than a file stands there, or another run is writing it
     */
    public static void writeFile(Path target, byte[] content) throws NotWritten {
        writeFile(target, Optional.empty(), content);
    }

    /**
     * Writes one file in the place of what was read from it.
     *
     * @param read its text as it was read; empty if it was not there
     * @throws NotWritten as above, or if somebody else has written it meanwhile
     */
    public static void writeFile(Path target, String read, byte[] content) throws NotWritten {
        writeFile(target, Optional.of(read), content);
    }

    private static void writeFile(Path target, Optional<String> read, byte[] content) throws NotWritten {
        Path place = target.toAbsolutePath().normalize();
        try {
            if (Files.exists(place) && !Files.isRegularFile(place)) {
                throw new NotWritten(target, null, Message.of(PackMessage.NOT_A_FILE, target.toString()));
            }
            Files.createDirectories(parent(place));
            Claim claim = claim(target, place);
            try {
                if (read.isPresent() && !unmarked(read.get()).equals(unmarked(text(place)))) {
                    throw new NotWritten(target, null, Message.of(PackMessage.BUSY, target.toString()));
                }
                WholeFile.write(place, content);
            } finally {
                claim.close();
            }
        } catch (IOException e) {
            throw unwritten(target, e);
        }
    }

    private static String text(Path place) throws IOException {
        return Files.exists(place) ? Files.readString(place) : "";
    }

    /** A reader may leave a byte order mark out. */
    private static String unmarked(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** Where a pack is written before it is moved in. */
    private Path fresh() {
        return WholeFile.fresh(place);
    }

    /** Holds the pack that is being replaced, under its own name: so nobody takes it for one of the packs. */
    private Path former() {
        return place.resolveSibling("." + place.getFileName() + ".former");
    }

    /** What a run that was broken off has left: between its two moves the former pack is not in its place. */
    private void restore() throws IOException {
        Path before = former().resolve(place.getFileName());
        if (Files.exists(before) && !Files.exists(place)) {
            Files.move(before, place, StandardCopyOption.ATOMIC_MOVE);
        }
        delete(former());
        delete(fresh());
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

    private void swap(Path fresh, Optional<Path> kept) throws IOException {
        if (!Files.exists(place)) {
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
            return;
        }
        Path aside = kept.isPresent()
                ? kept.get().toAbsolutePath().normalize()
                : Files.createDirectory(former()).resolve(place.getFileName());
        if (Files.exists(aside)) {
            throw new FileAlreadyExistsException(aside.toString());
        }
        Files.move(place, aside, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(fresh, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(aside, place, StandardCopyOption.ATOMIC_MOVE);
            discard(former());
            throw e;
        }
        discard(former());
    }

    /** The pack is in its place or the reason for stopping is told; what is left beside it the next run takes away. */
    private static void discard(Path folder) {
        try {
            delete(folder);
        } catch (IOException e) {
            // As said above.
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
