package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.quaybook.job.Given;
import org.quaybook.quantity.Energy;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.TimeSpan;

/**
 * A usual day on battery: what is used against what the sources away from shore bring.
 *
 * @param use energy that leaves the bank in a day, the inverter's own draw included
 * @param summer energy that comes in on a usual summer day
 * @param winter energy that comes in on a usual winter day
 * @param summerDays days until the reserve in summer; empty if the day's energy comes in
 * @param winterDays days until the reserve in winter; empty if the day's energy comes in
 * @param darkDays days until the reserve when nothing charges
 */
public record DayFigures(
        Figure<Energy> use,
        Figure<Energy> summer,
        Figure<Energy> winter,
        Optional<Figure<TimeSpan>> summerDays,
        Optional<Figure<TimeSpan>> winterDays,
        Figure<TimeSpan> darkDays) {

    private static final TimeSpan DAY = TimeSpan.ofHours(24);

    static DayFigures of(
            List<ApplianceFigures> appliances,
            List<ChargeFigures> chargers,
            BankFigures bank,
            InverterFigures inverter,
            FigureBook book) {
        Figure<Energy> use = use(appliances, inverter, book);
        Figure<Energy> summer = broughtIn("day.summer-yield", chargers, ChargeFigures::summerDay, book);
        Figure<Energy> winter = broughtIn("day.winter-yield", chargers, ChargeFigures::winterDay, book);
        Figure<Energy> nothing = book.enter("day.no-yield", new Energy(0), Rounding.NEAREST, Formula.SUM, List.of());
        return new DayFigures(
                use,
                summer,
                winter,
                days("day.summer-days", use, summer, bank, book),
                days("day.winter-days", use, winter, bank, book),
                days("day.dark-days", use, nothing, bank, book)
                        .orElseThrow(() -> new IllegalStateException("an inverter that is on draws something")));
    }

    private static Figure<Energy> use(List<ApplianceFigures> appliances, InverterFigures inverter, FigureBook book) {
        double wattHours = Math.max(inverter.idle().value().watts(), 1e-3) * DAY.hours();
        for (ApplianceFigures it : appliances) {
            double hours = hoursPerDay(it);
            if (hours > 0) {
                Power through = inverter.losses().inputFor(it.power().value());
                double duty = it.average().value().ratioTo(it.power().value());
                wattHours += (through.watts() - inverter.idle().value().watts()) * duty * hours;
            }
        }
        return book.enter(
                "day.use",
                new Energy(wattHours),
                Rounding.UP,
                Formula.DAY_USE,
                appliances.stream().map(it -> Input.of("P_mean", it.average())).toList());
    }

    /** What cannot run on battery takes nothing from it. */
    private static double hoursPerDay(ApplianceFigures it) {
        if (!it.runs()) {
            return 0;
        }
        if (Given.isYes(it.appliance().leftOn())) {
            return DAY.hours();
        }
        double uses = Given.maybe(it.appliance().usesPerDay()).orElse(0.0);
        return Given.maybe(it.appliance().perUse()).map(TimeSpan::hours).orElse(0.0) * uses;
    }

    private static Figure<Energy> broughtIn(
            String key,
            List<ChargeFigures> chargers,
            Function<ChargeFigures, Optional<Figure<Energy>>> day,
            FigureBook book) {
        List<Figure<Energy>> parts = chargers.stream()
                .flatMap(charger -> day.apply(charger).stream())
                .toList();
        return book.enter(
                key,
                parts.stream().map(Figure::value).reduce(new Energy(0), Energy::plus),
                Rounding.DOWN,
                Formula.SUM,
                parts.stream().map(part -> Input.of("E", part)).toList());
    }

    private static Optional<Figure<TimeSpan>> days(
            String key, Figure<Energy> use, Figure<Energy> brought, BankFigures bank, FigureBook book) {
        double missing = use.value().minus(brought.value()).wattHours();
        if (missing <= 0) {
            return Optional.empty();
        }
        return Optional.of(book.enter(
                key,
                DAY.times(bank.usableEnergy().value().wattHours() / missing),
                Rounding.DOWN,
                Formula.DAYS,
                Input.of("E", bank.usableEnergy()),
                Input.of("use", use),
                Input.of("yield", brought)));
    }
}
