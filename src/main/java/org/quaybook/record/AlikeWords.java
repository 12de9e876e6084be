package org.quaybook.record;

import org.quaybook.checks.Alike;
import org.quaybook.text.Words;

/** What is said of several things at once. */
public final class AlikeWords {

    private AlikeWords() {}

    /**
     * A text about the first of them, with a sentence that names the others.
     *
     * @param first what is said of the first
     */
    public static String of(Alike alike, String first, Words words) {
        return alike.others().isEmpty() ? first : first + " " + words.say("alike", words.list(alike.others()));
    }
}
