package org.quaybook.job;

import java.util.List;
import org.quaybook.diag.Message;
import org.quaybook.diag.Place;

/** Holds the names that other packages define against the vocabulary. */
final class VocabularyChecks {

    private final Found found;
    private final Problems problems;
    private final Vocabulary vocabulary;

    VocabularyChecks(Found found, Problems problems, Vocabulary vocabulary) {
        this.found = found;
        this.problems = problems;
        this.vocabulary = vocabulary;
    }

    void check() {
        for (Header header : found.all(Header.class)) {
            String path = header.place().path();
            known(header.rulebook(), vocabulary.rulebooks(), found.at(path + ".rulebook"));
            for (int i = 0; i < header.languages().size(); i++) {
                known(header.languages().get(i), vocabulary.languages(), found.at(path + ".languages[" + i + "]"));
            }
        }
    }

    private void known(String name, List<String> allowed, Place at) {
        if (!allowed.contains(name)) {
            problems.add(
                    at,
                    Message.of(JobMessage.NOT_ALLOWED, name, String.join(", ", allowed)),
                    Scalars.meant(name, allowed));
        }
    }
}
