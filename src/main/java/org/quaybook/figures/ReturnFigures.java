package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.LoadKind;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Stated;
import org.quaybook.quantity.Voltage;

/**
 * The inlet in the minute after shore power has come back.
 *
 * @param voltage shore voltage
 * @param chargers input of each charger on shore at its full current
 * @param charger their inputs together
 * @param leftOn what stays on, all of it drawing at once
 * @param staying names of what that is
 * @param leftOnPast the part of it that hangs past the inverter; empty if there is none
 * @param heating the largest heating appliance that is not left on
 * @param heater its name; empty if there is none
 * @param byItself chargers and what stays on together
 * @param withoutCharger what stays on and the heater
 * @param total chargers, what stays on and the heater
 * @param supply the least of inlet, shore breaker and the smallest supply that the owner expects
 * @param limit what the inverter is set to take at most; empty if that is not written
 * @param held what goes through the inverter at its limit with what stays on past it; empty without either
 * @param heldWithHeater the same with the heater; empty unless it hangs past the inverter and there is a limit
 * @param spare what is left for the house while the chargers give their full current
 * @param fits charging current that leaves the supply, or the input limit where less, whole, what stays on counted; 0 if
 *     that alone is too much
 */
public record ReturnFigures(
        Figure<Voltage> voltage,
        List<Charger> chargers,
        Figure<Current> charger,
        Figure<Current> leftOn,
        List<String> staying,
        Optional<Figure<Current>> leftOnPast,
        Figure<Current> heating,
        Optional<String> heater,
        Figure<Current> byItself,
        Figure<Current> withoutCharger,
        Figure<Current> total,
        Figure<Current> supply,
        Optional<Figure<Current>> limit,
        Optional<Figure<Current>> held,
        Optional<Figure<Current>> heldWithHeater,
        Figure<Current> spare,
        Figure<Current> fits) {

    public ReturnFigures {
        chargers = List.copyOf(chargers);
        staying = List.copyOf(staying);
    }

    /** A charger on shore and its input at full current. */
    public record Charger(Charging charging, Figure<Current> input) {}

    /** Whether the inverter holds what is taken within the supply, so that the charger gives way. */
    public boolean limited() {
        return atLimit().map(it -> it.value().compareTo(supply.value()) <= 0).orElse(false);
    }

    /** What is taken at the input limit. */
    private Optional<Figure<Current>> atLimit() {
        return held.or(() -> limit);
    }

    /** The most that chargers and what stays on take: the input limit makes the charger give way, not the loads. */
    public Stated mostByItself() {
        return most(byItself, leftOn.value(), atLimit());
    }

    /** The same with the heater on. */
    public Stated mostWithHeater() {
        return most(total, withoutCharger.value(), heldWithHeater.or(this::atLimit));
    }

    /** What the inlet bears with the heater on, while the charger gives way as far as the input limit makes it. */
    public Figure<Current> withHeater() {
        if (!limited()) {
            return total;
        }
        return heldWithHeater
                .filter(it -> it.value().compareTo(withoutCharger.value()) > 0)
                .map(it -> it.value().compareTo(total.value()) < 0 ? it : total)
                .orElse(withoutCharger);
    }

    /** Whether the input limit and nothing else keeps what goes on by itself so low. */
    public boolean heldByItself() {
        return limited()
                && atLimit()
                        .filter(it -> byItself.value().compareTo(it.value()) > 0)
                        .isPresent();
    }

    private Stated most(Figure<Current> sum, Current loads, Optional<Figure<Current>> bound) {
        return bound.filter(it -> limited() && sum.value().compareTo(it.value()) > 0)
                .map(it -> loads.compareTo(it.value()) > 0 ? Stated.up(loads) : it.stated())
                .orElseGet(sum::stated);
    }

    /** Empty without shore power, and where nobody has seen its voltage or the inlet's rating. */
    static Optional<ReturnFigures> of(
            Job job, List<ChargeFigures> chargers, List<MainsLoad> appliances, BankCharging bank, FigureBook book) {
        Shore shore = job.shore();
        if (shore == null || shore.inlet().value() == null) {
            return Optional.empty();
        }
        return MainsCharger.shoreVoltage(job)
                .map(it -> of(job, shore, book.stated("return.voltage", it), chargers, appliances, bank, book));
    }

    private static ReturnFigures of(
            Job job,
            Shore shore,
            Figure<Voltage> voltage,
            List<ChargeFigures> all,
            List<MainsLoad> appliances,
            BankCharging bank,
            FigureBook book) {
        List<Charger> chargers = all.stream()
                .filter(it -> MainsCharger.fedBy(it.charging(), Source.SHORE))
                .flatMap(it -> it.recharge().stream()
                        .map(recharge -> new Charger(
                                it.charging(),
                                input(it.key(), it.charging(), recharge.current(), voltage, bank, book))))
                .toList();
        Figure<Current> charger =
                sum("return.charger", chargers.stream().map(Charger::input).toList(), book);
        List<MainsLoad> staying = appliances.stream()
                .filter(it -> Given.isYes(it.appliance().leftOn()))
                .toList();
        List<MainsLoad> past =
                staying.stream().filter(PastInverterFigures.class::isInstance).toList();
        Optional<MainsLoad> heater = appliances.stream()
                .filter(it -> it.appliance().kind() == LoadKind.HEATING
                        && !Given.isYes(it.appliance().leftOn()))
                .max(Comparator.comparing(it -> it.power().value()));
        Figure<Current> leftOn = drawn("return.left-on", staying, voltage, book);
        Optional<Figure<Current>> leftOnPast =
                past.isEmpty() ? Optional.empty() : Optional.of(drawn("return.left-on-past", past, voltage, book));
        Figure<Current> heating = drawn("return.heating", heater.map(List::of).orElse(List.of()), voltage, book);
        Figure<Current> supply = supply(shore, book);
        Optional<Figure<Current>> limit = Optional.ofNullable(job.inverter().inputLimit())
                .filter(it -> it.value() != null)
                .map(it -> book.stated("return.limit", it));
        Optional<Figure<Current>> held =
                limit.flatMap(most -> leftOnPast.map(beside -> sum("return.held", List.of(most, beside), book)));
        Optional<Figure<Current>> heldWithHeater = heater.filter(PastInverterFigures.class::isInstance)
                .flatMap(it -> held.or(() -> limit))
                .map(most -> sum("return.held-with-heater", List.of(most, heating), book));
        Figure<Current> most = held.or(() -> limit)
                .filter(it -> it.value().compareTo(supply.value()) < 0)
                .orElse(supply);
        return new ReturnFigures(
                voltage,
                chargers,
                charger,
                leftOn,
                staying.stream().map(it -> it.appliance().name()).toList(),
                leftOnPast,
                heating,
                heater.map(it -> it.appliance().name()),
                sum("return.by-itself", List.of(charger, leftOn), book),
                sum("return.without-charger", List.of(leftOn, heating), book),
                sum("return.total", List.of(charger, leftOn, heating), book),
                supply,
                limit,
                held,
                heldWithHeater,
                book.enter(
                        "return.spare",
                        new Current(Math.max(
                                0,
                                most.value().amperes()
                                        - charger.value().amperes()
                                        - leftOn.value().amperes())),
                        Rounding.DOWN,
                        Formula.SPARE,
                        Input.of("I₁", most),
                        Input.of("I_charger", charger),
                        Input.of("I_on", leftOn)),
                fits(chargers, most, leftOn, voltage, bank, book));
    }

    private static Figure<Current> input(
            String key,
            Charging charging,
            Figure<Current> current,
            Figure<Voltage> voltage,
            BankCharging bank,
            FigureBook book) {
        MainsCharger mains = MainsCharger.of(charging);
        return book.enter(
                key + ".input",
                new Power(bank.voltage().value().volts() * current.value().amperes() * mains.inputPerWatt())
                        .at(voltage.value()),
                Rounding.UP,
                Formula.CHARGER_INPUT,
                Input.of("U", bank.voltage()),
                Input.of("I", current),
                mains.efficiencyInput(),
                mains.powerFactorInput(),
                Input.of("U_mains", voltage));
    }

    private static Figure<Current> fits(
            List<Charger> chargers,
            Figure<Current> most,
            Figure<Current> leftOn,
            Figure<Voltage> voltage,
            BankCharging bank,
            FigureBook book) {
        double free = Math.max(0, most.value().amperes() - leftOn.value().amperes());
        MainsCharger mains = MainsCharger.leastEfficient(chargers.stream().map(it -> MainsCharger.of(it.charging())));
        return book.enter(
                "return.fits",
                new Current(free
                        * voltage.value().volts()
                        / mains.inputPerWatt()
                        / bank.voltage().value().volts()),
                Rounding.DOWN,
                Formula.CHARGE_THAT_FITS,
                Input.of("I", most),
                Input.of("I_on", leftOn),
                Input.of("U_mains", voltage),
                mains.efficiencyInput(),
                mains.powerFactorInput(),
                Input.of("U", bank.voltage()));
    }

    private static Figure<Current> sum(String key, List<Figure<Current>> parts, FigureBook book) {
        return book.enter(
                key,
                parts.stream().map(Figure::value).reduce(new Current(0), Current::plus),
                Rounding.UP,
                Formula.SUM_OF_CURRENTS,
                parts.stream().map(part -> Input.of("I", part)).toList());
    }

    private static Figure<Current> drawn(
            String key, List<MainsLoad> appliances, Figure<Voltage> voltage, FigureBook book) {
        Power power = appliances.stream().map(it -> it.power().value()).reduce(new Power(0), Power::plus);
        List<Input> inputs = new ArrayList<>();
        appliances.forEach(it -> inputs.add(Input.of("P", it.power())));
        inputs.add(Input.of("U", voltage));
        return book.enter(key, power.at(voltage.value()), Rounding.UP, Formula.CURRENT_OF_ALL, inputs);
    }

    private static Figure<Current> supply(Shore shore, FigureBook book) {
        List<Given<Current>> known = Stream.of(
                        Optional.of(shore.inlet()),
                        Optional.ofNullable(shore.breaker()),
                        Optional.ofNullable(shore.smallestPedestal()))
                .flatMap(Optional::stream)
                .filter(it -> it.value() != null)
                .toList();
        return book.enter(
                "return.supply",
                known.stream()
                        .map(BankFigures::seen)
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                Rounding.DOWN,
                Formula.LEAST,
                known.stream().map(it -> Input.of("I", it)).toList());
    }
}
