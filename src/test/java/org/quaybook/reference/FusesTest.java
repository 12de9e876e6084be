package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.job.FuseFamily;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Citation.Standing;

class FusesTest {

    private final Fuses fuses = Fuses.standard();

    @Test
    void everyFamilyOfAJobHasARow() {
        assertThat(fuses.families())
                .containsExactlyElementsOf(Stream.of(FuseFamily.values())
                        .map(family -> family.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                        .toList());
        assertThatThrownBy(() -> fuses.of("wire")).isInstanceOf(NotInTable.class);
    }

    /**
     * ABYC E-11, read: 20 kA at 125 V for the fuse of a bank above 10 kA (class T). IEC 60269-2, from memory: 25 kA at
     * 250 V. ISO 8820-3 blade, read: 1 kA at 32 V. Others: catalogue values, so only their steps are tested.
     */
    @ParameterizedTest
    @CsvSource({
        "class-t,12.8,20000",
        "class-t,125,20000",
        "nh-gg,51.2,25000",
        "blade,25.6,1000",
        "mrbf,12,10000",
        "mrbf,14.1,5000",
        "mrbf,24,5000",
        "mrbf,48,2000",
        "mega,12,2000",
        "anl,12,2500"
    })
    void interruptingCapacityStepsUpToTheNextVoltage(String family, double volts, double amperes) {
        assertThat(fuses.of(family)
                        .interruptingAt(new Voltage(volts))
                        .orElseThrow()
                        .value())
                .isEqualTo(new Current(amperes));
    }

    @ParameterizedTest
    @CsvSource({"class-t,125.1", "mega,48", "blade,33", "mrbf,58.1", "glass,48"})
    void aboveTheLastVoltageNothingIsPromised(String family, double volts) {
        assertThat(fuses.of(family).interruptingAt(new Voltage(volts))).isEmpty();
    }

    @Test
    void theHigherTheVoltageTheLessIsPromised() {
        for (String family : fuses.families()) {
            double before = Double.MAX_VALUE;
            for (double volts = 1; volts < 600; volts++) {
                double here = fuses.of(family)
                        .interruptingAt(new Voltage(volts))
                        .map(found -> found.value().amperes())
                        .orElse(0.0);
                assertThat(here).as("%s at %s V", family, volts).isLessThanOrEqualTo(before);
                before = here;
            }
        }
    }

    /** 2 kW, 10.8 V, efficiency 0.9: 205.8 A ÷ 0.8 = 257 A, so 300 A (class T ratings from memory). */
    @ParameterizedTest
    @CsvSource({"class-t,257.2,300", "class-t,300,300", "class-t,300.0000001,300", "class-t,300.1,350", "blade,7.4,7.5"
    })
    void nextRating(String family, double atLeast, double rating) {
        assertThat(fuses.of(family).nextRating(new Current(atLeast))).contains(new Current(rating));
    }

    @Test
    void aboveTheLastRatingThereIsNone() {
        assertThat(fuses.of("class-t").nextRating(new Current(401))).isEmpty();
        assertThat(fuses.of("midi").nextRating(new Current(250))).isEmpty();
    }

    @Test
    void everyFamilyIsInOrder() {
        for (String name : fuses.families()) {
            FuseFamilyRow family = fuses.of(name);
            assertThat(family.ratings()).isSorted().doesNotHaveDuplicates().isNotEmpty();
            assertThat(family.highestVersion()).isGreaterThanOrEqualTo(family.maxVoltage());
            assertThat(family.interrupting())
                    .isNotEmpty()
                    .allSatisfy(row -> assertThat(row.typical()).isGreaterThanOrEqualTo(row.least()));
        }
        assertThat(fuses.of("mrbf")
                        .interruptingAt(new Voltage(24))
                        .orElseThrow()
                        .row())
                .isEqualTo("mrbf 32.0 V");
        assertThat(fuses.of("class-t").citation().standing()).isEqualTo(Standing.FROM_MEMORY);
    }

    @Test
    void rowsThatContradictEachOtherAreRefused() {
        String[] bad = {
            "1,probe,32,5,5\n2,probe,14,10,10\n",
            "1,probe,14,5,5\n2,probe,32,10,10\n",
            "1,probe,14,10,5\n",
            "1,probe,80,5,5\n",
            "1,other,14,5,5\n"
        };
        Table families = Table.parse(
                "probe",
                TableTest.HEADINGS.replace("key: size", "key: family")
                        + "family,form,use,ratings-a,max-v,highest-version-v\nprobe,a form,a use,10;20,32,58\n");
        for (String rows : bad) {
            Table interrupting = TableTest.table("size,family,at-v,least-ka,typical-ka\n" + rows);
            assertThatThrownBy(() -> new Fuses(families, interrupting, Table.load("fuse-selectivity")))
                    .as(rows)
                    .isInstanceOf(TableFault.class);
        }
    }
}
