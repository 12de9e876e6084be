package org.quaybook.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.quaybook.calc.Recharge;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.reference.Acceptance;

/**
 * What one charger does.
 *
 * @param toFull time from the reserve to full with this charger alone; empty if its current is not written
 * @param toKnee time from the reserve until the current tails off
 * @param summerDay energy that it brings on a usual summer day; empty if its hours are not written
 * @param winterDay energy that it brings on a usual winter day
 */
public record ChargeFigures(
        Charging charging,
        String key,
        Optional<Figure<TimeSpan>> toFull,
        Optional<Figure<TimeSpan>> toKnee,
        Optional<Figure<Energy>> summerDay,
        Optional<Figure<Energy>> winterDay) {

    /** Part of the panels' peak power that reaches the bank over a day (common practice, no source). */
    private static final double SOLAR_YIELD = 0.75;

    static List<ChargeFigures> of(List<Charging> chargers, BankFigures bank, FigureBook book) {
        Set<String> keys = new HashSet<>();
        List<ChargeFigures> figures = new ArrayList<>();
        for (Charging charging : chargers) {
            String name = Ids.of(charging.name() == null ? Ids.of(charging.kind()) : charging.name());
            String key = "charging." + (keys.add(name) ? name : name + "-" + figures.size());
            figures.add(of(charging, key, bank, book));
        }
        return List.copyOf(figures);
    }

    private static ChargeFigures of(Charging charging, String key, BankFigures bank, FigureBook book) {
        Given<Current> current = charging.current();
        Optional<Recharge> recharge = Given.maybe(current)
                .map(amperes -> Recharge.of(
                        bank.capacityNow().value(),
                        bank.reserve().value(),
                        amperes,
                        Acceptance.of(bank.battery().chemistry())));
        boolean solar = charging.kind() == ChargeKind.SOLAR;
        return new ChargeFigures(
                charging,
                key,
                recharge.filter(it -> !solar).map(it -> time(key + ".to-full", it.whole(), current, bank, book)),
                recharge.filter(it -> !solar).map(it -> time(key + ".to-knee", it.bulk(), current, bank, book)),
                solar
                        ? sun(key + ".summer-day", charging, charging.summerSun(), book)
                        : run(key + ".summer-day", charging, bank, book),
                solar
                        ? sun(key + ".winter-day", charging, charging.winterSun(), book)
                        : run(key + ".winter-day", charging, bank, book));
    }

    private static Figure<TimeSpan> time(
            String key,
            TimeSpan time,
            @org.jspecify.annotations.Nullable Given<Current> current,
            BankFigures bank,
            FigureBook book) {
        Acceptance acceptance = Acceptance.of(bank.battery().chemistry());
        return book.enter(
                key,
                time,
                Rounding.UP,
                Formula.RECHARGE,
                Input.of("I", java.util.Objects.requireNonNull(current)),
                Input.of("C", bank.capacityNow()),
                Input.of("s", bank.reserve()),
                Input.usual("s₁", acceptance.knee(), acceptance.citation()),
                Input.usual("η₁", acceptance.bulkEfficiency(), acceptance.citation()),
                Input.usual("η₂", acceptance.absorptionEfficiency(), acceptance.citation()));
    }

    private static Optional<Figure<Energy>> sun(
            String key, Charging charging, @org.jspecify.annotations.Nullable Given<TimeSpan> sun, FigureBook book) {
        Given<Power> peak = charging.peak();
        if (sun == null || sun.value() == null || peak == null || peak.value() == null) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                key,
                new Energy(peak.value().watts() * sun.value().hours() * SOLAR_YIELD),
                Rounding.DOWN,
                Formula.DAY_SOLAR,
                Input.of("P_peak", peak),
                Input.of("t_sun", sun)));
    }

    private static Optional<Figure<Energy>> run(String key, Charging charging, BankFigures bank, FigureBook book) {
        Given<TimeSpan> perDay = charging.perDay();
        Given<Current> current = charging.current();
        if (perDay == null || perDay.value() == null || current == null || current.value() == null) {
            return Optional.empty();
        }
        Acceptance acceptance = Acceptance.of(bank.battery().chemistry());
        return Optional.of(book.enter(
                key,
                new Energy(acceptance.bulkEfficiency().fraction()
                        * bank.nominal().value().volts()
                        * current.value().amperes()
                        * perDay.value().hours()),
                Rounding.DOWN,
                Formula.DAY_CHARGED,
                Input.usual("η₁", acceptance.bulkEfficiency(), acceptance.citation()),
                Input.of("U", bank.nominal()),
                Input.of("I", current),
                Input.of("t", perDay)));
    }
}
