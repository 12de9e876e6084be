package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The guide's words are short enough to be read by somebody who is cold, wet and no electrician. */
class PlainWordsTest {

    private static Stream<String> keys() {
        return DemoJob.WORDS.keys().stream().filter(key -> key.startsWith("guide."));
    }

    /** At most 20 words a sentence: the upper end of public-sector advice on plain writing; ISO 20607 Annex C (from memory) asks for short sentences without a number. */
    @Test
    void sentencesAreShort() {
        List<String> tooLong = keys().map(DemoJob.WORDS::sentence)
                .flatMap(text -> Arrays.stream(text.split("(?<=[.!?])\\s+")))
                .filter(sentence -> sentence.split("\\s+").length > 20)
                .toList();
        assertThat(tooLong).isEmpty();
    }

    /** Glossaries explain in one line or two; 30 words is this project's own limit. */
    @Test
    void termsAreExplainedInThirtyWords() {
        List<String> means = keys().filter(key -> key.startsWith("guide.term.") && key.endsWith(".means"))
                .map(DemoJob.WORDS::sentence)
                .toList();
        assertThat(means)
                .hasSizeGreaterThan(20)
                .allSatisfy(text -> assertThat(text.split("\\s+")).hasSizeLessThanOrEqualTo(30));
    }

    /** Words that the trade uses among itself and an owner need not know. */
    @Test
    void avoidsTheTradesOwnWords() {
        assertThat(keys().map(DemoJob.WORDS::sentence))
                .noneMatch(
                        text -> text.matches("(?i).*\\b(SoC|DoD|pack voltage|ampacity|prospective|Peukert|sag)\\b.*"));
    }
}
