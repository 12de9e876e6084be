package org.quaybook.pack.guide;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class GlossaryTest {

    /** The words explained tell the same voltage as the facts of the installation. Own requirement. */
    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void theBatteryHasOneVoltage(String demo) {
        Briefing brief = Briefing.of(DemoJob.of(demo).assessment(), DemoJob.WORDS);

        assertThat(new Glossary(brief).terms())
                .anyMatch(row -> String.valueOf(row.get("means"))
                        .contains("This battery has about "
                                + brief.say(brief.figures().bank().nominal()) + "."));
    }
}
