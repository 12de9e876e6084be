package org.quaybook.serve;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A folder of published records, and what stands at a path in it: {@code /<CODE>/}, {@code /<CODE>/<file>},
 * {@code /<CODE>/revision-<n>/} and {@code /<CODE>/revision-<n>/<file>}. Nothing else is there.
 */
final class Site {

    /** The page for what is not there. */
    static final String UNKNOWN = "404.html";

    private static final String INDEX = "index.html";

    /** A file of this name says that a record was withdrawn. */
    private static final String WITHDRAWN = "withdrawn";

    private static final Pattern REVISION = Pattern.compile("revision-[1-9][0-9]{0,8}");
    private static final Pattern CODE = Pattern.compile("[A-Z0-9]+");

    private final Path folder;
    private final Function<String, Optional<String>> canonical;

    /** @param canonical as in {@link Serving} */
    Site(Path folder, Function<String, Optional<String>> canonical) {
        this.folder = folder;
        this.canonical = canonical;
    }

    /** What stands at a path. */
    sealed interface Place permits Document, Elsewhere, Withdrawn, Nothing {}

    /**
     * A file.
     *
     * @param lasting whether it never changes
     * @param shown its path for the log
     */
    record Document(Path file, boolean lasting, String shown) implements Place {}

    /**
     * What stands at another path.
     *
     * @param way a relative reference (RFC 3986, 4.2), so that it holds behind a web server that adds a path in front
     * @param shown the path asked for, for the log
     */
    record Elsewhere(String way, String shown) implements Place {}

    /**
     * A record that was withdrawn.
     *
     * @param page file that says so
     */
    record Withdrawn(Path page, String shown) implements Place {}

    record Nothing() implements Place {}

    /** The page for what is not there; not necessarily there itself. */
    Path unknown() {
        return folder.resolve(UNKNOWN);
    }

    /** @throws IOException if the folder of the site cannot be read */
    Place at(AskedPath path) throws IOException {
        List<String> segments = path.segments();
        String typed = segments.get(0);
        Optional<String> code =
                canonical.apply(typed).filter(it -> CODE.matcher(it).matches());
        if (code.isEmpty()) {
            return new Nothing();
        }
        Path root = folder.toRealPath();
        Path record = root.resolve(code.get());
        if (!isFolder(record)) {
            return new Nothing();
        }
        String shownCode = "/…" + lastSymbols(typed);
        if (isFile(record.resolve(WITHDRAWN))) {
            return new Withdrawn(record.resolve(INDEX), shownCode);
        }
        List<String> rest = segments.subList(1, segments.size());
        boolean revision = !rest.isEmpty() && REVISION.matcher(rest.get(0)).matches();
        Path inside = revision ? record.resolve(rest.get(0)) : record;
        List<String> names = revision ? rest.subList(1, rest.size()) : rest;
        if (names.size() > 1 || (revision && !isFolder(inside))) {
            return new Nothing();
        }
        String way = code.get() + (revision ? "/" + rest.get(0) : "") + "/";
        String shown = shownCode + (revision ? "/" + rest.get(0) : "");
        if (names.isEmpty()) {
            return new Elsewhere(upwards(segments) + way, shown);
        }
        String name = names.get(0);
        Path file = inside.resolve(name.isEmpty() ? INDEX : name);
        if (MediaType.of(file.toString()).isEmpty() || !isFile(file)) {
            return new Nothing();
        }
        return typed.equals(code.get())
                ? new Document(file, revision, shown + "/" + name)
                : new Elsewhere(upwards(segments) + way + name, shown + "/" + name);
    }

    private static String upwards(List<String> segments) {
        return "../".repeat(segments.size() - 1);
    }

    /** The last four letters and digits: enough to tell records apart, not enough to open one. */
    static String lastSymbols(String text) {
        String symbols = text.replaceAll("[^A-Za-z0-9]", "");
        return symbols.substring(Math.max(0, symbols.length() - 4));
    }

    private static boolean isFile(Path path) {
        return isItself(path) && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
    }

    private static boolean isFolder(Path path) {
        return isItself(path) && Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS);
    }

    /** Neither reached through a link nor by another spelling of its name, as some file systems have them. */
    private static boolean isItself(Path path) {
        try {
            // As text: paths of Windows are equal in whatever case they are written.
            return path.toRealPath().toString().equals(path.toString());
        } catch (IOException missing) {
            return false;
        }
    }
}
