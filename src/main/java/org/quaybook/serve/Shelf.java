package org.quaybook.serve;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Files as they are now, read whole and from one open handle each, so that a file that is replaced meanwhile is had as it
 * was or as it is. What was read is kept as long as the file is the same: same identity, size and times.
 */
final class Shelf {

    /** Bytes; a larger file is none of a record's. */
    private static final int LARGEST = 64 * 1024 * 1024;

    private static final long KEPT_BYTES = 64L * 1024 * 1024;
    private static final int READINGS = 4;
    private static final int LOCKS = 64;

    /** A file written twice within one tick of the file system's clock (FAT: 2 s) can look the same afterwards. */
    private static final Duration TICK = Duration.ofSeconds(3);

    private final InstantSource clock;
    private final Object[] locks = new Object[LOCKS];
    private final LinkedHashMap<Path, Kept> kept = new LinkedHashMap<>(16, 0.75f, true);
    private long keptBytes;

    Shelf(InstantSource clock) {
        this.clock = clock;
        for (int i = 0; i < LOCKS; i++) {
            locks[i] = new Object();
        }
    }

    /** What changes when a file is replaced or written to, as far as the file system says. */
    private record Stamp(Map<String, Object> attributes) {

        private static final String PLAIN = "isRegularFile,size,fileKey,lastModifiedTime";

        static Stamp of(Path file) throws IOException {
            boolean unix = file.getFileSystem().supportedFileAttributeViews().contains("unix");
            return new Stamp(new HashMap<>(
                    Files.readAttributes(file, unix ? "unix:ctime," + PLAIN : PLAIN, LinkOption.NOFOLLOW_LINKS)));
        }

        boolean isFile() {
            return Boolean.TRUE.equals(attributes.get("isRegularFile"));
        }

        long size() {
            return (Long) Objects.requireNonNull(attributes.get("size"));
        }

        Instant modified() {
            return ((FileTime) Objects.requireNonNull(attributes.get("lastModifiedTime"))).toInstant();
        }

        /** Whether nothing was done to the file since some time. */
        boolean settledAt(Instant time) {
            return attributes.values().stream()
                    .filter(FileTime.class::isInstance)
                    .allMatch(written -> ((FileTime) written).toInstant().isBefore(time));
        }
    }

    /** @param settled whether the stamp alone tells that the content is still the same */
    private record Kept(Stamp stamp, Content content, boolean settled) {

        long bytes() {
            // With the compressed form.
            return 2L * content.bytes().length;
        }
    }

    /**
     * What a file holds.
     *
     * @param file absolute, with no link on the way
     * @throws IOException if it is no regular file, or larger than 64 MiB, or cannot be read
     */
    Content read(Path file) throws IOException {
        // Many who ask for the same large file at once read it once.
        synchronized (locks[Math.floorMod(file.hashCode(), LOCKS)]) {
            for (int reading = 1; ; reading++) {
                Instant settled = clock.instant().minus(TICK);
                Stamp before = Stamp.of(file);
                Kept former = kept(file);
                if (former != null && former.settled() && former.stamp().equals(before)) {
                    return former.content();
                }
                byte[] bytes = bytes(file, before);
                Stamp after = Stamp.of(file);
                boolean same = before.equals(after) && bytes.length == before.size();
                if (same || reading == READINGS) {
                    Content content = former != null
                                    && former.content().holds(bytes)
                                    && former.content().modified().equals(before.modified())
                            ? former.content()
                            : new Content(bytes, before.modified());
                    keep(file, new Kept(before, content, same && before.settledAt(settled)));
                    return content;
                }
            }
        }
    }

    private static byte[] bytes(Path file, Stamp stamp) throws IOException {
        if (!stamp.isFile()) {
            throw new IOException("no regular file: " + file.getFileName());
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new IOException("larger than " + LARGEST + " bytes: " + file.getFileName());
            }
            return bytes;
        }
    }

    private @Nullable Kept kept(Path file) {
        synchronized (kept) {
            return kept.get(file);
        }
    }

    private void keep(Path file, Kept fresh) {
        synchronized (kept) {
            Kept former = kept.put(file, fresh);
            keptBytes += fresh.bytes() - (former == null ? 0 : former.bytes());
            Iterator<Kept> eldest = kept.values().iterator();
            while (keptBytes > KEPT_BYTES && eldest.hasNext()) {
                keptBytes -= eldest.next().bytes();
                eldest.remove();
            }
        }
    }
}
