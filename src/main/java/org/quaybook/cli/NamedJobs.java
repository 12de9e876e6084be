package org.quaybook.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.pack.Road;
import org.quaybook.pack.SystemReason;
import org.quaybook.text.Words;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** From what is named on the command line to single jobs. */
final class NamedJobs {

    private static final Path STANDARD_INPUT = Path.of("-");

    /** A yard's folders: year, customer, job. */
    private static final int DEEPEST = 6;

    private NamedJobs() {}

    /**
     * The jobs, in the order in which they are named, those of a folder by name, none twice.
     *
     * @param list file that names more; null for none
     * @throws ParameterException if none is named, or the list cannot be read
     */
    static List<Path> of(List<Path> named, @Nullable Path list, CommandLine line, Words words) {
        List<Path> all = new ArrayList<>(named);
        if (list != null) {
            all.addAll(listed(list, line, words));
        }
        if (all.isEmpty()) {
            throw new ParameterException(line, words.say("cli.no-job"));
        }
        Set<Path> jobs = new LinkedHashSet<>();
        all.forEach(path -> jobs.addAll(inside(path)));
        return List.copyOf(jobs);
    }

    private static List<Path> listed(Path list, CommandLine line, Words words) {
        try {
            String text = list.equals(STANDARD_INPUT)
                    ? new String(System.in.readAllBytes(), StandardCharsets.UTF_8)
                    : Files.readString(list);
            return text.lines()
                    .map(String::strip)
                    .filter(path -> !path.isEmpty() && !path.startsWith("#"))
                    .map(Path::of)
                    .toList();
        } catch (IOException e) {
            throw new ParameterException(
                    line, words.say("cli.list-unreadable", list.toString(), SystemReason.of(e)), e);
        } catch (InvalidPathException e) {
            throw new ParameterException(line, words.say("cli.list-unreadable", list.toString(), e.toString()), e);
        }
    }

    /** A job itself, also one that is not there: its reader says so. */
    private static List<Path> inside(Path path) {
        if (!Files.isDirectory(path) || Files.exists(path.resolve(Road.USUAL_JOB_NAME))) {
            return List.of(path);
        }
        try (Stream<Path> files = Files.walk(path, DEEPEST)) {
            List<Path> found = files.filter(file -> file.endsWith(Road.USUAL_JOB_NAME))
                    .map(Path::getParent)
                    .sorted()
                    .toList();
            return found.isEmpty() ? List.of(path) : found;
        } catch (IOException | UncheckedIOException e) {
            return List.of(path);
        }
    }
}
