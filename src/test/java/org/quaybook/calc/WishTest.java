package org.quaybook.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.quaybook.calc.Discharge.Pauses;
import org.quaybook.quantity.Charge;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.RestVoltages;

/** The inverse of the running time: what it answers, run again, gives the wish. */
class WishTest {

    private static TimeSpan time(DrawnSystem it, SourceBank bank, Resistance supply) {
        return new Discharge(bank, supply)
                .run(it.demand(), Ratio.WHOLE, it.limits(), Pauses.DO_NOT_RECOVER)
                .time();
    }

    private static Wish wish(DrawnSystem it, TimeSpan time) {
        return new Wish(it.demand(), it.limits(), Pauses.DO_NOT_RECOVER, time);
    }

    /** A load that runs with its capacity needs for each wish a capacity that then gives just this time. */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void theCapacityGivesTheTime(long seed) {
        DrawnSystem it = DrawnSystem.of(seed);
        TimeSpan now = time(it, it.bank(), it.supply());
        for (double factor : new double[] {0.3, 1, 2.5}) {
            TimeSpan wanted = new TimeSpan(now.seconds() == 0 ? 600 : now.seconds() * factor);
            Optional<Charge> capacity = wish(it, wanted).capacity(it.bank(), it.supply());
            if (now.seconds() == 0) {
                assertThat(capacity).as("no capacity starts it").isEmpty();
            } else {
                SourceBank larger =
                        it.bank().with(capacity.orElseThrow(), it.bank().resistance());
                assertThat(time(it, larger, it.supply()).seconds())
                        .isCloseTo(wanted.seconds(), within(wanted.seconds() * 1e-9));
            }
        }
    }

    /** Twice the time needs twice the capacity where Peukert's law takes nothing: energy is conserved. */
    @Test
    void withoutPeukertTwiceTheTimeIsTwiceTheCapacity() {
        SourceBank bank = bank(1);
        Demand demand = Demand.steady(new Power(100));
        Limits limits = new Limits(new Ratio(0.5), new Voltage(10), null);
        TimeSpan now = new Discharge(bank, new Resistance(0.005))
                .run(demand, Ratio.WHOLE, limits, Pauses.RECOVER)
                .time();
        assertThat(new Wish(demand, limits, Pauses.RECOVER, now.times(2))
                        .capacity(bank, new Resistance(0.005))
                        .orElseThrow()
                        .ampereHours())
                .isCloseTo(200, within(1e-6));
    }

    /** Peukert's law gives t in proportion to the k-th power of C, so C to the k-th root of the wish. */
    @ParameterizedTest
    @CsvSource({"1.12, 2", "1.25, 3", "1.25, 0.5"})
    void withPeukertTheCapacityGoesWithTheRoot(double k, double times) {
        SourceBank bank = bank(k);
        Demand demand = Demand.steady(new Power(600));
        Limits limits = new Limits(new Ratio(0.5), new Voltage(10), null);
        TimeSpan now = new Discharge(bank, new Resistance(0.001))
                .run(demand, Ratio.WHOLE, limits, Pauses.RECOVER)
                .time();
        assertThat(new Wish(demand, limits, Pauses.RECOVER, now.times(times))
                        .capacity(bank, new Resistance(0.001))
                        .orElseThrow()
                        .ampereHours())
                .isCloseTo(100 * Math.pow(times, 1 / k), within(1e-6));
    }

    private static SourceBank bank(double k) {
        return new SourceBank(
                new RestVoltage(RestVoltages.standard().of("agm"), 6),
                new Charge(100),
                20,
                k,
                new Resistance(0.005),
                1.5,
                new Ratio(0.3));
    }

    /** Nine tenths of the resistance grant the wish, eleven tenths do not; if none does, not even a perfect way does. */
    @ParameterizedTest
    @MethodSource("org.quaybook.calc.DrawnSystem#seeds")
    void theResistanceIsTheLargest(long seed) {
        DrawnSystem it = DrawnSystem.of(seed);
        TimeSpan perfect = time(it, it.bank(), new Resistance(0));
        TimeSpan wanted = new TimeSpan(perfect.seconds() == 0 ? 600 : perfect.seconds() * 0.8);
        Wish wish = wish(it, wanted);
        Optional<Resistance> most = wish.supply(it.bank());
        assertThat(most.isPresent()).isEqualTo(perfect.seconds() > 0);
        most.ifPresent(found -> {
            assertThat(wish.isGrantedBy(it.bank(), found.times(0.9))).isTrue();
            assertThat(wish.isGrantedBy(it.bank(), found.times(1.1))).isFalse();
        });
        assertThat(wish(it, new TimeSpan(perfect.seconds() + 1)).supply(it.bank()))
                .isEmpty();
    }

    @Test
    void aWishBeyondAllBanksIsAnswered() {
        Limits limits = new Limits(Ratio.NONE, new Voltage(10), null);
        Wish endless = new Wish(Demand.steady(new Power(500)), limits, Pauses.RECOVER, TimeSpan.ofHours(1e6));
        assertThat(endless.capacity(bank(1.1), new Resistance(0.001))).isEmpty();
        Wish trifle = new Wish(Demand.steady(new Power(1)), limits, Pauses.RECOVER, new TimeSpan(1));
        assertThat(trifle.capacity(bank(1.1), new Resistance(0.001))
                        .orElseThrow()
                        .ampereHours())
                .isCloseTo(0.1, within(1e-12));
    }

    @Test
    void nobodyWishesForNothing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Wish(
                        Demand.steady(new Power(1)),
                        new Limits(Ratio.NONE, new Voltage(10), null),
                        Pauses.RECOVER,
                        new TimeSpan(0)));
    }
}
