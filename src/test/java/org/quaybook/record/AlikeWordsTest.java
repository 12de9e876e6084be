package org.quaybook.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.quaybook.checks.Alike;
import org.quaybook.checks.Finding;
import org.quaybook.text.Words;

/** How things are named that the same is said of. Own requirements, no source. */
class AlikeWordsTest {

    private static final Finding FINDING =
            Demos.of("lantern-moth").assessment().findings().get(0);

    private static String told(String language, List<String> others) {
        return AlikeWords.of(new Alike(FINDING, others), "Mend it.", Words.of(language));
    }

    @Test
    void aLongRowIsToldByItsEnds() {
        List<String> circuits =
                IntStream.rangeClosed(2, 1000).mapToObj(i -> "A" + i).toList();
        assertThat(told("en-GB", circuits)).isEqualTo("Mend it. The same goes for A2 to A1000.");
        assertThat(told("nl", circuits)).endsWith("A2 tot en met A1000.");
    }

    @Test
    void nothingIsToldThatIsNotInTheRow() {
        assertThat(told("en-GB", List.of("A2", "A3", "A4"))).endsWith("A2, A3 and A4.");
        assertThat(told("en-GB", List.of("A2", "A3", "A4", "A5", "A7", "B8", "Lamp")))
                .endsWith("A2 to A5, A7, B8 and Lamp.");
        assertThat(told("en-GB", List.of("A09", "A010", "A011", "A012"))).endsWith("A09, A010, A011 and A012.");
        assertThat(told("en-GB", List.of("A5", "A4", "A3", "A2"))).endsWith("A5, A4, A3 and A2.");
    }
}
