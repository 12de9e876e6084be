package org.quaybook.pack.labels;

import java.util.List;
import org.quaybook.text.Words;

/**
 * How the signal words of a job's labels are set.
 *
 * @param words where they come from: one for each language of a label
 * @param noticeInItalics whether the rulebook wants NOTICE in italics
 */
record SignalLetters(List<Words> words, boolean noticeInItalics) {

    SignalLetters {
        words = List.copyOf(words);
    }

    /** Of a label in the language of this place alone. */
    SignalLetters only(int language) {
        return new SignalLetters(List.of(words.get(language)), noticeInItalics);
    }
}
