package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecentTest {

    private final List<String> made = new ArrayList<>();
    private final Recent<Integer> lengths = new Recent<>(2);

    private int length(String text) {
        return lengths.of(text, asked -> {
            made.add(asked);
            return asked.length();
        });
    }

    @Test
    void makesWhatItKeepsOnce() {
        assertThat(length("volt")).isEqualTo(4);
        assertThat(length("volt")).isEqualTo(4);
        assertThat(made).containsExactly("volt");
    }

    @Test
    void forgetsWhatWasNotUsedForLongest() {
        length("volt");
        length("ampere");
        length("volt");
        length("ohm");
        length("volt");
        length("ampere");
        assertThat(made).containsExactly("volt", "ampere", "ohm", "ampere");
    }
}
