package org.quaybook.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xhtmlrenderer.layout.breaker.UrlAwareLineBreakIterator;

class LayoutBreaksTest {

    /** Against the layout engine's own. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "A1, A2, A3 and A4: off (deckhouse board).",
                "",
                " ",
                "one",
                " a  b ",
                "Ladegerät – l’onduleur, « ici » ; 5 kW/230 V",
                "https://example.org/a/b?c=d and/or e:f.g-h!",
                "12-34-5678 … 1 000 kg\n20 °C\tNEG8-KHQN"
            })
    void endsLinesWhereTheEngineDoes(String text) {
        assertThat(places(LayoutBreaks.places(text))).isEqualTo(places(new UrlAwareLineBreakIterator(text)));
    }

    private static List<Integer> places(BreakIterator iterator) {
        List<Integer> places = new ArrayList<>();
        for (int place = iterator.next(); place != BreakIterator.DONE; place = iterator.next()) {
            places.add(place);
        }
        return places;
    }
}
