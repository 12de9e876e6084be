package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quaybook.quantity.Power;

class InvertersTest {

    private final Inverters inverters = Inverters.standard();

    /** EN 50530, read (grade A): 0.03, 0.06, 0.13, 0.10, 0.48 and 0.20 at 5, 10, 20, 30, 50 and 100 % add up to 1. */
    @Test
    void europeanWeights() {
        assertThat(inverters.weights().stream()
                        .mapToDouble(point -> point.value().fraction())
                        .sum())
                .isCloseTo(1.0, within(1e-12));
        assertThat(inverters.weights().stream()
                        .mapToDouble(point -> point.value().fraction() * 0.90)
                        .sum())
                .isCloseTo(0.90, within(1e-12));
        assertThat(inverters.weights())
                .extracting(point -> point.load().fraction())
                .containsExactly(0.05, 0.1, 0.2, 0.3, 0.5, 1.0);
    }

    /** Common practice, no source: best 93 to 94 %, full load 90 to 92 %. */
    @Test
    void bestAndFullLoad() {
        assertThat(inverters.bestEfficiency().value().fraction()).isEqualTo(0.935);
        assertThat(inverters.bestEfficiency().row()).isEqualTo("0.4");
        assertThat(inverters.fullLoadEfficiency().value().fraction()).isEqualTo(0.919);
    }

    /** Each row is x ÷ (x + 0.008 + 0.03 x + 0.05 x²), the loss model that the file names, to its last digit. */
    @Test
    void curveFollowsItsModel() {
        assertThat(inverters.curve()).hasSize(11).allSatisfy(point -> {
            double load = point.load().fraction();
            double input = load + 0.008 + 0.03 * load + 0.05 * load * load;
            assertThat(point.value().fraction()).isCloseTo(load / input, within(0.0011));
        });
    }

    @ParameterizedTest
    @CsvSource({"1,4", "300,4", "301,8", "1000,8", "1600,15", "2500,30", "3000,30", "3001,40", "5000,40"})
    void idleDrawOfTheNextRowUp(double rated, double idle) {
        assertThat(inverters.idleDraw(new Power(rated)).value().watts()).isEqualTo(idle);
    }

    @Test
    void aboveTheLastRowNothingIsGuessed() {
        assertThatThrownBy(() -> inverters.idleDraw(new Power(5001))).isInstanceOf(NotInTable.class);
    }

    @Test
    void weightsThatDoNotAddUpAreRefused() {
        Table idle = Table.load("inverter-idle");
        Table curve = Table.load("inverter-efficiency");
        Table weights = TableTest.table("size,load,weight\n1,0.5,0.5\n2,1,0.4\n");

        assertThatThrownBy(() -> new Inverters(idle, curve, weights)).isInstanceOf(TableFault.class);
    }
}
