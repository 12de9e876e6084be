package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.quantity.Area;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;

/** The tables of the AC side and of earth conductors. */
class AcTablesTest {

    private final AcCables cables = AcCables.standard();
    private final Earths earths = Earths.standard();

    private double allowed(double size, double insulation, String way) {
        return cables.allowed(ConductorSize.metric(size), new Temperature(insulation), way)
                .orElseThrow()
                .value()
                .amperes();
    }

    /** IEC 61008-1 and 61009-1, read in an installers' article (grade A). */
    @ParameterizedTest
    @CsvSource({"false,1,300", "false,2,150", "false,5,40", "true,1,500", "true,2,200", "true,5,150"})
    void tripTimes(boolean delayed, int multiple, double milliseconds) {
        assertThat(RcdTimes.standard().tripTime(delayed, multiple).value().seconds() * 1000)
                .isCloseTo(milliseconds, within(1e-9));
    }

    @Test
    void otherMultiplesAreNotGuessed() {
        assertThatThrownBy(() -> RcdTimes.standard().tripTime(false, 3)).isInstanceOf(NotInTable.class);
    }

    /** IEC 60364-5-54 Table 54.2 (grade A: rule read): 6, 25, 35 and 50 mm² take 6, 16, 16 and 25 mm². */
    @ParameterizedTest
    @CsvSource({"6,6", "16,16", "25,16", "35,16", "50,25", "70,35"})
    void protectiveConductors(double line, double protective) {
        assertThat(earths.protective(new Area(line)).value().squareMillimetres())
                .isCloseTo(protective, within(1e-12));
    }

    @Test
    void noLineNoProtectiveConductor() {
        assertThatThrownBy(() -> earths.protective(new Area(0))).isInstanceOf(NotInTable.class);
    }

    /** IEC 60364-5-54 (read in a design note): 115 in a cable, 143 alone with PVC of 70 °C, 176 at 90 °C. */
    @ParameterizedTest
    @CsvSource({"true,70,115", "false,70,143", "false,90,176", "false,89,143", "false,105,176"})
    void factorsOfTheAdiabaticFormula(boolean inCable, double insulation, double k) {
        assertThat(earths.k(inCable, new Temperature(insulation)).value()).isEqualTo(k);
    }

    @Test
    void insulationBelowTheTableIsNotGuessed() {
        assertThatThrownBy(() -> earths.k(true, new Temperature(60))).isInstanceOf(NotInTable.class);
    }

    /** Every rulebook has a smallest bond; IEC 60364-7-721 has 4 mm² for a caravan (from memory). */
    @Test
    void bonds() {
        assertThat(Rulebook.names())
                .allSatisfy(name -> assertThat(earths.bond(name).value().squareMillimetres())
                        .isPositive());
        assertThat(earths.bond("caravan").value().squareMillimetres()).isEqualTo(4);
    }

    /** IEC 60364-5-52 Table B.52.2, 2.5 mm² with PVC (from memory): 18.5, 23 and 27 A by methods A2, B2 and C. */
    @ParameterizedTest
    @CsvSource({"in-insulation,18.5", "in-conduit,23", "on-surface,27"})
    void cablesByTheWayTheyAreLaid(String way, double amperes) {
        assertThat(allowed(2.5, 70, way)).isEqualTo(amperes);
        assertThat(allowed(2.5, 85, way)).isEqualTo(amperes);
    }

    /**
     * Two tables written down apart meet: method C is that of the DC table of buildings. And physics: more copper and
     * better insulation never carry less.
     */
    @Test
    void cablesOnASurfaceCarryWhatTheTableForBuildingsSays() {
        AmpacityTable building = Rulebook.named("cabin").ampacity();
        for (double insulation : List.of(70.0, 90.0)) {
            double thinner = 0;
            for (double size : List.of(1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0, 120.0)) {
                assertThat(allowed(size, insulation, "on-surface"))
                        .isEqualTo(building.base(ConductorSize.metric(size), new Temperature(insulation))
                                .value()
                                .amperes());
                for (String way : AcCables.ways()) {
                    assertThat(allowed(size, 90, way)).isGreaterThan(allowed(size, 70, way));
                }
                assertThat(allowed(size, insulation, "in-insulation")).isGreaterThan(thinner);
                thinner = allowed(size, insulation, "in-insulation");
            }
        }
    }

    @Test
    void whatTheTableDoesNotHoldIsNotGuessed() {
        assertThat(cables.allowed(ConductorSize.metric(3), new Temperature(70), "in-conduit"))
                .isEmpty();
        assertThat(cables.allowed(ConductorSize.metric(2.5), new Temperature(60), "in-conduit"))
                .isEmpty();
        assertThat(cables.allowed(ConductorSize.awg("12"), new Temperature(70), "in-conduit"))
                .isEmpty();
    }

    /** IEC 60898-1, from memory: 16 A and 20 A stand side by side; none lies below 6 A. */
    @ParameterizedTest
    @CsvSource({"16,16", "19.9,16", "20,20", "1000,125"})
    void largestBreaker(double most, double rating) {
        assertThat(Breakers.standard().largest(new Current(most)).orElseThrow().value())
                .isEqualTo(new Current(rating));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 5.9})
    void noBreakerIsSmallEnough(double most) {
        assertThat(Breakers.standard().largest(new Current(most))).isEmpty();
    }
}
