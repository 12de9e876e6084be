package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;

class SharingTest {

    private static Sharing equal(int strings, double milliohms, double link, TakeOffPoint takeOff) {
        return Sharing.of(
                Collections.nCopies(strings, new Resistance(milliohms / 1000)), new Resistance(link / 1000), takeOff);
    }

    private static double[] amperes(Sharing sharing) {
        return sharing.of(new Current(100)).stream()
                .mapToDouble(Current::amperes)
                .toArray();
    }

    private static double[] numbers(String list) {
        return Stream.of(list.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    /**
     * Closed forms by Kirchhoff's laws, r for a string and l for a link. Same end, two strings: I1 / I2 = (r + 2 l) / r.
     * Opposite ends: two strings share equally; of three I2 / I1 = r / (r + l); of four I2 / I1 = r / (r + 2 l).
     */
    @ParameterizedTest
    @CsvSource({"5, 0.5", "20, 1.5", "2, 0.5", "0.8, 0.4"})
    void closedForms(double r, double l) {
        double[] same = amperes(equal(2, r, l, TakeOffPoint.SAME_END));
        assertThat(same[0] / same[1]).isCloseTo((r + 2 * l) / r, within(1e-9));
        assertThat(amperes(equal(2, r, l, TakeOffPoint.OPPOSITE_ENDS))).containsExactly(numbers("50 50"), within(1e-9));
        double[] three = amperes(equal(3, r, l, TakeOffPoint.OPPOSITE_ENDS));
        assertThat(three[1] / three[0]).isCloseTo(r / (r + l), within(1e-9));
        double[] four = amperes(equal(4, r, l, TakeOffPoint.OPPOSITE_ENDS));
        assertThat(four[1] / four[0]).isCloseTo(r / (r + 2 * l), within(1e-9));
        assertThat(four[3]).isCloseTo(four[0], within(1e-9));
    }

    /**
     * A widely reproduced note on boat electrics prints 35.9, 26.2, 20.4, 17.8 A and 26.7, 23.2, 23.2, 26.7 A for four
     * batteries of 20 mΩ with links of 1.5 mΩ at 100 A (printed figures from memory; they add up to 100.3 and 99.8).
     */
    @ParameterizedTest
    @CsvSource({"SAME_END, 35.9 26.2 20.4 17.8", "OPPOSITE_ENDS, 26.7 23.2 23.2 26.7"})
    void publishedSharesOfFourBatteries(TakeOffPoint takeOff, String printed) {
        assertThat(amperes(equal(4, 20, 1.5, takeOff))).containsExactly(numbers(printed), within(0.2));
    }

    /** One to twelve unequal strings by lot, against the loop equations in a public library's linear solver. */
    @Nested
    class AgainstLoopEquations {

        static Stream<Arguments> ladders() {
            return DrawnSystem.seeds()
                    .boxed()
                    .flatMap(seed -> Stream.of(TakeOffPoint.SAME_END, TakeOffPoint.OPPOSITE_ENDS)
                            .map(takeOff -> Arguments.of(seed, takeOff)));
        }

        @ParameterizedTest
        @MethodSource("ladders")
        void agrees(long seed, TakeOffPoint takeOff) {
            SplittableRandom lot = new SplittableRandom(seed);
            double[] r = lot.doubles(1 + seed % 12, 0.5e-3, 30e-3).toArray();
            double link = DrawnSystem.logarithmic(lot, 0.01e-3, 5e-3);
            double[] expected = byLoops(r, link, takeOff);

            Sharing sharing = Sharing.of(
                    IntStream.range(0, r.length)
                            .mapToObj(i -> new Resistance(r[i]))
                            .toList(),
                    new Resistance(link),
                    takeOff);

            assertThat(sharing.shares().stream().mapToDouble(Ratio::fraction).toArray())
                    .containsExactly(expected, within(1e-9));
            assertThat(sharing.resistance().ohms()).isCloseTo(loss(r, link, takeOff, expected), within(1e-12));
            assertThat(sharing.shares().stream().mapToDouble(Ratio::fraction).sum())
                    .isCloseTo(1, within(1e-9));
        }

        /**
         * Kirchhoff's voltage law round the mesh between neighbours, and the currents add up to 1. A plus link carries
         * what comes from beyond it; so does a minus link when the load returns at the same end, else what came before.
         */
        private double[] byLoops(double[] r, double link, TakeOffPoint takeOff) {
            int n = r.length;
            RealMatrix a = MatrixUtils.createRealMatrix(n, n);
            ArrayRealVector b = new ArrayRealVector(n);
            for (int loop = 0; loop < n - 1; loop++) {
                a.addToEntry(loop, loop, r[loop]);
                a.addToEntry(loop, loop + 1, -r[loop + 1]);
                for (int k = 0; k < n; k++) {
                    if (takeOff == TakeOffPoint.SAME_END) {
                        a.addToEntry(loop, k, k > loop ? -2 * link : 0);
                    } else {
                        a.addToEntry(loop, k, k > loop ? -link : link);
                    }
                }
            }
            for (int k = 0; k < n; k++) {
                a.setEntry(n - 1, k, 1);
            }
            b.setEntry(n - 1, 1);
            return new LUDecomposition(a).getSolver().solve(b).toArray();
        }

        /** The heat that 1 A makes in strings and links is the resistance (Joule's law, Tellegen's theorem). */
        private double loss(double[] r, double link, TakeOffPoint takeOff, double[] currents) {
            double watts = 0;
            double before = 0;
            for (int i = 0; i < r.length; i++) {
                watts += r[i] * currents[i] * currents[i];
                before += currents[i];
                if (i + 1 < r.length) {
                    double plus = 1 - before;
                    double minus = takeOff == TakeOffPoint.SAME_END ? plus : before;
                    watts += link * (plus * plus + minus * minus);
                }
            }
            return watts;
        }
    }

    @ParameterizedTest
    @EnumSource(TakeOffPoint.class)
    void oneStringGivesAll(TakeOffPoint takeOff) {
        assertThat(equal(1, 5, 0, takeOff).shares()).containsExactly(Ratio.WHOLE);
        assertThat(equal(1, 5, 0, takeOff).resistance().ohms()).isCloseTo(5e-3, within(1e-15));
    }

    @Test
    void busbarsAndPerfectLinksShareEqually() {
        for (int n = 1; n <= 24; n++) {
            double fair = 1.0 / n;
            assertThat(equal(n, 5, 0.7, TakeOffPoint.BUSBAR).shares())
                    .allSatisfy(share -> assertThat(share.fraction()).isCloseTo(fair, within(1e-12)));
            assertThat(equal(n, 5, 0, TakeOffPoint.SAME_END).worstOverMean()).isCloseTo(1, within(1e-12));
            assertThat(equal(n, 5, 0.7, TakeOffPoint.BUSBAR).resistance().ohms())
                    .isCloseTo(6.4e-3 / n, within(1e-12));
        }
    }

    /** Equal strings between opposite ends share as a mirror image; at one end each gives less than its neighbour. */
    @Test
    void upToTwentyFourStringsStayInOrder() {
        for (int n = 2; n <= 24; n++) {
            double[] opposite = amperes(equal(n, 3, 0.4, TakeOffPoint.OPPOSITE_ENDS));
            double[] same = amperes(equal(n, 3, 0.4, TakeOffPoint.SAME_END));
            for (int i = 0; i < n; i++) {
                assertThat(opposite[i]).isCloseTo(opposite[n - 1 - i], within(1e-9));
                assertThat(same[i]).isPositive();
            }
            for (int i = 1; i < n; i++) {
                assertThat(same[i]).isLessThan(same[i - 1]);
            }
            assertThat(equal(n, 3, 0.4, TakeOffPoint.SAME_END).worst())
                    .isGreaterThanOrEqualTo(
                            equal(n, 3, 0.4, TakeOffPoint.OPPOSITE_ENDS).worst());
        }
    }

    /** By Kirchhoff's laws the aged one of two, with twice the resistance, gives about half as much. */
    @Test
    void anAgedStringGivesLess() {
        double[] pair = amperes(Sharing.of(
                List.of(new Resistance(5e-3), new Resistance(10e-3)),
                new Resistance(0.5e-3),
                TakeOffPoint.OPPOSITE_ENDS));
        assertThat(pair).containsExactly(numbers("65.625 34.375"), within(0.001));
    }

    @Test
    void refusesWhatMeansNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sharing.of(List.of(), new Resistance(0), TakeOffPoint.BUSBAR));
        assertThatIllegalArgumentException().isThrownBy(() -> equal(2, 0, 0.5, TakeOffPoint.SAME_END));
    }

    /** Worked here by the same ladder: pins the implementation, no independent proof. */
    @Nested
    class Pinned {

        @ParameterizedTest
        @CsvSource({
            "2, SAME_END, 54.545 45.455, 2.727",
            "2, OPPOSITE_ENDS, 50 50, 2.750",
            "3, SAME_END, 42.708 31.250 26.042, 2.135",
            "3, OPPOSITE_ENDS, 34.375 31.250 34.375, 2.219",
            "4, SAME_END, 38.540 26.248 19.206 16.005, 1.927",
            "4, OPPOSITE_ENDS, 27.273 22.727 22.727 27.273, 2.114"
        })
        void fiveMilliohmsWithHalfMilliohmLinks(int n, TakeOffPoint takeOff, String shares, double milliohms) {
            Sharing sharing = equal(n, 5, 0.5, takeOff);
            assertThat(amperes(sharing)).containsExactly(numbers(shares), within(0.001));
            assertThat(sharing.resistance().ohms() * 1000).isCloseTo(milliohms, within(0.001));
        }
    }
}
