package org.quaybook.pack.pictures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.quaybook.checks.Assessment;
import org.quaybook.pack.Road;
import org.quaybook.text.Words;

/** A demo job, as it is or with a change in its text, and its pictures. */
record DrawnJob(Assessment assessment, Map<String, DrawnPicture> pictures) {

    static final Words WORDS = Words.of("en-GB");

    static DrawnJob of(String demo) {
        return new DrawnJob(Path.of("demo-jobs", demo));
    }

    /** @param folder an empty one to write the changed job into */
    static DrawnJob changed(String demo, Path folder, UnaryOperator<String> change) {
        Path from = Path.of("demo-jobs", demo);
        try {
            String text = Files.readString(from.resolve("job.yaml"));
            String changed = change.apply(text);
            if (changed.equals(text)) {
                throw new IllegalArgumentException("nothing changed in " + demo);
            }
            Files.writeString(folder.resolve("job.yaml"), changed);
            Files.writeString(
                    folder.resolve("installer.yaml"),
                    Files.readString(from.resolve("installer.yaml")).replaceAll("(?m)^(logo|chapter):.*\n", ""));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new DrawnJob(folder);
    }

    private DrawnJob(Path folder) {
        this(judged(folder));
    }

    private DrawnJob(Assessment assessment) {
        this(assessment, draw(assessment));
    }

    private static Assessment judged(Path folder) {
        Road.Judged judged = Road.judge(folder);
        return Objects.requireNonNull(
                judged.assessment(), () -> judged.problems().toString());
    }

    private static Map<String, DrawnPicture> draw(Assessment assessment) {
        Map<String, DrawnPicture> drawn = new LinkedHashMap<>();
        Pictures.of(assessment, WORDS, new Look("#1b3a4b", "#e8ebed"))
                .forEach((name, svg) -> drawn.put(name, new DrawnPicture(name, svg.text())));
        return drawn;
    }

    DrawnPicture picture(String name) {
        return Objects.requireNonNull(pictures.get(name), name);
    }

    /** A diagram with all that go on from it. */
    List<DrawnPicture> all(String name) {
        List<DrawnPicture> all = new ArrayList<>(List.of(picture(name)));
        while (pictures.containsKey(name + "-" + (all.size() + 1))) {
            all.add(picture(name + "-" + (all.size() + 1)));
        }
        return all;
    }
}
