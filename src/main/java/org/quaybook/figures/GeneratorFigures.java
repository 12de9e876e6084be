package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.Source;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;

/**
 * What the generator must give: its chargers and the largest appliance at once. Its volt-amperes are counted as watts, since
 * its winding bears no more of the one than of the other.
 *
 * @param power continuous power of the set
 * @param shortTime its short-time power; the continuous one when the job states none
 * @param charger input of its chargers at full current
 * @param needed that and the largest appliance
 * @param largest name of that appliance; empty if there is none
 * @param start chargers and the largest start of an appliance
 * @param starter name of that appliance
 * @param beyond appliances that ask for more than it gives even while nothing charges, running or at their start
 * @param fits charging current that leaves the largest appliance its power; 0 if that alone is too much
 */
public record GeneratorFigures(
        Figure<Power> power,
        Figure<Power> shortTime,
        Figure<Power> charger,
        Figure<Power> needed,
        Optional<String> largest,
        Figure<Power> start,
        Optional<String> starter,
        List<ApplianceFigures> beyond,
        Figure<Current> fits) {

    public GeneratorFigures {
        beyond = List.copyOf(beyond);
    }

    /** Whether its continuous power carries the chargers and the largest appliance. */
    public boolean carries() {
        return needed.value().compareTo(power.value()) <= 0;
    }

    /** Whether the largest start is too much while its chargers run. */
    public boolean startsTooHard() {
        return start.value().compareTo(shortTime.value()) > 0;
    }

    /** Empty without a generator, and where nobody has seen its power. */
    static Optional<GeneratorFigures> of(
            Job job,
            List<ChargeFigures> chargers,
            List<ApplianceFigures> appliances,
            BankCharging bank,
            FigureBook book) {
        Generator generator = job.generator();
        if (generator == null || generator.power().value() == null) {
            return Optional.empty();
        }
        Figure<Power> power = book.stated("generator.power", generator.power());
        Figure<Power> shortTime = generator.shortTime() != null
                        && generator.shortTime().power().value() != null
                ? book.stated("generator.short-time", generator.shortTime().power())
                : book.enter(
                        "generator.short-time",
                        power.value(),
                        Rounding.DOWN,
                        Formula.NO_MORE_THAN,
                        Input.of("P", power));
        double watts = 0;
        List<MainsCharger> onGenerator = new ArrayList<>();
        List<Input> inputs = new ArrayList<>(List.of(Input.of("U", bank.voltage())));
        for (ChargeFigures charger : chargers) {
            if (MainsCharger.fedBy(charger.charging(), Source.GENERATOR)
                    && charger.recharge().isPresent()
                    && Given.maybe(charger.charging().current()).isPresent()) {
                MainsCharger mains = MainsCharger.of(charger.charging());
                Figure<Current> current = charger.recharge().get().current();
                watts += bank.voltage().value().volts() * current.value().amperes() * mains.inputPerWatt();
                onGenerator.add(mains);
                inputs.addAll(List.of(Input.of("I", current), mains.efficiencyInput(), mains.powerFactorInput()));
            }
        }
        Figure<Power> charger =
                book.enter("generator.charger", new Power(watts), Rounding.UP, Formula.CHARGER_POWER, inputs);
        Optional<ApplianceFigures> largest =
                appliances.stream().max(Comparator.comparing(it -> it.power().value()));
        Optional<ApplianceFigures> starter = appliances.stream()
                .max(Comparator.comparing(it -> it.startPower().value()));
        return Optional.of(new GeneratorFigures(
                power,
                shortTime,
                charger,
                with("generator.needed", charger, largest.map(ApplianceFigures::power), book),
                largest.map(it -> it.appliance().name()),
                with("generator.start", charger, starter.map(ApplianceFigures::startPower), book),
                starter.map(it -> it.appliance().name()),
                appliances.stream()
                        .filter(it -> it.power().value().compareTo(power.value()) > 0
                                || it.startPower().value().compareTo(shortTime.value()) > 0)
                        .toList(),
                fits(
                        power,
                        largest.map(ApplianceFigures::power),
                        MainsCharger.leastEfficient(onGenerator.stream()),
                        bank,
                        book)));
    }

    private static Figure<Current> fits(
            Figure<Power> power,
            Optional<Figure<Power>> largest,
            MainsCharger mains,
            BankCharging bank,
            FigureBook book) {
        List<Input> inputs = new ArrayList<>(List.of(Input.of("P", power)));
        largest.ifPresent(it -> inputs.add(Input.of("P₁", it)));
        inputs.addAll(List.of(mains.efficiencyInput(), mains.powerFactorInput(), Input.of("U", bank.voltage())));
        double free = Math.max(
                0, power.value().watts() - largest.map(it -> it.value().watts()).orElse(0.0));
        return book.enter(
                "generator.fits",
                new Current(free / mains.inputPerWatt() / bank.voltage().value().volts()),
                Rounding.DOWN,
                Formula.CHARGE_BESIDE_LOAD,
                inputs);
    }

    private static Figure<Power> with(
            String key, Figure<Power> charger, Optional<Figure<Power>> load, FigureBook book) {
        List<Input> inputs = new ArrayList<>(List.of(Input.of("P", charger)));
        load.ifPresent(it -> inputs.add(Input.of("P", it)));
        return book.enter(
                key,
                charger.value().plus(load.map(Figure::value).orElse(new Power(0))),
                Rounding.UP,
                Formula.SUM,
                inputs);
    }
}
