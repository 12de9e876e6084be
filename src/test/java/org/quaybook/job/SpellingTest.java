package org.quaybook.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Kinds;
import org.quaybook.quantity.Unit;

class SpellingTest {

    /**
     * Optimal string alignment. "kitten" to "sitting" is 3 in every text on edit distance; "ca" to "abc" is 3 here and 2 in
     * Damerau's unrestricted distance (both from memory).
     */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "ab, ba, 1", "'', abc, 3", "abc, '', 3", "same, same, 0"})
    void slipsAreCounted(String a, String b, int slips) {
        assertThat(Spelling.distance(a, b)).isEqualTo(slips);
        assertThat(Spelling.distance(b, a)).isEqualTo(slips);
    }

    @Test
    void tagsAreNotGuessedAt() {
        assertThat(Spelling.nearest("R1", List.of("R2", "F1"))).isEmpty();
        assertThat(Spelling.nearest("r2", List.of("R2", "F1"))).contains("R2");
    }

    @Test
    void everySpellingOfAUnitBelongsToOneDimension() {
        List<String> spellings = Kinds.all()
                .flatMap(kind -> kind.units().stream())
                .flatMap(SpellingTest::spellings)
                .toList();
        assertThat(spellings).doesNotHaveDuplicates();
    }

    private static Stream<String> spellings(Unit unit) {
        return Stream.concat(Stream.of(unit.symbol()), unit.spellings().stream());
    }
}
