package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Area;
import org.quaybook.reference.AcProtection.ShoreInlet;

class AcProtectionTest {

    private final AcProtection protection = AcProtection.standard();

    /** IEC 61008-1 and 61009-1, read in an installers' article (grade A). */
    @ParameterizedTest
    @CsvSource({"false,1,300", "false,2,150", "false,5,40", "true,1,500", "true,2,200", "true,5,150"})
    void tripTimes(boolean delayed, int multiple, double milliseconds) {
        assertThat(protection.tripTime(delayed, multiple).value().seconds() * 1000)
                .isCloseTo(milliseconds, within(1e-9));
    }

    @Test
    void otherMultiplesAreNotGuessed() {
        assertThatThrownBy(() -> protection.tripTime(false, 3)).isInstanceOf(NotInTable.class);
    }

    /** IEC 60364-5-54 Table 54.2 (grade A: rule read): 6, 25, 35 and 50 mm² take 6, 16, 16 and 25 mm². */
    @ParameterizedTest
    @CsvSource({"6,6", "16,16", "25,16", "35,16", "50,25", "70,35"})
    void protectiveConductors(double line, double protective) {
        assertThat(protection.protectiveConductor(new Area(line)).value().squareMillimetres())
                .isCloseTo(protective, within(1e-12));
    }

    @Test
    void noLineNoProtectiveConductor() {
        assertThatThrownBy(() -> protection.protectiveConductor(new Area(0))).isInstanceOf(NotInTable.class);
    }

    /** IEC 60898-1, from memory. */
    @Test
    void breakerRatings() {
        assertThat(protection.breakerRatings().value())
                .hasSize(13)
                .isSorted()
                .anySatisfy(rating -> assertThat(rating.amperes()).isEqualTo(16));
    }

    /** Power is voltage times current: 230 V at 16 A is 3680 W, 120 V at 30 A is 3600 W. */
    @Test
    void shoreInlets() {
        assertThat(protection.shoreInlets())
                .extracting(ShoreInlet::name, inlet -> inlet.power().watts())
                .contains(tuple("16-a", 3680.0), tuple("30-a-120-v", 3600.0));
    }

    @Test
    void clausesNameTheirSource() {
        assertThat(protection.clauses()).hasSizeGreaterThan(20).allSatisfy(clause -> {
            assertThat(clause.demand()).isNotBlank();
            assertThat(clause.citation().source()).isNotBlank();
        });
    }
}
