package org.quaybook.record;

import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Given;
import org.quaybook.job.Provenance;
import org.quaybook.text.Words;

/** A value of the job in words and how it is known (measured, plate, told, assumed, not seen), never by whom. */
public final class Known {

    private final Words words;

    public Known(Words words) {
        this.words = words;
    }

    /** Empty when the job leaves the value out; a value that the job states without more has no mark. */
    public String say(@Nullable Given<?> given) {
        if (given == null) {
            return "";
        }
        if (given.provenance() == Provenance.NOT_SEEN) {
            return words.term(Provenance.NOT_SEEN);
        }
        String value = given.value() instanceof Boolean yes
                ? words.say(yes ? "record.yes" : "record.no")
                : words.word(Objects.requireNonNull(given.value()));
        if (given.provenance() == Provenance.STATED) {
            return value;
        }
        String how = given.provenance().name().toLowerCase(Locale.ROOT);
        // Americans read the metric value in brackets: two pairs of them in a row would be one too many.
        String key = value.endsWith(")") ? "record.known.behind-brackets" : "record.known";
        return words.say(key, value, words.sentence("record.how." + how));
    }
}
