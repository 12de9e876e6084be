package org.quaybook.pack.worksheet;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Given;
import org.quaybook.job.Provenance;
import org.quaybook.text.Words;

/** Values of the job as the worksheet prints them. */
final class Answers {

    private Answers() {}

    /** Empty when the job leaves it out, "not seen" when nobody has seen it. */
    static String given(@Nullable Given<?> given, Words words) {
        if (given == null) {
            return "";
        }
        return given.provenance() == Provenance.NOT_SEEN
                ? words.term(Provenance.NOT_SEEN)
                : words.word(Objects.requireNonNull(given.value()));
    }
}
