package org.quaybook.pack.workings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.figures.ChangedDemo;
import org.quaybook.pack.workings.Workings.Places;
import org.quaybook.pack.workings.Workings.Worked;
import org.quaybook.text.Words;

/** Workings in words. */
class WorkingsTest {

    private static final Words WORDS = Words.of("en-GB");

    private static Workings of(String demo, Places places) {
        return new Workings(ChangedDemo.of(demo).figures(), WORDS, places);
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void namesEveryFigureAndEveryOrigin(String demo) {
        assertThat(of(demo, Places.PATH).all()).hasSizeGreaterThan(60).allSatisfy(figure -> {
            assertThat(figure.name()).isNotBlank().doesNotContain("{", "null");
            assertThat(figure.value()).isNotBlank();
            assertThat(figure.source()).isNotBlank();
            assertThat(figure.inputs()).allSatisfy(input -> {
                assertThat(input.value()).isNotBlank();
                assertThat(input.origin()).isNotBlank().doesNotContain("{", "null");
            });
        });
    }

    /** The same figure, the place of its input told as far as the reader can use it. */
    @Test
    void tellsPlacesInThreeWays() {
        assertThat(origin(Places.PATH)).isEqualTo("job file, cables[0].length: measured");
        assertThat(origin(Places.LINE)).matches("job file, cables\\[0]\\.length in line \\d+: measured");
        assertThat(origin(Places.FILE)).matches("job: cables\\[0]\\.length \\(lantern-moth:\\d+:\\d+\\), measured");
    }

    private static String origin(Places places) {
        return of("lantern-moth", places).of("cable.B1.cold-resistance").orElseThrow().inputs().stream()
                .filter(input -> input.symbol().equals("L"))
                .findFirst()
                .orElseThrow()
                .origin();
    }

    /** An input that is a figure carries that figure's name and reads as that figure does. */
    @Test
    void inputsThatAreFiguresLeadToThem() {
        Workings workings = of("lantern-moth", Places.PATH);
        Worked current = workings.of("inverter.worst-current").orElseThrow();
        assertThat(current.inputs()).isNotEmpty().allSatisfy(input -> {
            Worked figure = workings.of(input.figure().orElseThrow()).orElseThrow();
            assertThat(input.value()).isEqualTo(figure.value());
        });
    }

    @Test
    void knowsNoOthers() {
        assertThat(of("lantern-moth", Places.PATH).of("no.such.figure")).isEmpty();
    }
}
