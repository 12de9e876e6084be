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
import org.quaybook.quantity.Voltage;

/**
 * What the generator must give: its chargers, what stays on and the largest other appliance at once. Its volt-amperes are counted as watts, since
 * its winding bears no more of the one than of the other.
 *
 * @param power continuous power of the set
 * @param shortTime its short-time power; the continuous one when the job states none
 * @param current at its power; empty where the mains voltage is not written
 * @param charger input of its chargers at full current
 * @param leftOn what stays on when nobody is there, all of it drawing at once
 * @param staying names of what that is
 * @param needed both and the largest other appliance
 * @param largest name of that appliance; empty if there is none
 * @param start chargers, what stays on and the start that adds most to it
 * @param starter name of that appliance
 * @param beyond appliances that ask for more than it gives even while nothing charges, running or at their start
 * @param fits charging current that leaves the largest appliance and what stays on their power; 0 if these are too much
 */
public record GeneratorFigures(
        Figure<Power> power,
        Figure<Power> shortTime,
        Optional<Figure<Current>> current,
        Figure<Power> charger,
        Figure<Power> leftOn,
        List<String> staying,
        Figure<Power> needed,
        Optional<String> largest,
        Figure<Power> start,
        Optional<String> starter,
        List<MainsLoad> beyond,
        Figure<Current> fits) {

    public GeneratorFigures {
        staying = List.copyOf(staying);
        beyond = List.copyOf(beyond);
    }

    /** Whether its continuous power carries the chargers, what stays on and the largest other appliance. */
    public boolean carries() {
        return needed.value().compareTo(power.value()) <= 0;
    }

    /** Whether the largest start is too much while its chargers run. */
    public boolean startsTooHard() {
        return start.value().compareTo(shortTime.value()) > 0;
    }

    /** Empty without a generator, and where nobody has seen its power. */
    static Optional<GeneratorFigures> of(
            Job job, List<ChargeFigures> chargers, List<MainsLoad> appliances, BankCharging bank, FigureBook book) {
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
        List<MainsLoad> staying =
                appliances.stream().filter(GeneratorFigures::staysOn).toList();
        Figure<Power> leftOn = sum("generator.left-on", powers(staying), book);
        Optional<MainsLoad> largest = appliances.stream()
                .filter(it -> !staysOn(it))
                .max(Comparator.comparing(it -> it.power().value()));
        Optional<MainsLoad> starter =
                appliances.stream().max(Comparator.comparingDouble(GeneratorFigures::addedByStart));
        List<Figure<Power>> needed = new ArrayList<>(List.of(charger, leftOn));
        largest.ifPresent(it -> needed.add(it.power()));
        List<Figure<Power>> atStart = new ArrayList<>(List.of(charger));
        starter.ifPresent(it -> {
            atStart.add(it.startPower());
            atStart.addAll(powers(staying.stream()
                    .filter(other -> !other.key().equals(it.key()))
                    .toList()));
        });
        return Optional.of(new GeneratorFigures(
                power,
                shortTime,
                current(job, power, book),
                charger,
                leftOn,
                staying.stream().map(it -> it.appliance().name()).toList(),
                sum("generator.needed", needed, book),
                largest.map(it -> it.appliance().name()),
                sum("generator.start", atStart, book),
                starter.map(it -> it.appliance().name()),
                appliances.stream()
                        .filter(it -> it.power().value().compareTo(power.value()) > 0
                                || it.startPower().value().compareTo(shortTime.value()) > 0)
                        .toList(),
                fits(
                        power,
                        leftOn,
                        largest.map(MainsLoad::power),
                        MainsCharger.leastEfficient(onGenerator.stream()),
                        bank,
                        book)));
    }

    private static Optional<Figure<Current>> current(Job job, Figure<Power> power, FigureBook book) {
        Given<Voltage> voltage = job.inverter().output().voltage();
        return voltage.known()
                .map(volts -> book.enter(
                        "generator.current",
                        power.value().at(volts),
                        Rounding.UP,
                        Formula.CURRENT,
                        Input.of("P", power),
                        Input.of("U", voltage)));
    }

    private static boolean staysOn(MainsLoad it) {
        return Given.isYes(it.appliance().leftOn());
    }

    /** What a start adds to all that stays on: of what stays on itself, only what goes beyond its running. */
    private static double addedByStart(MainsLoad it) {
        double running = staysOn(it) ? it.power().value().watts() : 0;
        return it.startPower().value().watts() - running;
    }

    private static List<Figure<Power>> powers(List<MainsLoad> appliances) {
        return appliances.stream().map(MainsLoad::power).toList();
    }

    private static Figure<Current> fits(
            Figure<Power> power,
            Figure<Power> leftOn,
            Optional<Figure<Power>> largest,
            MainsCharger mains,
            BankCharging bank,
            FigureBook book) {
        List<Input> inputs = new ArrayList<>(List.of(Input.of("P", power), Input.of("P_on", leftOn)));
        largest.ifPresent(it -> inputs.add(Input.of("P₁", it)));
        inputs.addAll(List.of(mains.efficiencyInput(), mains.powerFactorInput(), Input.of("U", bank.voltage())));
        double beside =
                leftOn.value().watts() + largest.map(it -> it.value().watts()).orElse(0.0);
        return book.enter(
                "generator.fits",
                new Current(Math.max(0, power.value().watts() - beside)
                        / mains.inputPerWatt()
                        / bank.voltage().value().volts()),
                Rounding.DOWN,
                Formula.CHARGE_BESIDE_LOAD,
                inputs);
    }

    private static Figure<Power> sum(String key, List<Figure<Power>> parts, FigureBook book) {
        return book.enter(
                key,
                parts.stream().map(Figure::value).reduce(new Power(0), Power::plus),
                Rounding.UP,
                Formula.SUM,
                parts.stream().map(part -> Input.of("P", part)).toList());
    }
}
