package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.DcRun;
import org.quaybook.calc.Sharing;
import org.quaybook.calc.TakeOffPoint;
import org.quaybook.job.Bank;
import org.quaybook.job.Given;
import org.quaybook.job.Link;
import org.quaybook.job.TakeOff;
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
        Resistance atTakeOff = Sharing.of(
                        Collections.nCopies(parallel, string), copper(bank.links(), tables), takeOff(bank))
                .resistance();
        List<Input> inputs = new ArrayList<>(List.of(
                Input.of("E", it.restFull()), Input.of("I_k", it.shortCircuit()), Input.of("m", bank.parallel())));
        add(inputs, bank.links());
        add(inputs, bank.seriesLinks());
        return new FaultFigures(
                book.enter("bank.fault-resistance", atTakeOff, Rounding.DOWN, Formula.FAULT_RESISTANCE, inputs),
                highest(bank, it, book));
    }

    /** Chargers raise their voltage in the cold, that of equalising too. */
    private static Figure<Voltage> highest(Bank bank, BankFigures it, FigureBook book) {
        Battery battery = it.battery();
        int cells = it.asItIs().rest().cells();
        double blocks = (double) cells / battery.cellsPer12VoltBlock();
        Given<Voltage> stated = bank.chargeVoltage();
        Voltage warm = stated != null && stated.value() != null
                ? stated.value()
                : battery.voltages().highest().times(blocks);
        double colder = Math.max(0, Batteries.referenceTemperature().kelvinAbove(BankFigures.seen(bank.temperature())));
        Voltage perKelvin = battery.voltages().perKelvin().times(-1);
        Voltage charging = warm.plus(perKelvin.times(colder * blocks));
        List<Input> inputs = new ArrayList<>(List.of(Input.of("E", it.restFull())));
        inputs.add(
                stated != null && stated.value() != null
                        ? Input.of("U", stated)
                        : Input.usual("U₁₂", battery.voltages().highest(), battery.citation()));
        inputs.add(Input.usual("c", perKelvin, battery.citation()));
        inputs.add(Input.of("T", bank.temperature()));
        inputs.add(Input.usual("n", cells, battery.citation()));
        inputs.add(Input.usual("n₁₂", battery.cellsPer12VoltBlock(), battery.citation()));
        return book.enter(
                "bank.highest-voltage",
                charging.compareTo(it.restFull().value()) > 0
                        ? charging
                        : it.restFull().value(),
                Rounding.UP,
                stated != null && stated.value() != null ? Formula.HIGHEST_VOLTAGE_STATED : Formula.HIGHEST_VOLTAGE,
                inputs);
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

    /** One that nobody has seen is at the same end, where a short meets the least resistance. */
    private static TakeOffPoint takeOff(Bank bank) {
        return switch (Given.maybe(bank.takeOff()).orElse(TakeOff.SAME_END)) {
            case OPPOSITE_ENDS -> TakeOffPoint.OPPOSITE_ENDS;
            case SAME_END -> TakeOffPoint.SAME_END;
            case BUSBAR -> TakeOffPoint.BUSBAR;
        };
    }
}
