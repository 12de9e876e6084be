package org.quaybook.proof;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.quaybook.diag.Message;

/** A copy in a folder. Links inside it are never followed. */
public final class FolderCopy implements Copy {

    private final String name;
    private final Path folder;

    private FolderCopy(String name, Path folder) {
        this.name = name;
        this.folder = folder;
    }

    /** @throws Refused if there is no such folder */
    public static FolderCopy of(Path folder) throws Refused {
        try {
            Path real = folder.toRealPath();
            if (Files.isDirectory(real)) {
                return new FolderCopy(folder.toString(), real);
            }
        } catch (IOException e) {
            // Told below.
        }
        throw new Refused(Message.of(ProofMessage.NO_FOLDER, folder.toString()));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String lastName() {
        return Objects.toString(folder.getFileName(), "");
    }

    @Override
    public Optional<byte[]> read(String path) throws Refused {
        Path at = folder;
        for (String step : path.split("/", -1)) {
            if (at != folder && kind(at) == Kind.OTHER) {
                throw new Refused(Message.of(ProofMessage.NOT_PLAIN));
            }
            at = at.resolve(step);
        }
        try {
            if (!Files.exists(at, LinkOption.NOFOLLOW_LINKS)) {
                return Optional.empty();
            }
            if (kind(at) != Kind.FILE) {
                throw new Refused(Message.of(ProofMessage.NOT_PLAIN));
            }
            if (Files.size(at) > LARGEST) {
                throw new Refused(Message.of(ProofMessage.TOO_LARGE, LARGEST >> 20));
            }
            return Optional.of(Files.readAllBytes(at));
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    @Override
    public Optional<NavigableMap<String, Kind>> inside(String path) throws Refused {
        NavigableMap<String, Kind> inside = new TreeMap<>();
        try (DirectoryStream<Path> each = Files.newDirectoryStream(folder.resolve(path))) {
            for (Path one : each) {
                inside.put(Objects.toString(one.getFileName()), kind(one));
            }
        } catch (IOException e) {
            throw unreadable(e);
        }
        return Optional.of(inside);
    }

    private static Kind kind(Path path) {
        try {
            BasicFileAttributes is = Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return is.isRegularFile() ? Kind.FILE : is.isDirectory() ? Kind.FOLDER : Kind.OTHER;
        } catch (IOException e) {
            return Kind.OTHER;
        }
    }

    private static Refused unreadable(IOException e) {
        return new Refused(Message.of(ProofMessage.UNREADABLE, e.getClass().getSimpleName()));
    }
}
