package org.quaybook.pack.guide;

import java.util.ArrayList;
import java.util.List;
import org.quaybook.text.Words;

/** Sentences in their order, without those that a job has no use for. */
final class Lines {

    private final Words words;
    private final String prefix;
    private final List<String> lines = new ArrayList<>();

    /** @param prefix what all keys begin with, the dot included */
    Lines(Words words, String prefix) {
        this.words = words;
        this.prefix = prefix;
    }

    Lines say(String key, Object... arguments) {
        lines.add(words.say(prefix + key, arguments));
        return this;
    }

    /** A sentence that is filled already. */
    Lines add(String sentence) {
        lines.add(sentence);
        return this;
    }

    Lines addAll(List<String> sentences) {
        lines.addAll(sentences);
        return this;
    }

    Lines sayIf(boolean holds, String key, Object... arguments) {
        return holds ? say(key, arguments) : this;
    }

    List<String> list() {
        return List.copyOf(lines);
    }
}
