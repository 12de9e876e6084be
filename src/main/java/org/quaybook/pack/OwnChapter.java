package org.quaybook.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.job.Installer;
import org.quaybook.record.Branding;
import org.quaybook.render.Prose;
import org.quaybook.text.Words;

/** Reads the chapter that an installer adds to the owner's guide, in each language that he has it in. */
final class OwnChapter {

    private static final int LARGEST = 1 << 16;
    private static final String ENDING = ".md";

    private final Path base;
    private final Installer installer;
    private final List<Diagnostic> problems;
    private final Map<String, Prose> byLanguage = new LinkedHashMap<>();

    private OwnChapter(Path base, Installer installer, List<Diagnostic> problems) {
        this.base = base;
        this.installer = installer;
        this.problems = problems;
    }

    /**
     * The chapter by the tag of its language; empty without one.
     *
     * @param profile the file of the installer profile
     * @param problems takes what is wrong with the chapter
     */
    static Map<String, Prose> read(Path profile, Installer installer, List<Diagnostic> problems) {
        String name = installer.chapter();
        if (name == null) {
            return Map.of();
        }
        OwnChapter chapter = new OwnChapter(profile.resolveSibling(name), installer, problems);
        chapter.read(Branding.ANY_LANGUAGE, chapter.base, true);
        for (String language : Words.languages()) {
            chapter.read(language, file(profile, name, language), false);
        }
        return chapter.byLanguage;
    }

    /** The files that may hold it, whether they exist or not. */
    static List<Path> files(Path profile, Installer installer) {
        String name = installer.chapter();
        return name == null
                ? List.of()
                : Stream.concat(
                                Stream.of(profile.resolveSibling(name)),
                                Words.languages().stream().map(language -> file(profile, name, language)))
                        .toList();
    }

    private static Path file(Path profile, String name, String language) {
        return profile.resolveSibling(name.substring(0, name.length() - ENDING.length()) + "." + language + ENDING);
    }

    private void read(String language, Path file, boolean due) {
        if (!due && !Files.exists(file)) {
            return;
        }
        Optional<String> text = text(file);
        if (text.isEmpty()) {
            problems.add(
                    problem(installer.place(), Message.of(PackMessage.CHAPTER_UNREADABLE, name(file), LARGEST / 1024)));
            return;
        }
        Prose.of(text.get())
                .ifPresentOrElse(
                        prose -> byLanguage.put(language, prose),
                        () -> problems.add(problem(
                                new Place(file.toString().replace('\\', '/'), "", Position.START),
                                Message.of(PackMessage.CHAPTER_UNTITLED))));
    }

    private static Optional<String> text(Path file) {
        try {
            return Files.size(file) > LARGEST
                    ? Optional.empty()
                    : Optional.of(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static Diagnostic problem(Place place, Message message) {
        return new Diagnostic(Severity.ERROR, message.key().key(), place, "", message, List.of());
    }
}
