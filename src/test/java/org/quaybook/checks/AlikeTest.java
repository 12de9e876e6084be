package org.quaybook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.quaybook.figures.ChangedDemo;

/** What is told once of several things; the wording is this project's own. */
class AlikeTest {

    /** Both circuits of the tug have breakers of one rating and curve; a third gets another rating, a fourth another RCD. */
    private static List<Alike> ofBreakers() {
        List<Finding> findings = FindingsTest.findings(ChangedDemo.of("persimmon-tug", "\nearths:\n", """
                  - { id: A3, name: Galley, breaker: 6 A, curve: B, cable: 2.5 mm2, source: inverter, rcd: R1 }
                  - { id: A4, name: Wheelhouse, breaker: 10 A, curve: B, cable: 2.5 mm2, source: inverter, rcd: R1 }

                earths:
                """));
        return Alike.of(findings).stream()
                .filter(alike -> alike.finding().check() == Check.BREAKER_ON_BATTERY)
                .toList();
    }

    @Test
    void tellsTheSameOfSeveralCircuitsOnce() {
        List<Alike> alike = ofBreakers();
        assertThat(alike).hasSize(2);
        assertThat(alike.get(0).finding().message().arguments().get(0)).isEqualTo("A1");
        assertThat(alike.get(0).others()).containsExactly("A2", "A4");
    }

    /** Other figures are another finding. */
    @Test
    void keepsApartWhatDiffersInAFigure() {
        Alike other = ofBreakers().get(1);
        assertThat(other.finding().message().arguments().get(0)).isEqualTo("A3");
        assertThat(other.others()).isEmpty();
    }

    @ParameterizedTest
    @FieldSource("org.quaybook.DemoJobs#ALL")
    void losesNoFinding(String demo) {
        List<Finding> findings = FindingsTest.findings(ChangedDemo.of(demo));
        List<Alike> alike = Alike.of(findings);
        assertThat(alike.stream().mapToInt(one -> 1 + one.others().size()).sum())
                .isEqualTo(findings.size());
        assertThat(alike.stream().map(Alike::finding))
                .isSubsetOf(findings)
                .isSortedAccordingTo(Comparator.comparingInt(findings::indexOf));
    }
}
