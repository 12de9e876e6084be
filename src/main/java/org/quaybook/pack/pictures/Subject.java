package org.quaybook.pack.pictures;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.quaybook.checks.Assessment;
import org.quaybook.figures.Figure;
import org.quaybook.figures.Figures;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Provenance;
import org.quaybook.text.Words;

/**
 * What every picture needs to know.
 *
 * @param it the job with its figures
 * @param words the reader's language
 * @param look the colours
 */
record Subject(Assessment it, Words words, Look look) {

    Job job() {
        return it.job();
    }

    Figures figures() {
        return it.figures();
    }

    /** A sentence or label of the pictures. */
    String say(String key, Object... arguments) {
        return words.say("pictures." + key, arguments);
    }

    String say(Figure<?> figure) {
        return words.word(figure.stated());
    }

    /** A value of the job in words: empty when the job leaves it out, "not seen" when nobody has seen it. */
    String given(@Nullable Given<?> given) {
        if (given == null) {
            return "";
        }
        return given.provenance() == Provenance.NOT_SEEN
                ? words.term(Provenance.NOT_SEEN)
                : words.word(Objects.requireNonNull(given.value()));
    }

    /** Names in a row; of more than a picture has room for, the first ones and how many more. */
    String some(List<String> names) {
        return names.size() <= MOST_NAMES
                ? words.list(names)
                : say("and-more", String.join(", ", names.subList(0, MOST_NAMES - 2)), names.size() - MOST_NAMES + 2);
    }

    /** What is listed in full elsewhere fills no picture. */
    private static final int MOST_NAMES = 24;

    static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
