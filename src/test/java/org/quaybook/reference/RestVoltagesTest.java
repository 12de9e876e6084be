package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

class RestVoltagesTest {

    /**
     * Textbook rule on lead-acid cells: volts = density + 0.84 (grade B: formula read, numbers ours; 1.280 gives 2.12 V
     * a cell). The table was read elsewhere and must agree within 7 mV a cell.
     */
    @Test
    void floodedCurveFollowsTheDensityOfTheAcid() {
        assertThat(1.280 + 0.84).isCloseTo(2.12, within(1e-9));
        assertThat(Table.load("rest-voltage-flooded").rows())
                .hasSize(11)
                .allSatisfy(row ->
                        assertThat(row.number("block-v") / 6).isCloseTo(row.number("density") + 0.84, within(0.007)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"flooded", "agm", "gel", "lithium-iron-phosphate"})
    void voltageAndChargeAreInverse(String chemistry) {
        RestVoltageCurve curve = RestVoltages.standard().of(chemistry);
        double below = 0;
        for (int step = 0; step <= 1000; step++) {
            Ratio charge = new Ratio(step / 1000.0);
            Voltage voltage = curve.perCell(charge);

            assertThat(voltage.volts()).isGreaterThan(below);
            assertThat(curve.stateOfChargeAt(voltage).orElseThrow().fraction())
                    .isCloseTo(charge.fraction(), within(1e-9));
            below = voltage.volts();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"flooded", "agm", "gel", "lithium-iron-phosphate"})
    void rowsAreMetExactlyAndEndsAreEnds(String chemistry) {
        RestVoltageCurve curve = RestVoltages.standard().of(chemistry);

        assertThat(curve.rows()).hasSize(11);
        assertThat(curve.rows())
                .allSatisfy(row -> assertThat(curve.perCell(row.stateOfCharge()).volts())
                        .isCloseTo(row.perCell().volts(), within(1e-12)));
        assertThat(curve.stateOfChargeAt(curve.full().perCell().plus(new Voltage(0.001))))
                .isEmpty();
        assertThat(curve.stateOfChargeAt(curve.empty().perCell().minus(new Voltage(0.001))))
                .isEmpty();
        assertThat(curve.stateOfChargeAt(curve.full().perCell())).contains(Ratio.WHOLE);
        assertThat(curve.stateOfChargeAt(curve.empty().perCell())).contains(Ratio.NONE);
        assertThatThrownBy(() -> curve.perCell(new Ratio(1.0001))).isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> curve.perCell(new Ratio(-0.0001))).isInstanceOf(NotInTable.class);
    }

    /** Half way between two rows of the flooded table (12.10 and 12.24 V at 50 and 60 %), by hand. */
    @Test
    void betweenRowsLiesAStraightLine() {
        RestVoltageCurve curve = RestVoltages.standard().of("flooded");

        assertThat(curve.perCell(new Ratio(0.55)).volts() * 6).isCloseTo(12.17, within(1e-9));
    }

    /** Cells of 2 V (lead-acid) and 3.2 V (lithium iron phosphate): nominal values of the trade. */
    @ParameterizedTest
    @CsvSource({
        "flooded,2,1",
        "flooded,6,3",
        "flooded,12,6",
        "agm,24,12",
        "gel,48,24",
        "lithium-iron-phosphate,3.2,1",
        "lithium-iron-phosphate,12.8,4",
        "lithium-iron-phosphate,25.6,8",
        "lithium-iron-phosphate,48,15",
        "lithium-iron-phosphate,51.2,16"
    })
    void blocksHoldWholeCells(String chemistry, double volts, int cells) {
        assertThat(RestVoltages.standard().of(chemistry).cells(new Voltage(volts)))
                .isEqualTo(cells);
    }

    @ParameterizedTest
    @CsvSource({
        "flooded,12.8",
        "flooded,0",
        "flooded,-12",
        "flooded,3",
        "lithium-iron-phosphate,12",
        "lithium-iron-phosphate,24",
        "lithium-iron-phosphate,0.1"
    })
    void partsOfCellsAreRefused(String chemistry, double volts) {
        RestVoltageCurve curve = RestVoltages.standard().of(chemistry);

        assertThatThrownBy(() -> curve.cells(new Voltage(volts))).isInstanceOf(NotInTable.class);
    }

    @Test
    void curvesThatDoNotReachTheEndsAreRefused() {
        Battery battery = Batteries.standard().of("agm");

        for (String rows : new String[] {"1,0,11\n2,90,12\n", "1,10,11\n2,100,12\n", "1,0,12\n2,100,11\n"}) {
            Table table = TableTest.table("size,charge-percent,block-v\n" + rows);
            assertThatThrownBy(() -> new RestVoltageCurve(battery, table)).isInstanceOf(TableFault.class);
        }
    }

    @Test
    void unknownChemistriesAreRefused() {
        assertThatThrownBy(() -> RestVoltages.standard().of("nickel")).isInstanceOf(NotInTable.class);
    }
}
