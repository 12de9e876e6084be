package org.quaybook.pack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;
import org.quaybook.job.Spelling;
import org.quaybook.text.Words;

/**
 * The sentences that an installer says in his own way: files {@code words/<language>/*.properties} of his template
 * folder, each line one key and its words. A sentence keeps the places of the one whose place it takes.
 */
final class OwnWords {

    private static final int LARGEST = 1 << 20;
    private static final Pattern LINE = Pattern.compile("([a-z0-9.-]+) = (.+)");

    private final Words words;
    private final Map<String, String> own = new LinkedHashMap<>();
    private final List<Diagnostic> problems = new ArrayList<>();

    private OwnWords(Words words) {
        this.words = words;
    }

    /**
     * The words of a language with the installer's own in place of ours.
     *
     * @param templates his template folder; null for none
     * @throws NotPrinted if one of his files cannot be used: with each line that is wrong
     */
    static Words of(Words words, @Nullable Path templates) throws NotPrinted {
        Path folder = templates == null ? null : templates.resolve("words").resolve(words.language());
        if (folder == null || !Files.isDirectory(folder)) {
            return words;
        }
        OwnWords own = new OwnWords(words);
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(file -> file.toString().endsWith(".properties"))
                    .sorted()
                    .forEach(own::read);
        } catch (IOException unreadable) {
            own.add(folder, 0, Message.of(PackMessage.WORDS_UNREADABLE, LARGEST / 1024), List.of());
        }
        if (!own.problems.isEmpty()) {
            throw new NotPrinted(own.problems);
        }
        return words.with(own.own);
    }

    private void read(Path file) {
        List<String> lines;
        try {
            if (Files.size(file) > LARGEST) {
                throw new IOException("too large");
            }
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            add(file, 0, Message.of(PackMessage.WORDS_UNREADABLE, LARGEST / 1024), List.of());
            return;
        }
        for (int i = 0; i < lines.size(); i++) {
            if (!lines.get(i).isBlank() && !lines.get(i).startsWith("#")) {
                line(file, i, lines.get(i));
            }
        }
    }

    private void line(Path file, int at, String line) {
        Matcher parts = LINE.matcher(line);
        if (!parts.matches()) {
            add(file, at, Message.of(PackMessage.WORDS_FORM, line), List.of());
            return;
        }
        String key = parts.group(1);
        String sentence = parts.group(2);
        if (!words.has(key)) {
            List<Message> meant = Spelling.nearest(key, words.keys())
                    .map(near -> List.of(Message.of(PackMessage.WORDS_MEANT, near)))
                    .orElse(List.of());
            add(file, at, Message.of(PackMessage.WORDS_UNKNOWN, key), meant);
        } else if (!Words.places(sentence).equals(Words.places(words.sentence(key)))) {
            add(file, at, Message.of(PackMessage.WORDS_PLACES, key, words.sentence(key)), List.of());
        } else {
            own.put(key, sentence);
        }
    }

    private void add(Path file, int line, Message message, List<Message> hints) {
        problems.add(new Diagnostic(
                Severity.ERROR,
                message.key().key(),
                new Place(file.toString().replace('\\', '/'), "", new Position(line, 0)),
                "",
                message,
                hints));
    }
}
