package org.quaybook.api;

import java.util.Collections;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;

/** The documents of one job, in memory. */
public final class Pack {

    private final TreeMap<String, byte[]> files;

    /** @param files nobody else's from now on */
    Pack(Map<String, byte[]> files) {
        this.files = new TreeMap<>(files);
    }

    /**
     * The paths of the documents.
     *
     * @return with {@code /} between folders, such as {@code guide.pdf}
     */
    public SortedSet<String> paths() {
        return Collections.unmodifiableSortedSet(files.navigableKeySet());
    }

    /**
     * What is in a document.
     *
     * @param path one of {@link #paths()}
     * @return a copy
     * @throws IllegalArgumentException if there is no such document
     */
    public byte[] bytes(String path) {
        byte[] content = files.get(path);
        if (content == null) {
            throw new IllegalArgumentException("no " + path + " in the pack, only " + paths());
        }
        return content.clone();
    }
}
