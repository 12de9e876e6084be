package org.quaybook.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.quaybook.figures.AtShoreFigures.Fit;
import org.quaybook.job.Source;

/**
 * Appliances on circuits that the inverter never feeds. What is expected is worked by hand beside each check: the
 * definition of power, and that currents into a point add up (Kirchhoff).
 */
class PastInverterTest {

    private static final String JOB = "lantern-moth";
    private static final String FIRST = "appliances:\n";

    /** 920 W at 230 V are 4 A. The circuit A3 hangs on shore power, past the inverter. */
    private static final String BOILER =
            FIRST + "  - { name: Boiler, power: 920 W, kind: heating, circuit: A3, per-use: 1 h, uses-per-day: 1 }\n";

    private static final String ON_INVERTER = BOILER.replace("A3", "A1");
    private static final String LEFT_ON = BOILER.replace("circuit: A3", "circuit: A3, left-on: yes");

    /** Post, inlet, breaker: 16 A. The inverter takes 10 A at most. */
    private static final String[] STRONG = {
        "  smallest-pedestal: 6 A (told)\n", "", "  input-limit: 6 A", "  input-limit: 10 A"
    };

    private static Figures with(String... changes) {
        return ChangedDemo.of(JOB, changes).figures();
    }

    private static Figures strong(String appliance) {
        return with(STRONG[0], STRONG[1], STRONG[2], STRONG[3], FIRST, appliance);
    }

    @Test
    void takesNothingFromTheBank() {
        Figures without = with();
        Figures past = with(FIRST, BOILER);

        assertThat(past.pastInverter())
                .extracting(it -> it.appliance().name(), PastInverterFigures::sources)
                .contains(tuple("Boiler", List.of(Source.SHORE)));
        assertThat(past.appliances()).hasSameSizeAs(without.appliances());
        assertThat(past.pairs()).hasSameSizeAs(without.pairs());
        assertThat(past.day().use().value()).isEqualTo(without.day().use().value());
        assertThat(with(FIRST, ON_INVERTER).day().use().value())
                .isGreaterThan(without.day().use().value());
    }

    /** A circuit of which nobody has seen what feeds it may hang on the inverter. */
    @Test
    void anUnseenSourceCountsAsTheInverter() {
        String a3 = "cable: 1.5 mm2, source: shore, rcd: R1";

        assertThat(with(FIRST, BOILER, a3, a3.replace("source: shore", "source: not seen"))
                        .pastInverter())
                .isEmpty();
    }

    /**
     * 16 A from shore, 10 A of it through the inverter. Beside 4 A of the boiler its charger may go on to 10 A: 14 A. The
     * washing machine of 2.0 kW takes 8.7 A through the inverter; with the boiler that is 12.7 A, and up to the limit 14 A.
     */
    @Test
    void aStrongSupplyCarriesItBesideTheInverter() {
        AtShoreFigures shore = strong(BOILER).atShore().orElseThrow();

        assertThat(shore.whole().value().amperes()).isEqualTo(16);
        assertThat(shore.available().value().amperes()).isEqualTo(10);
        assertThat(fit(shore, "Boiler")).isEqualTo(Fit.ALWAYS);
        assertThat(fit(shore, "Boiler", "Washing machine")).isEqualTo(Fit.ALWAYS);
        // 8.7 A and 7.8 A are 16.5 A: more than passes the inverter.
        assertThat(fit(shore, "Washing machine", "Induction ring")).isEqualTo(Fit.NEVER);
    }

    /** 8 A beside the inverter's limit of 10 A are 18 A of 16 A; beside the ring alone, 7.8 A, they are 15.8 A. */
    @Test
    void theInputLimitKnowsNothingOfIt() {
        AtShoreFigures shore =
                strong(BOILER.replace("920 W", "1840 W")).atShore().orElseThrow();

        assertThat(fit(shore, "Boiler", "Induction ring")).isEqualTo(Fit.WITHOUT_CHARGING);
        // 8 A and 8.7 A are 16.7 A.
        assertThat(fit(shore, "Boiler", "Washing machine")).isEqualTo(Fit.NEVER);
        assertThat(shore.tight()).isTrue();
    }

    /** A post of 6 A: 4 A leave 2 A, and the charger takes all 6 A that its limit allows. */
    @Test
    void aWeakPostCarriesItWithoutChargingOnly() {
        AtShoreFigures shore = with(FIRST, BOILER).atShore().orElseThrow();

        assertThat(fit(shore, "Boiler")).isEqualTo(Fit.WITHOUT_CHARGING);
        assertThat(fit(shore, "Boiler", "Laptop")).isEqualTo(Fit.WITHOUT_CHARGING);
        assertThat(fit(shore, "Boiler", "Slow cooker")).isEqualTo(Fit.WITHOUT_CHARGING);
        // 4 A and 240 W, 1.04 A, fit; with 2.0 kW they do not.
        assertThat(fit(shore, "Boiler", "Dehumidifier")).isEqualTo(Fit.WITHOUT_CHARGING);
        assertThat(fit(shore, "Boiler", "Washing machine")).isEqualTo(Fit.NEVER);
    }

    /**
     * It stays on past the inverter: what is taken at the limit is 10 A and 4 A, of 16 A; of that the charger may have all
     * but 4 A and the dehumidifier's 240 W.
     */
    @Test
    void whatStaysOnPastTheInverterIsTakenBesideItsLimit() {
        ReturnFigures back = strong(LEFT_ON).shoreReturn().orElseThrow();

        assertThat(back.staying()).containsExactly("Dehumidifier", "Boiler");
        assertThat(back.leftOn().value().amperes()).isCloseTo(4 + 240 / 230.0, within(1e-9));
        assertThat(back.leftOnPast().orElseThrow().value().amperes()).isCloseTo(4, within(1e-9));
        assertThat(back.held().orElseThrow().value().amperes()).isCloseTo(14, within(1e-9));
        assertThat(back.limited()).isTrue();
        assertThat(back.fits().value().amperes() * 28.6 / (0.85 * 0.95 * 230))
                .isCloseTo(10 - 240 / 230.0, within(1e-9));
    }

    /** 6 A of the limit and 4 A are more than the 6 A of the post: nothing holds that back any more. */
    @Test
    void theInputLimitNoLongerProtectsAWeakPost() {
        assertThat(with().shoreReturn().orElseThrow().limited()).isTrue();
        assertThat(with(FIRST, LEFT_ON).shoreReturn().orElseThrow().limited()).isFalse();
    }

    /**
     * The boiler is the largest heater, of 2.3 kW and 10 A, past the inverter. The charger of 60 A takes 60 · 28.6 V / (0.85
     * · 0.95 · 230 V), 9.24 A, with the dehumidifier 10.28 A: held to 10 A. With the heater 20 A, while a heater through the
     * inverter would make the charger give way.
     */
    @Test
    void theChargerDoesNotGiveWayForAHeaterPastTheInverter() {
        ReturnFigures past =
                strong(BOILER.replace("920 W", "2.3 kW")).shoreReturn().orElseThrow();
        ReturnFigures through =
                strong(ON_INVERTER.replace("920 W", "2.3 kW")).shoreReturn().orElseThrow();

        assertThat(past.heater()).contains("Boiler");
        assertThat(past.withHeater().value().amperes()).isCloseTo(20, within(1e-9));
        assertThat(through.withHeater().value().amperes()).isCloseTo(10 + 240 / 230.0, within(1e-9));
    }

    /** 1 mA a kilowatt (common practice): on the RCD behind the inlet, not on that of the inverter. */
    @Test
    void leaksOnlyWhereItsCurrentPasses() {
        ChangedDemo without = ChangedDemo.of(JOB);
        ChangedDemo past = ChangedDemo.of(JOB, FIRST, BOILER);

        assertThat(past.value("rcd.R1.leakage")).isCloseTo(without.value("rcd.R1.leakage") + 0.92e-3, within(1e-12));
        assertThat(past.value("rcd.R2.leakage")).isEqualTo(without.value("rcd.R2.leakage"));
    }

    /** The generator carries what it feeds: through the inverter, and past it only where the circuit says so. */
    @Test
    void aGeneratorCarriesItOnlyWhereItFeedsIt() {
        String generator = "rcds:\n";
        String set = "generator: { power: 3 kW }\n\nrcds:\n";
        String a3 = "cable: 1.5 mm2, source: shore, rcd: R1";
        Figures onShore = with(FIRST, BOILER.replace("920 W", "2.9 kW"), generator, set);
        Figures onGenerator = with(
                FIRST,
                BOILER.replace("920 W", "2.9 kW"),
                generator,
                set,
                a3,
                a3.replace("source: shore", "source: generator"));

        assertThat(onShore.generator().orElseThrow().largest()).contains("Washing machine");
        assertThat(onGenerator.generator().orElseThrow().largest()).contains("Boiler");
        assertThat(onGenerator.atShore().orElseThrow().appliances())
                .noneMatch(it -> it.appliance().appliance().name().equals("Boiler"));
    }

    private static Fit fit(AtShoreFigures shore, String name) {
        return shore.appliances().stream()
                .filter(it -> it.appliance().appliance().name().equals(name))
                .findFirst()
                .orElseThrow()
                .fit();
    }

    private static Fit fit(AtShoreFigures shore, String one, String other) {
        return shore.pairs().stream()
                .filter(it -> Set.of(one, other).equals(Set.of(name(it.first()), name(it.second()))))
                .findFirst()
                .orElseThrow()
                .fit();
    }

    private static String name(AtShoreFigures.Alone it) {
        return it.appliance().appliance().name();
    }
}
