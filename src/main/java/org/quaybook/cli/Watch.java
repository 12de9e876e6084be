package org.quaybook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Waits until somebody has saved one of some files. It looks at them again and again instead of asking the system for
 * news, so that network drives and editors that replace a file by a new one are no different.
 */
final class Watch {

    private static final long PAUSE_MILLIS = 300;
    private static final int DEEPEST = 6;

    private final Collection<Path> watched;
    private Map<Path, Stamp> seen;

    /** What changes when a file is saved. */
    private record Stamp(FileTime written, long size) {}

    /** @param watched files, and folders with all that is in them; what does not exist yet may appear */
    Watch(Collection<Path> watched) {
        this.watched = watched;
        this.seen = stamps();
    }

    /**
     * Returns as soon as a file was saved, added or removed since the last call and nothing was for a moment.
     *
     * @throws InterruptedException if the thread is told to stop waiting
     */
    void awaitChange() throws InterruptedException {
        Map<Path, Stamp> now = stamps();
        while (now.equals(seen)) {
            Thread.sleep(PAUSE_MILLIS);
            now = stamps();
        }
        // An editor may write in several goes.
        do {
            seen = now;
            Thread.sleep(PAUSE_MILLIS);
            now = stamps();
        } while (!now.equals(seen));
    }

    private Map<Path, Stamp> stamps() {
        Map<Path, Stamp> stamps = new TreeMap<>();
        for (Path path : watched) {
            try (Stream<Path> files = Files.walk(path, DEEPEST, FileVisitOption.FOLLOW_LINKS)) {
                files.forEach(file -> stamp(file, stamps));
            } catch (IOException | UncheckedIOException gone) {
                // Looked for again at the next turn.
            }
        }
        return stamps;
    }

    private static void stamp(Path file, Map<Path, Stamp> stamps) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            if (attributes.isRegularFile()) {
                stamps.put(file, new Stamp(attributes.lastModifiedTime(), attributes.size()));
            }
        } catch (IOException gone) {
            // Between being listed and being looked at; the next turn sees it without.
        }
    }
}
