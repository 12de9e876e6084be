package org.quaybook.job;

import java.util.List;

/**
 * The names that a job file may use but that other packages define.
 *
 * @param rulebooks names of the rulebooks
 * @param languages tags of the languages that documents can be written in
 */
public record Vocabulary(List<String> rulebooks, List<String> languages) {
    public Vocabulary {
        rulebooks = List.copyOf(rulebooks);
        languages = List.copyOf(languages);
    }
}
