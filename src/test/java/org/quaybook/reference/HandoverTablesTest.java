package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Citation.Standing;

/** The tables of test limits and of appliances. */
class HandoverTablesTest {

    private final TestLimits limits = TestLimits.standard();
    private final Appliances appliances = Appliances.standard();

    /** The limits printed on a test sheet must be those of the tables that the checks use. */
    @Test
    void limitsAgreeWithTheRulebooks() {
        Rulebook iso = Rulebook.named("iso-13297");
        Rulebook abyc = Rulebook.named("abyc-e11");

        assertThat(limits.of("drop-critical").most().orElseThrow())
                .isCloseTo(iso.criticalDrop().value().fraction() * 100, within(1e-9));
        assertThat(limits.of("drop-other").most().orElseThrow())
                .isCloseTo(iso.otherDrop().value().fraction() * 100, within(1e-9));
        assertThat(limits.of("rcd-rated").most().orElseThrow())
                .isCloseTo(iso.rcd().timeAtRated().value().seconds() * 1000, within(1e-9));
        assertThat(limits.of("rcd-five-times").most().orElseThrow())
                .isCloseTo(iso.rcd().timeAtFiveTimes().orElseThrow().value().seconds() * 1000, within(1e-9));
        assertThat(limits.of("unfused-iso").most().orElseThrow())
                .isCloseTo(iso.unfused().bare().value().metres() * 1000, within(1e-9));
        assertThat(limits.of("unfused-us").most().orElseThrow())
                .isCloseTo(abyc.unfused().bare().value().metres() / 0.0254, within(1e-9));
    }

    /** The rest voltages that pass must be those of a nearly full battery by the rest-voltage tables. */
    @Test
    void restVoltagesThatPassMeanFull() {
        double flooded = limits.of("rest-voltage-lead-acid").least().orElseThrow() / 6;

        assertThat(RestVoltages.standard()
                        .of("flooded")
                        .stateOfChargeAt(new Voltage(flooded))
                        .orElseThrow()
                        .fraction())
                .isGreaterThan(0.85);
        assertThat(limits.of("rest-voltage-lead-acid").most().orElseThrow() / 6)
                .isGreaterThan(
                        RestVoltages.standard().of("agm").full().perCell().volts());
    }

    /** IEC 60038: 230 V ± 10 %. IEC 60364-6 Table 6.1: 1 MΩ. Both from memory but 1 MΩ at 500 V, which was read. */
    @ParameterizedTest
    @CsvSource({"output-voltage,207,253", "insulation,1,", "inlet-dead,0,5"})
    void printedLimits(String name, Double least, Double most) {
        assertThat(limits.of(name).least()).hasValue(least);
        assertThat(limits.of(name).most()).isEqualTo(Optional.ofNullable(most));
    }

    @Test
    void everyMeasurementSaysHowItIsJudged() {
        assertThat(limits.all())
                .hasSizeGreaterThan(35)
                .allSatisfy(limit -> assertThat(limit.least().isPresent()
                                || limit.most().isPresent()
                                || !limit.condition().equals("-"))
                        .as(limit.name())
                        .isTrue());
        assertThatThrownBy(() -> limits.of("luck")).isInstanceOf(NotInTable.class);
    }

    /** US Department of Energy list, read: toaster 800 to 1400 W, filter coffee 900 to 1200 W, iron 1000 to 1800 W. */
    @ParameterizedTest
    @CsvSource({"toaster,800,1400", "coffee-filter,900,1200", "iron,1000,1800", "hair-dryer,1200,1875"})
    void powersOfThePublishedList(String name, double least, double most) {
        TypicalAppliance appliance = appliances.of(name);

        assertThat(appliance.power().least().watts()).isEqualTo(least);
        assertThat(appliance.power().most().watts()).isEqualTo(most);
        assertThat(appliance.citation().standing()).isEqualTo(Standing.SEEN);
    }

    /** Physics: a litre from 15 to 100 °C takes 4186 × 85 J = 98.8 Wh; a kettle loses 10 to 25 % besides. */
    @Test
    void aKettleBoilsALitre() {
        assertThat(appliances.of("kettle-domestic").energyPerUse().wattHours()).isBetween(98.8 / 0.95, 98.8 / 0.75);
        assertThat(appliances.of("kettle-low-watt").energyPerUse().wattHours()).isBetween(98.8 / 0.95, 98.8 / 0.75);
    }

    @Test
    void everyApplianceIsPossible() {
        assertThat(appliances.all()).hasSizeGreaterThan(35).allSatisfy(appliance -> {
            assertThat(appliance.powerFactor()).isBetween(0.4, 1.0);
            assertThat(appliance.duty().fraction()).isBetween(0.0, 1.0);
            assertThat(appliance.surgeFactor()).isBetween(1.0, 8.0);
            assertThat(appliance.perUse().hours() * appliance.usesPerDay()).isLessThanOrEqualTo(24.0);
        });
        assertThat(appliances.of("bilge-pump").onDirectCurrent()).isTrue();
        assertThat(appliances.of("toaster").onDirectCurrent()).isFalse();
        assertThatThrownBy(() -> appliances.of("sauna")).isInstanceOf(NotInTable.class);
    }
}
