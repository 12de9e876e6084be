package org.quaybook.pack.site;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Message;
import org.quaybook.pack.PackFolder;
import org.quaybook.pack.WholeFile;
import org.quaybook.proof.Digest;
import org.quaybook.proof.Manifest;
import org.quaybook.proof.PrivateKeyFile;
import org.quaybook.proof.Refused;
import org.quaybook.proof.Signing;

/**
 * A folder of published records, as any web host can show it. Whatever is read while something is published is whole: a
 * new record and an earlier revision appear at once under their names, a file that is replaced is either the old or the
 * new one. Publishing that was broken off is done by publishing again.
 */
public final class Site {

    private static final String UNKNOWN_CODE = "404.html";
    private static final String LOCK = ".publishing";
    private static final String FRESH = ".new-";
    private static final String PAGE = "index.html";
    private static final Pattern RECORD = Pattern.compile("[0-9A-HJKMNP-TV-Z]{21}");
    private static final Pattern EARLIER = Pattern.compile("revision-[1-9][0-9]{0,2}");

    private final Path folder;

    private Site(Path folder) {
        this.folder = folder;
    }

    /** What became of a pack. */
    public enum Outcome {
        /** The record was not there before. */
        NEW,
        /** It follows the revision that was there. */
        NEXT,
        /** It was there already. */
        SAME,
        /** It is there as an earlier revision; nothing was written. */
        EARLIER
    }

    /**
     * A site.
     *
     * @throws NotPublished if something else is in its place
     */
    public static Site at(Path folder) throws NotPublished {
        Path place = folder.toAbsolutePath().normalize();
        if (Files.exists(place) && !isSite(place)) {
            throw NotPublished.refused(folder, Message.of(SiteMessage.NOT_A_SITE, folder.toString()));
        }
        return new Site(place);
    }

    /** Empty, or with the page that every site has. */
    private static boolean isSite(Path place) {
        try (Stream<Path> inside = Files.list(place)) {
            return Files.isRegularFile(place.resolve(UNKNOWN_CODE))
                    || inside.allMatch(file -> file.getFileName().toString().equals(LOCK));
        } catch (IOException e) {
            return false;
        }
    }

    /** Whether a path lies inside the site, where anybody could read it. */
    public boolean holds(Path path) {
        return path.toAbsolutePath().normalize().startsWith(folder);
    }

    /**
     * Publishes a pack: signs its manifest and puts the signature beside it in the pack, too.
     *
     * @throws NotPublished if the pack is not whole, is older than what is published or does not follow it, or the system
     *     refuses
     */
    public Outcome publish(Path pack, PrivateKeyFile key) throws NotPublished {
        Path place = pack.toAbsolutePath().normalize();
        if (!Files.isDirectory(Objects.requireNonNullElse(place.getParent(), place))) {
            throw NotPublished.refused(pack, Message.of(SiteMessage.NOT_A_PACK, pack.toString(), Manifest.FILE));
        }
        PackFolder folder;
        try {
            // So that what is signed is what lies there.
            folder = PackFolder.claim(pack);
        } catch (PackFolder.NotWritten e) {
            throw NotPublished.unsigned(e);
        }
        try {
            return signed(pack, key);
        } finally {
            folder.close();
        }
    }

    private Outcome signed(Path pack, PrivateKeyFile key) throws NotPublished {
        IssuedPack issued = IssuedPack.read(pack);
        Optional<String> named = issued.namedKey();
        String ours = key.verifyingKey().toString();
        if (named.isPresent() && !named.get().equals(ours)) {
            throw NotPublished.refused(pack, Message.of(SiteMessage.OTHER_KEY, named.get(), ours));
        }
        return alone(() -> publish(issued, Signing.sign(issued.manifestBytes(), key)));
    }

    /** Something that changes the site. */
    private interface Change<T> {
        T make() throws NotPublished, IOException;
    }

    /** One change at a time, also of several programs. */
    private <T> T alone(Change<T> change) throws NotPublished {
        try {
            Files.createDirectories(folder);
            try (FileChannel lock = FileChannel.open(
                            folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = lockOrNothing(lock)) {
                if (held == null) {
                    throw NotPublished.refused(folder, Message.of(SiteMessage.BUSY, folder.toString()));
                }
                clear(folder);
                return change.make();
            }
        } catch (IOException e) {
            throw NotPublished.unwritten(folder, e);
        }
    }

    /** What publishing that was broken off has left. */
    private static void clear(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            for (Path left : inside.filter(file -> file.getFileName().toString().startsWith(FRESH))
                    .toList()) {
                delete(left);
            }
        }
    }

    private static @Nullable FileLock lockOrNothing(FileChannel lock) throws IOException {
        try {
            return lock.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private Outcome publish(IssuedPack pack, byte[] signature) throws NotPublished, IOException {
        Path record = folder.resolve(pack.manifest().folder());
        if (Files.exists(record.resolve(Manifest.WITHDRAWN_FILE))) {
            throw NotPublished.refused(record, Message.of(SiteMessage.WITHDRAWN));
        }
        Optional<Manifest> before = before(record);
        Outcome outcome = before.isEmpty() ? first(pack) : next(pack, before.get(), record);
        if (outcome == Outcome.EARLIER) {
            return outcome;
        }
        Map<String, byte[]> files = new TreeMap<>(pack.published());
        files.put(Manifest.FILE, pack.manifestBytes());
        files.put(Manifest.SIGNATURE_FILE, signature);
        // In the pack first: what is published has always been issued.
        replace(pack.folder().resolve(Manifest.SIGNATURE_FILE), signature);
        replace(folder.resolve(UNKNOWN_CODE), pack.unknownCode());
        if (outcome == Outcome.NEW) {
            appear(record, files);
        } else {
            clear(record);
            if (outcome == Outcome.NEXT) {
                keep(record, before.get());
            }
            renew(record, files);
        }
        return outcome;
    }

    private static Optional<Manifest> before(Path record) throws NotPublished {
        Path file = record.resolve(Manifest.FILE);
        if (!Files.exists(record)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Manifest.read(Files.readAllBytes(file)));
        } catch (IOException | Refused e) {
            throw altered(record, Manifest.FILE);
        }
    }

    private static NotPublished altered(Path record, String file) {
        return NotPublished.refused(
                record, Message.of(SiteMessage.RECORD_ALTERED, file), Message.of(SiteMessage.RECORD_ALTERED_HINT));
    }

    private static Outcome first(IssuedPack pack) throws NotPublished {
        Optional<Manifest.Previous> previous = pack.manifest().previous();
        if (previous.isPresent()) {
            throw NotPublished.refused(
                    pack.folder(),
                    Message.of(SiteMessage.BEFORE_MISSING, previous.get().revision()));
        }
        return Outcome.NEW;
    }

    private static Outcome next(IssuedPack pack, Manifest before, Path record) throws NotPublished, IOException {
        Manifest now = pack.manifest();
        byte[] published = Files.readAllBytes(record.resolve(Manifest.FILE));
        if (now.revision() == before.revision()) {
            if (Arrays.equals(published, pack.manifestBytes())) {
                return Outcome.SAME;
            }
            throw NotPublished.refused(
                    pack.folder(),
                    Message.of(
                            SiteMessage.ISSUED_OTHERWISE,
                            before.revision(),
                            before.date().toString(),
                            before.revision() + 1));
        }
        if (now.revision() < before.revision()) {
            Path kept = record.resolve("revision-" + now.revision()).resolve(Manifest.FILE);
            if (Files.exists(kept) && Arrays.equals(Files.readAllBytes(kept), pack.manifestBytes())) {
                return Outcome.EARLIER;
            }
            throw NotPublished.refused(pack.folder(), Message.of(SiteMessage.OLDER, now.revision(), before.revision()));
        }
        boolean follows = now.previous()
                .filter(previous -> previous.revision() == before.revision()
                        && previous.sha256().equals(Digest.of(published)))
                .isPresent();
        if (!follows) {
            throw NotPublished.refused(
                    pack.folder(),
                    Message.of(
                            SiteMessage.DOES_NOT_FOLLOW,
                            now.previous().map(Manifest.Previous::revision).orElse(0),
                            before.revision()));
        }
        return Outcome.NEXT;
    }

    /** A record that was not there before, all of it at once. */
    private void appear(Path record, Map<String, byte[]> files) throws IOException {
        Path fresh = Files.createTempDirectory(folder, FRESH);
        try {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                WholeFile.fill(fresh.resolve(file.getKey()), file.getValue());
            }
            readable(fresh);
            Files.move(fresh, record, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            delete(fresh);
        }
    }

    /** Keeps the revision that is about to be replaced, all of it at once, unless that has been done. */
    private static void keep(Path record, Manifest before) throws NotPublished, IOException {
        Path kept = record.resolve("revision-" + before.revision());
        if (Files.exists(kept)) {
            return;
        }
        Path fresh = Files.createTempDirectory(record, FRESH);
        try {
            for (Map.Entry<String, String> file : before.published().entrySet()) {
                Path source = record.resolve(file.getKey());
                byte[] content = Files.isRegularFile(source, LinkOption.NOFOLLOW_LINKS)
                        ? Files.readAllBytes(source)
                        : new byte[0];
                if (!Digest.of(content).equals(file.getValue())) {
                    throw altered(record, file.getKey());
                }
                WholeFile.fill(fresh.resolve(file.getKey()), content);
            }
            for (String name : List.of(Manifest.FILE, Manifest.SIGNATURE_FILE)) {
                if (!Files.isRegularFile(record.resolve(name), LinkOption.NOFOLLOW_LINKS)) {
                    throw altered(record, name);
                }
                WholeFile.fill(fresh.resolve(name), Files.readAllBytes(record.resolve(name)));
            }
            readable(fresh);
            Files.move(fresh, kept, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            delete(fresh);
        }
    }

    /** File by file, the page last but for the manifest: until that is there, publishing again goes on from here. */
    private static void renew(Path record, Map<String, byte[]> files) throws IOException {
        List<String> order = new ArrayList<>(files.keySet());
        order.sort(Comparator.comparingInt(Site::turn).thenComparing(Comparator.naturalOrder()));
        for (String name : order) {
            replace(record.resolve(name), Objects.requireNonNull(files.get(name)));
        }
        for (Path file : filesOf(record)) {
            if (!files.containsKey(record.relativize(file).toString().replace('\\', '/'))) {
                Files.delete(file);
            }
        }
    }

    private static int turn(String name) {
        return switch (name) {
            case Manifest.FILE -> 3;
            case Manifest.SIGNATURE_FILE -> 2;
            case PAGE -> 1;
            default -> 0;
        };
    }

    /** The files of the newest revision, and leftovers. */
    private static List<Path> filesOf(Path record) throws IOException {
        try (Stream<Path> all = Files.walk(record)) {
            return all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .filter(file -> !EARLIER.matcher(
                                    record.relativize(file).getName(0).toString())
                            .matches())
                    .toList();
        }
    }

    /**
     * Takes a record off: nothing of it stays but a page that says so. Its code is never used again.
     *
     * @param code the record's, without hyphens
     * @param page what to say
     * @throws NotPublished if no such record is there, or the system refuses
     */
    public void withdraw(String code, byte[] page) throws NotPublished {
        Path record = folder.resolve(code);
        if (!RECORD.matcher(code).matches() || !Files.isDirectory(record, LinkOption.NOFOLLOW_LINKS)) {
            throw NotPublished.refused(folder, Message.of(SiteMessage.NOT_THERE, code));
        }
        alone(() -> {
            // The mark first: whatever is broken off after it, the record is not published again.
            replace(record.resolve(Manifest.WITHDRAWN_FILE), "withdrawn\n".getBytes(StandardCharsets.US_ASCII));
            replace(record.resolve(PAGE), page);
            try (Stream<Path> all = Files.list(record)) {
                for (Path file : all.toList()) {
                    String name = file.getFileName().toString();
                    if (!name.equals(Manifest.WITHDRAWN_FILE) && !name.equals(PAGE)) {
                        delete(file);
                    }
                }
            }
            return record;
        });
    }

    private static void replace(Path file, byte[] content) throws IOException {
        Files.createDirectories(Objects.requireNonNull(file.getParent()));
        WholeFile.write(file, content);
    }

    /** A temporary folder is for its owner only; a record is to be read by the web server. */
    private static void readable(Path fresh) throws IOException {
        Path parent = Objects.requireNonNull(fresh.getParent());
        if (Files.getFileStore(fresh).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(fresh, Files.getPosixFilePermissions(parent));
        }
    }

    private static void delete(Path tree) throws IOException {
        if (!Files.exists(tree, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(tree)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
