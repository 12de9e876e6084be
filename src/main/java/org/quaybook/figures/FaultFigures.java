package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.DcRun;
import org.quaybook.calc.Sharing;
import org.quaybook.calc.TakeOffPoint;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.job.Link;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Batteries;
import org.quaybook.reference.Battery;

/**
 * What a short on the DC side meets, taken so that the current can only come out too large and the voltage too high.
 *
 * @param resistance least resistance of the bank at its take-off: blocks at their least, links as bare cold copper
 * @param highestVoltage highest voltage that a fuse may have to break: charging or equalising in the cold, or resting
 */
public record FaultFigures(Figure<Resistance> resistance, Figure<Voltage> highestVoltage) {

    private static final Temperature COLD = new Temperature(20);

    static FaultFigures of(Bank bank, BankFigures it, Tables tables, FigureBook book) {
        int parallel = BankFigures.seen(bank.parallel());
        int series = BankFigures.seen(bank.series());
        Resistance blocks = new Resistance(
                it.restFull().value().volts() / it.shortCircuit().value().amperes() * parallel);
        Resistance string = blocks.plus(copper(bank.seriesLinks(), tables).times(series - 1));
        Resistance atTakeOff = takeOffs(bank)
                .map(takeOff -> Sharing.of(Collections.nCopies(parallel, string), copper(bank.links(), tables), takeOff)
                        .resistance())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        List<Input> inputs = new ArrayList<>(List.of(
                Input.of("E", it.restFull()), Input.of("I_k", it.shortCircuit()), Input.of("m", bank.parallel())));
        add(inputs, bank.links());
        add(inputs, bank.seriesLinks());
        return new FaultFigures(
                book.enter("bank.fault-resistance", atTakeOff, Rounding.DOWN, Formula.FAULT_RESISTANCE, inputs),
                highest(bank, it, book));
    }

    private static Figure<Voltage> highest(Bank bank, BankFigures it, FigureBook book) {
        String key = "bank.highest-voltage";
        Voltage usual = it.battery().voltages().highest();
        return stated(bank)
                .map(given -> inTheCold(
                        key,
                        bank,
                        it,
                        BankFigures.seen(given),
                        Formula.HIGHEST_VOLTAGE_STATED,
                        Input.of("U", given),
                        book))
                .orElseGet(() -> usually(key, bank, it, usual, book));
    }

    /**
     * What the bank reaches in usual charging, when it is not equalised; empty where the job says what its chargers are
     * set to.
     */
    static Optional<Figure<Voltage>> inUsualCharging(String key, Bank bank, BankFigures it, FigureBook book) {
        Voltage usual = it.battery().voltages().absorption();
        return stated(bank).isPresent() ? Optional.empty() : Optional.of(usually(key, bank, it, usual, book));
    }

    private static Optional<Given<Voltage>> stated(Bank bank) {
        return Optional.ofNullable(bank.chargeVoltage()).filter(given -> given.value() != null);
    }

    private static Figure<Voltage> usually(String key, Bank bank, BankFigures it, Voltage block, FigureBook book) {
        Input input = Input.usual("U₁₂", block, it.battery().citation());
        return inTheCold(key, bank, it, block.times(blocks(it)), Formula.HIGHEST_VOLTAGE, input, book);
    }

    /** Chargers raise their voltage in the cold, that of equalising too. */
    private static Figure<Voltage> inTheCold(
            String key, Bank bank, BankFigures it, Voltage warm, Formula formula, Input from, FigureBook book) {
        Battery battery = it.battery();
        double colder = Math.max(0, Batteries.referenceTemperature().kelvinAbove(BankFigures.seen(bank.temperature())));
        Voltage perKelvin = battery.voltages().perKelvin().times(-1);
        Voltage charging = warm.plus(perKelvin.times(colder * blocks(it)));
        Voltage rest = it.restFull().value();
        return book.enter(
                key,
                charging.compareTo(rest) > 0 ? charging : rest,
                Rounding.UP,
                formula,
                Input.of("E", it.restFull()),
                from,
                Input.usual("c", perKelvin, battery.citation()).per("K"),
                Input.of("T", bank.temperature()),
                Input.usual("n", it.asItIs().rest().cells(), battery.citation()),
                Input.usual("n₁₂", battery.cellsPer12VoltBlock(), battery.citation()));
    }

    private static double blocks(BankFigures it) {
        return (double) it.asItIs().rest().cells() / it.battery().cellsPer12VoltBlock();
    }

    /** A link whose cable nobody has written counts as none. */
    private static Resistance copper(@Nullable Link link, Tables tables) {
        if (link == null || link.size().value() == null || link.length().value() == null) {
            return new Resistance(0);
        }
        Resistance perMetre = tables.conductors()
                .perMetreAt20(link.size().value().size(), false)
                .value();
        return DcRun.resistance(perMetre, link.size().value(), link.length().value(), COLD);
    }

    private static void add(List<Input> inputs, @Nullable Link link) {
        if (link != null && link.size().value() != null && link.length().value() != null) {
            inputs.add(Input.of("S", link.size()));
            inputs.add(Input.of("L", link.length()));
        }
    }

    /** Of one that nobody has seen, every one that it can be: which of them a short meets least in hangs on the copper. */
    private static Stream<TakeOffPoint> takeOffs(Bank bank) {
        return Given.maybe(bank.takeOff())
                .map(takeOff -> Stream.of(
                        switch (takeOff) {
                            case OPPOSITE_ENDS -> TakeOffPoint.OPPOSITE_ENDS;
                            case SAME_END -> TakeOffPoint.SAME_END;
                            case BUSBAR -> TakeOffPoint.BUSBAR;
                        }))
                .orElseGet(() -> Stream.of(TakeOffPoint.values()));
    }
}
