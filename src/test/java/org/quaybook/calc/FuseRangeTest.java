package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.quantity.Current;

class FuseRangeTest {

    private static final List<Current> CLASS_T = amperes(110, 125, 150, 175, 200, 225, 250, 300, 350, 400);

    private static List<Current> amperes(double... values) {
        return DoubleStream.of(values).mapToObj(Current::new).toList();
    }

    private static FuseRange range(double load, double factor, double conductor, double over) {
        return FuseRange.of(new Current(load), factor, new Current(conductor), over);
    }

    /** 33 CFR 183.425 table 5 and 183.455(c) (seen): 2/0 AWG of 105 °C carries 330 A; below 50 V a fuse up to 150 %. */
    @Test
    void theLawAllowsHalfAsMuchAgainBelowFiftyVolts() {
        assertThat(range(100, 0.8, 330, 1.5).most().amperes()).isCloseTo(495, within(1e-9));
    }

    /** 2 kW at 10.8 V and 0.90 take 205.8 A, which asks for 257 A (80 % rule, common practice): worked here. */
    @Test
    void theNextStandardRatingIsChosen() {
        FuseRange range = range(205.8, 0.8, 330, 1);
        assertThat(range.least().amperes()).isCloseTo(257.2, within(0.1));
        assertThat(range.choose(CLASS_T)).contains(new Current(300));
        assertThat(range(205.8, 0.8, 283.8, 1).choose(CLASS_T)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void whatIsChosenLiesInTheRangeAndNothingSmallerDoes(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        FuseRange range = range(
                lot.nextDouble(1, 400), 0.5 + lot.nextDouble(0.5), lot.nextDouble(50, 700), 1 + lot.nextInt(2) / 2.0);
        List<Current> inside = CLASS_T.stream()
                .filter(rating -> rating.amperes() >= range.least().amperes()
                        && rating.amperes() <= range.most().amperes())
                .toList();
        assertThat(range.choose(CLASS_T).stream().toList())
                .isEqualTo(inside.stream().limit(1).toList());
    }

    @Test
    void refusesWhatMeansNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> range(10, 0, 100, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> range(10, 1.1, 100, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> range(10, 0.8, 100, 0.9));
    }
}
