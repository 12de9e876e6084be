package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.quantity.TimeSpan;

/** Root of the sum of squares, ISO/IEC Guide 98-3 (GUM) 5.1.2 (from memory). */
class TimeRangeTest {

    private static TimeRange range(double time, double... changed) {
        return TimeRange.of(
                new TimeSpan(time),
                DoubleStream.of(changed).mapToObj(TimeSpan::new).toList());
    }

    /** 3, 4, 5 and 5, 12, 13 are the sides of right-angled triangles (Pythagoras). */
    @Test
    void effectsAddAsTheSidesOfATriangle() {
        TimeRange range = range(100, 97, 96, 105, 112);
        assertThat(range.least().seconds()).isCloseTo(95, within(1e-12));
        assertThat(range.most().seconds()).isCloseTo(113, within(1e-12));
    }

    /**
     * A quotient of inputs with small relative spreads u has the relative spread √(Σ u²) (GUM 5.1.6): t = C U / P with
     * 1 % of each.
     */
    @ParameterizedTest
    @CsvSource({"0.01, 0.01, 0.01", "0.02, 0.001, 0.01"})
    void agreesWithTheRuleForQuotients(double c, double u, double p) {
        double time = 3600;
        TimeRange range = range(
                time, time * (1 - c), time * (1 + c), time * (1 - u), time * (1 + u), time / (1 + p), time / (1 - p));
        double relative = Math.sqrt(c * c + u * u + p * p);
        assertThat(range.least().seconds()).isCloseTo(time * (1 - relative), within(time * relative * 0.02));
        assertThat(range.most().seconds()).isCloseTo(time * (1 + relative), within(time * relative * 0.02));
    }

    @Test
    void nothingChangedIsNoRange() {
        assertThat(TimeRange.of(new TimeSpan(60), List.of()))
                .isEqualTo(new TimeRange(new TimeSpan(60), new TimeSpan(60)));
    }

    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void containsTheTimeAndIsNeverNegative(long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        double time = lot.nextInt(5) == 0 ? 0 : lot.nextDouble() * 1000;
        TimeRange range = range(time, lot.doubles(6, 0, 2000).toArray());
        assertThat(range.least().seconds()).isBetween(0.0, time);
        assertThat(range.most().seconds()).isGreaterThanOrEqualTo(time);
    }
}
