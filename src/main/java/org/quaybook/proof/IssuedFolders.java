package org.quaybook.proof;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** By what packs, sites and records are known among folders. */
final class IssuedFolders {

    /** Folder of a record on a site: its code without hyphens. */
    static final Pattern CODE = Pattern.compile("[0-9A-HJKMNP-TV-Z]{21}");

    /** Folder of an earlier revision in a record; group 1 is its number. */
    static final Pattern REVISION = Pattern.compile("revision-([1-9][0-9]{0,2})");

    private IssuedFolders() {}

    static String revision(int number) {
        return "revision-" + number;
    }

    /** The nearest pack, record or site that a file would lie in. */
    static Optional<Path> around(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        @Nullable Path folder = absolute.getParent();
        try {
            folder = folder == null ? null : folder.toRealPath();
        } catch (IOException e) {
            // A folder that does not exist has no links to follow; the ones above it are looked at.
        }
        for (; folder != null; folder = folder.getParent()) {
            if (isIssued(folder)) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }

    private static boolean isIssued(Path folder) {
        Path name = folder.getFileName();
        if (Files.exists(folder.resolve(Manifest.FILE))
                || Files.exists(folder.resolve(Manifest.SIGNATURE_FILE))
                || (name != null && CODE.matcher(name.toString()).matches())) {
            return true;
        }
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(
                folder, each -> CODE.matcher(String.valueOf(each.getFileName())).matches())) {
            return inside.iterator().hasNext();
        } catch (IOException e) {
            // Nobody can have published from a folder that cannot be listed.
            return false;
        }
    }
}
