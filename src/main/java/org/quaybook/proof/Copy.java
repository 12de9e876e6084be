package org.quaybook.proof;

import java.util.NavigableMap;
import java.util.Optional;

/** Something to verify: the files of a pack, a site or a record, wherever they are. Paths have slashes on every system. */
public sealed interface Copy permits FolderCopy, AddressCopy {

    /** Bytes of the largest file that is read. */
    int LARGEST = 64 << 20;

    /** What stands under a name. */
    enum Kind {
        FILE,
        FOLDER,
        /** A link or anything else that may show something else tomorrow. */
        OTHER
    }

    /** As the user gave it. */
    String name();

    /** Its own name without what stands before it; empty if it has none. */
    String lastName();

    /**
     * The content of a file.
     *
     * @return empty if there is none of this path
     * @throws Refused if there is something, but it is no plain file, is too large or cannot be read
     */
    Optional<byte[]> read(String path) throws Refused;

    /**
     * What lies in a folder.
     *
     * @param folder its path, with a slash at its end; empty for the copy itself
     * @return empty if nobody can tell, as at an address
     * @throws Refused if it cannot be read
     */
    Optional<NavigableMap<String, Kind>> inside(String folder) throws Refused;
}
