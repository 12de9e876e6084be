package org.quaybook.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Citation.Standing;

class AmpacityTableTest {

    private static final Voltage LOW = new Voltage(12);
    private static final Voltage MAINS = new Voltage(120);

    private final AmpacityTable iso = Rulebook.named("iso-13297").ampacity();
    private final AmpacityTable abyc = Rulebook.named("abyc-e11").ampacity();
    private final AmpacityTable iec = Rulebook.named("cabin").ampacity();

    private static Temperature celsius(double degrees) {
        return new Temperature(degrees);
    }

    private static double base(AmpacityTable table, ConductorSize size, double insulation) {
        return table.base(size, celsius(insulation)).value().amperes();
    }

    /** 33 CFR 183.425 Table 5, row 4 AWG. Grade A: read in a page with the law's text. */
    @ParameterizedTest
    @CsvSource({"60,105", "75,125", "80,130", "90,135", "105,160", "125,170", "200,180"})
    void americanRowOfFourAwg(double insulation, double amperes) {
        assertThat(base(abyc, ConductorSize.awg("4"), insulation)).isEqualTo(amperes);
    }

    /** 33 CFR 183.425 Table 5 whole, columns 60, 75, 80, 90, 105, 125 and 200 °C. Grade A: the law's text was read. */
    @ParameterizedTest
    @CsvSource({
        "18,10,10,15,20,20,25,25",
        "16,15,15,20,25,25,30,35",
        "14,20,20,25,30,35,40,45",
        "12,25,25,35,40,45,50,55",
        "10,40,40,50,55,60,70,70",
        "8,55,65,70,70,80,90,100",
        "6,80,95,100,100,120,125,135",
        "4,105,125,130,135,160,170,180",
        "3,120,145,150,155,180,195,210",
        "2,140,170,175,180,210,225,240",
        "1,165,195,210,210,245,265,280",
        "1/0,195,230,245,245,285,305,325",
        "2/0,225,265,285,285,330,355,370",
        "3/0,260,310,330,330,385,410,430",
        "4/0,300,360,385,385,445,475,510"
    })
    void americanTableWhole(
            String size, double t60, double t75, double t80, double t90, double t105, double t125, double t200) {
        assertThat(Stream.of(60, 75, 80, 90, 105, 125, 200).map(it -> base(abyc, ConductorSize.awg(size), it)))
                .containsExactly(t60, t75, t80, t90, t105, t125, t200);
        assertThat(abyc.sizes()).hasSize(15);
    }

    /**
     * ISO 13297:2020 Annex A whole, columns 60, 70, 85, 105, 125 and 200 °C. From memory like the table itself: pins what
     * was written down; that it fits the law's table is tested below.
     */
    @ParameterizedTest
    @CsvSource({
        "0.75,6,10,12,16,20,25",
        "1,8,14,18,20,25,35",
        "1.5,12,18,21,25,30,40",
        "2.5,17,25,30,35,40,45",
        "4,22,35,40,45,50,55",
        "6,29,45,50,60,70,75",
        "10,40,65,70,90,100,120",
        "16,54,90,100,130,150,170",
        "25,71,120,140,170,185,200",
        "35,87,160,185,210,225,240",
        "50,105,210,230,270,300,325",
        "70,135,265,285,330,360,375",
        "95,165,310,330,390,410,430",
        "120,190,360,400,450,480,520",
        "150,220,380,430,475,520,560"
    })
    void europeanTableWhole(double size, double t60, double t70, double t85, double t105, double t125, double t200) {
        assertThat(Stream.of(60, 70, 85, 105, 125, 200).map(it -> base(iso, ConductorSize.metric(size), it)))
                .containsExactly(t60, t70, t85, t105, t125, t200);
        assertThat(iso.sizes()).hasSize(15);
    }

    /** 33 CFR 183.425 Table 5 and its notes, 2/0 AWG at 105 °C. Grade A: read; tolerance 0.5 A for printed rounding. */
    @Test
    void americanTableWithItsFactors() {
        ConductorSize size = ConductorSize.awg("2/0");
        double amperes = base(abyc, size, 105);
        double engine = abyc.spaceFactor(celsius(105), true).value();
        double three = abyc.bundleFactor(3, MAINS).value();

        assertThat(amperes).isEqualTo(330);
        assertThat(amperes * engine).isCloseTo(280, within(0.51));
        assertThat(amperes * three).isCloseTo(231, within(0.5));
        assertThat(amperes * engine * three).isCloseTo(196.4, within(0.5));
    }

    /** The printed engine-space column for 105 °C, read in trade tables, is 0.85 of the column beside it. */
    @Test
    void printedEngineSpaceColumnFollowsTheFactor() {
        Table printed = Table.load("ampacity-abyc");
        double factor = abyc.spaceFactor(celsius(105), true).value();

        assertThat(printed.rows())
                .hasSize(15)
                .allSatisfy(row ->
                        assertThat(row.number("inside105")).isCloseTo(factor * row.number("t105"), within(0.51)));
    }

    /** 33 CFR 183.425(c) as read: bundles are derated in circuits of 50 V and more only. */
    @Test
    void americanBundlesCountFromFiftyVolts() {
        assertThat(abyc.bundleFactor(3, LOW).value()).isEqualTo(1.0);
        assertThat(abyc.bundleFactor(3, LOW).row()).isEqualTo("below 50 V");
        assertThat(abyc.bundleFactor(3, new Voltage(50)).value()).isEqualTo(0.7);
    }

    @ParameterizedTest
    @CsvSource({"1,1,1", "2,1,1", "3,0.7,1", "4,0.6,0.7", "6,0.6,0.7", "7,0.5,0.6", "24,0.5,0.6", "25,0.4,0.5"})
    void bundlesStepAtThePrintedCounts(int bundled, double american, double european) {
        // American: 33 CFR 183.425 Table 5 notes, read. European: ISO 13297 Annex A, from memory.
        assertThat(abyc.bundleFactor(bundled, MAINS).value()).isEqualTo(american);
        assertThat(iso.bundleFactor(bundled, LOW).value()).isEqualTo(european);
    }

    /**
     * Two standards that were written apart meet here: ISO's 70 mm² (from memory) and the law's 2/0 AWG (67.4 mm²,
     * read) carry the same at 105 °C.
     */
    @Test
    void metricAndAmericanTablesMeet() {
        assertThat(base(iso, ConductorSize.metric(70), 105)).isEqualTo(base(abyc, ConductorSize.awg("2/0"), 105));
    }

    /**
     * Each metric size from 2.5 to 95 mm² carries a current between those of its American neighbours, with one size of
     * slack for the rounding of both tables: ISO 13297 Annex A (from memory) against 33 CFR 183.425 Table 5 (read).
     */
    @ParameterizedTest
    @ValueSource(ints = {105, 125, 200})
    void metricTableInterleavesWithTheAmerican(int insulation) {
        List<ConductorSize> american = abyc.sizes();
        for (ConductorSize size : iso.sizes()) {
            if (size.area().squareMillimetres() < 2.5 || size.area().squareMillimetres() > 95) {
                continue;
            }
            int above = (int)
                    american.stream().filter(awg -> awg.compareTo(size) <= 0).count();
            double low = base(abyc, american.get(Math.max(0, above - 2)), insulation);
            double high = base(abyc, american.get(Math.min(american.size() - 1, above + 1)), insulation);
            assertThat(base(iso, size, insulation))
                    .as("%s at %d °C", size, insulation)
                    .isBetween(low, high);
        }
    }

    /** Physics: insulation that bears more heat, and more copper, never carry less. */
    @ParameterizedTest
    @MethodSource("tables")
    void everyTableRisesBothWays(AmpacityTable table) {
        ConductorSize thinner = table.sizes().get(0);
        for (ConductorSize size : table.sizes()) {
            double cooler = 0;
            for (double insulation = 90; insulation <= 200; insulation += 5) {
                double here = base(table, size, insulation);
                assertThat(here)
                        .isGreaterThanOrEqualTo(cooler)
                        .isGreaterThanOrEqualTo(base(table, thinner, insulation));
                cooler = here;
            }
            thinner = size;
        }
    }

    static Stream<AmpacityTable> tables() {
        return Rulebook.names().stream().map(name -> Rulebook.named(name).ampacity());
    }

    /**
     * Heat balance: the factor for air of 50 °C is the square root of (T − 50)/(T − 30). ISO and American factors are
     * from memory but for 0.85 at 105 °C (read), so this is their only outside check; 200 °C is printed as 1.
     */
    @ParameterizedTest
    @ValueSource(doubles = {75, 80, 90, 105, 125})
    void engineSpaceFactorsFollowTheHeatBalance(double insulation) {
        double law = Math.sqrt((insulation - 50) / (insulation - 30));

        assertThat(abyc.spaceFactor(celsius(insulation), true).value()).isCloseTo(law, within(0.011));
    }

    /** IEC 60364-5-52 Table B.52.14 at 50 °C, from memory, against the same heat balance. */
    @ParameterizedTest
    @ValueSource(doubles = {70, 90})
    void wallTableFactorsFollowTheHeatBalance(double insulation) {
        double law = Math.sqrt((insulation - 50) / (insulation - 30));

        assertThat(iec.spaceFactor(celsius(insulation), true).value()).isCloseTo(law, within(0.01));
    }

    @Test
    void outsideEngineSpacesNothingIsLost() {
        assertThat(iso.spaceFactor(celsius(60), false).value()).isEqualTo(1.0);
    }

    /** ISO 13297: insulation rated 60 °C may not run through an engine space (from memory). */
    @Test
    void coolInsulationHasNoPlaceInAnEngineSpace() {
        assertThatThrownBy(() -> iso.spaceFactor(celsius(60), true)).isInstanceOf(NotInTable.class);
        assertThat(abyc.spaceFactor(celsius(60), true).value()).isEqualTo(0.58);
    }

    @Test
    void theHighestColumnNotAboveTheRatingCounts() {
        ConductorSize size = ConductorSize.metric(70);

        assertThat(base(iso, size, 90)).isEqualTo(base(iso, size, 85)).isEqualTo(285);
        assertThat(base(iso, size, 104.9)).isEqualTo(285);
        assertThat(base(iso, size, 84.9)).isEqualTo(265);
        assertThat(base(iso, size, 250)).isEqualTo(base(iso, size, 200));
        assertThat(base(abyc, ConductorSize.awg("4"), 70)).isEqualTo(105);
    }

    @Test
    void whatNoTableHoldsIsNotGuessed() {
        assertThatThrownBy(() -> iso.base(ConductorSize.metric(70), celsius(59)))
                .isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> iso.base(ConductorSize.metric(7), celsius(90))).isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> iso.base(ConductorSize.awg("1"), celsius(90))).isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> iso.base(ConductorSize.metric(240), celsius(90)))
                .isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> abyc.base(ConductorSize.metric(4), celsius(90)))
                .isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> iso.bundleFactor(0, LOW)).isInstanceOf(NotInTable.class);
        assertThatThrownBy(() -> iec.bundleFactor(41, LOW)).isInstanceOf(NotInTable.class);
    }

    @Test
    void aFoundValueNamesItsPlace() {
        Found<?> found = iso.base(ConductorSize.metric(70), celsius(90));

        assertThat(found.table()).isEqualTo("ampacity-iso");
        assertThat(found.row()).isEqualTo("70 mm², 85 °C");
        assertThat(found.citation()).isEqualTo(new Citation("ISO 13297:2020, Annex A", Standing.FROM_MEMORY));
        assertThat(iso.bundleFactor(30, LOW).row()).isEqualTo("25 or more conductors");
        assertThat(iso.bundleFactor(5, LOW).row()).isEqualTo("4 to 6 conductors");
    }

    /** Sizes on sale: IEC 60228 series from 0.75 to 150 mm²; AWG 18 to 4/0. */
    @Test
    void sizesComeInOrder() {
        assertThat(iso.sizes()).hasSize(15).isSorted();
        assertThat(abyc.sizes()).hasSize(15).isSorted();
        assertThat(iec.sizes()).hasSize(13).isSorted();
    }

    /**
     * A cable fixed to a wall cools worse than one in free air, so from 10 mm² on the IEC table must stay below ISO's for
     * the same size and rating. Both from memory, of standards written by different committees.
     */
    @Test
    void wallTableStaysBelowFreeAir() {
        for (ConductorSize size : iec.sizes()) {
            if (size.area().squareMillimetres() >= 10) {
                assertThat(base(iec, size, 70)).as("%s", size).isLessThanOrEqualTo(base(iso, size, 70));
            }
        }
    }
}
