package org.quaybook.pack.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lengths around a cable, worked by hand from the circumference π d. The shares and gaps are common practice, no source. */
class CableTagTest {

    @ParameterizedTest
    @CsvSource({"6, 18.85, 40.5", "16, 50.27, 108.1"})
    void wrap(double diameter, double around, double total) {
        CableTag tag = new CableTag(diameter);
        assertThat(tag.circumference()).isCloseTo(around, within(0.005));
        assertThat(tag.wrapTotal()).isCloseTo(total, within(0.05));
        assertThat(tag.wrapZone()).isLessThanOrEqualTo(around);
        assertThat(tag.wrapTotal() - tag.wrapZone()).as("clear tail").isGreaterThan(around);
    }

    @ParameterizedTest
    @CsvSource({"3.4, 73.7", "6, 81.8", "16, 113.3"})
    void flag(double diameter, double total) {
        CableTag tag = new CableTag(diameter);
        assertThat(tag.flagTotal(30)).isCloseTo(total, within(0.05));
        assertThat(tag.folds(30)).isEqualTo(List.of(30.0, tag.flagTotal(30) - 30));
    }

    @Test
    void aWrapIsReadFromAnySide() {
        CableTag tag = new CableTag(16);
        double zone = tag.wrapZone();
        assertThat(tag.wraps(zone / 2)).isTrue();
        assertThat(tag.wraps(zone / 2 + 0.01)).isFalse();
        assertThat(tag.repeats(zone / 3)).isEqualTo(3);
    }
}
