package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.figures.AcFigures.Opener;

/**
 * ISO 13297:2020 6.8 (seen in pages that quote it): the neutral of shore power is earthed ashore and not on board, that of
 * an inverter or generator at that source while it feeds.
 */
class BondLogicTest {

    private static final String AUTOMATIC = "lantern-moth";
    private static final String MANUAL = "second-biscuit";
    private static final String GENERATOR = "marmalade-meridian";

    private static String said(ChangedDemo demo) {
        return demo.figures().ac().bonds().modes().stream()
                .map(mode -> mode.mode() + " " + mode.must() + " " + mode.verdict())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource({
        "inverter-only, INVERTER AT_INVERTER RIGHT; PASS_THROUGH ASHORE RIGHT",
        "always, INVERTER AT_INVERTER RIGHT; PASS_THROUGH ASHORE WRONG",
        "none, INVERTER AT_INVERTER WRONG; PASS_THROUGH ASHORE RIGHT",
        "not seen, INVERTER AT_INVERTER UNKNOWN; PASS_THROUGH ASHORE UNKNOWN"
    })
    void throughAnAutomaticChangeover(String bond, String expected) {
        assertThat(said(ChangedDemo.of(AUTOMATIC, "neutral-bond: inverter-only", "neutral-bond: " + bond)))
                .isEqualTo(expected);
    }

    /** A switch that opens the neutral too leaves the inverter's own tie at the inverter. */
    @ParameterizedTest
    @CsvSource({"yes, RIGHT", "no, WRONG", "not seen, WRONG"})
    void aTieThatStaysBehindASwitch(String switchesNeutral, String verdict) {
        assertThat(said(ChangedDemo.of(
                        MANUAL,
                        "neutral-bond: inverter-only",
                        "neutral-bond: always",
                        "switches-neutral: yes",
                        "switches-neutral: " + switchesNeutral)))
                .isEqualTo("INVERTER AT_INVERTER RIGHT; SHORE ASHORE " + verdict);
    }

    /** Behind an isolating transformer the tie is at its secondary side, and no second one is closed. */
    @ParameterizedTest
    @CsvSource({
        "inverter-only, yes, RIGHT",
        "inverter-only, no, WRONG",
        "inverter-only, not seen, UNKNOWN",
        "always, yes, WRONG",
        "not seen, yes, UNKNOWN",
        "not seen, no, WRONG"
    })
    void behindATransformer(String bond, String tied, String verdict) {
        ChangedDemo job = ChangedDemo.of(
                AUTOMATIC,
                "neutral-bond: inverter-only",
                "neutral-bond: " + bond,
                "shore:\n",
                "shore:\n  transformer: { neutral-tied: " + tied + " }\n");
        assertThat(said(job)).endsWith("PASS_THROUGH AT_TRANSFORMER " + verdict);
        assertThat(job.figures().ac().bonds().tiedOnShore()).isEqualTo(bond.equals("always"));
    }

    @ParameterizedTest
    @CsvSource({"always, RIGHT", "none, WRONG", "inverter-only, UNKNOWN", "not seen, UNKNOWN"})
    void aGeneratorIsTiedAtItself(String bond, String verdict) {
        assertThat(said(ChangedDemo.of(GENERATOR, "neutral-bond: always", "neutral-bond: " + bond)))
                .endsWith("GENERATOR AT_GENERATOR " + verdict);
    }

    /** Two ties at once part the current of the neutral: wrong even where the generator has its own. */
    @Test
    void twoTiesAtOnce() {
        assertThat(said(ChangedDemo.of(GENERATOR, "neutral-bond: inverter-only", "neutral-bond: always")))
                .endsWith("GENERATOR AT_GENERATOR WRONG");
    }

    /**
     * An RCD behind the bond ends an earth fault; one before the inverter sees nothing of it; without a bond no current
     * flows. A short is ended by the breaker only if the inverter gives what its band wants.
     */
    @ParameterizedTest
    @CsvSource({
        "inverter-only, R2, 3.2 kW, RCD, INVERTER",
        "inverter-only, R1, 3.2 kW, NOBODY, INVERTER",
        "none, R2, 3.2 kW, NOBODY, INVERTER",
        "inverter-only, R1, 9.2 kW, BREAKER, BREAKER"
    })
    void whoEndsAFault(String bond, String rcd, String power, Opener onEarthFault, Opener onShort) {
        AcFigures.CircuitFigures circuit = ChangedDemo.of(
                        AUTOMATIC,
                        "neutral-bond: inverter-only",
                        "neutral-bond: " + bond,
                        "source: inverter, rcd: R2",
                        "source: inverter, rcd: " + rcd,
                        "continuous: 3.2 kW",
                        "continuous: " + power,
                        "power: 6 kW",
                        "power: 12 kW")
                .figures()
                .ac()
                .circuits()
                .get(0);
        assertThat(circuit.onEarthFault()).contains(onEarthFault);
        assertThat(circuit.onShort()).contains(onShort);
    }

    /**
     * Common practice, no source: 1 mA a kilowatt of heating and 1 mA a filter. Hair dryer and toaster heat with 2.05 kW; chargers
     * and a breathing machine have a filter each, and so has a microwave oven; a motor has none.
     */
    @Test
    void standingLeakage() {
        assertThat(ChangedDemo.of("long-way-round").value("rcd.R1.leakage")).isCloseTo(2.05e-3 + 2e-3, within(1e-12));
        assertThat(ChangedDemo.of("lantern-moth", "kind: electronics", "kind: microwave")
                        .value("rcd.R2.leakage"))
                .isCloseTo(1.98e-3 + 1e-3, within(1e-12));
    }

    /** Nobody knows whether one of unknown kind heats or has a filter: it counts as the worse. */
    @Test
    void standingLeakageOfAnUnknownKind() {
        String ring = "1.8 kW (plate), kind: heating";
        assertThat(ChangedDemo.of("lantern-moth", ring, "1.8 kW (plate)").value("rcd.R2.leakage"))
                .isEqualTo(ChangedDemo.of("lantern-moth").value("rcd.R2.leakage"));
        assertThat(ChangedDemo.of("lantern-moth", ring, "600 W (plate)").value("rcd.R2.leakage"))
                .isCloseTo(0.18e-3 + 1e-3 + 1e-3, within(1e-12));
    }

    /** BS 7671 Table 41.5 (seen): 50 V over 30 mA is 1667 Ω. */
    @Test
    void largestEarthLoop() {
        assertThat(ChangedDemo.of(AUTOMATIC).value("rcd.R2.most-loop")).isCloseTo(1667, within(1.0));
    }
}
