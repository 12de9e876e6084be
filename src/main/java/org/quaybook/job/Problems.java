package org.quaybook.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.quaybook.diag.Diagnostic;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;
import org.quaybook.diag.Position;
import org.quaybook.diag.Severity;

/** Collects what is wrong with one file. */
final class Problems {

    private static final int LONGEST_EXCERPT = 200;

    private final String file;
    private final List<String> lines;
    private final List<Diagnostic> found = new ArrayList<>();

    /** @param text the file's text, for excerpts; empty if it could not be read */
    Problems(String file, String text) {
        this.file = file;
        this.lines = text.lines().toList();
    }

    Place place(String path, Position position) {
        return new Place(file, path, position);
    }

    void add(Place place, Message message, List<Message> hints) {
        JobMessage what = (JobMessage) message.key();
        found.add(new Diagnostic(what.severity(), what.key(), place, excerpt(place.position()), message, hints));
    }

    void add(Place place, Message message, Message... hints) {
        add(place, message, List.of(hints));
    }

    /** Whether anything found makes the file unusable. */
    boolean haveErrors() {
        return found.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    /** All, in the order of the file. */
    List<Diagnostic> sorted() {
        return found.stream()
                .sorted(Comparator.comparing(problem -> problem.place().position()))
                .toList();
    }

    private String excerpt(Position position) {
        if (position.line() >= lines.size()) {
            return "";
        }
        String line = lines.get(position.line());
        return line.length() <= LONGEST_EXCERPT ? line : line.substring(0, LONGEST_EXCERPT);
    }
}
