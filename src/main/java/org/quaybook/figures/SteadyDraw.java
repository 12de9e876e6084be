package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.calc.Beside;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;

/**
 * What draws on the bank besides the inverter, day and night.
 *
 * @param standing what draws however everything is switched; empty if nobody wrote it
 * @param whole that and what the branches draw on average; empty if nobody wrote either
 * @param standingPower what always draws, as a power
 * @param power the whole as a power
 * @param counted the branches whose average is in it
 * @param uncounted the branches of which nobody wrote an average
 * @param beside the whole as it draws beside the inverter, and the cables that it shares with it
 */
public record SteadyDraw(
        Optional<Figure<Current>> standing,
        Optional<Figure<Current>> whole,
        Optional<Figure<Power>> standingPower,
        Optional<Figure<Power>> power,
        List<Fuse> counted,
        List<Fuse> uncounted,
        Beside beside) {

    public SteadyDraw {
        counted = List.copyOf(counted);
        uncounted = List.copyOf(uncounted);
    }

    static SteadyDraw of(Job job, BankFigures bank, SharedWay way, SupplyFigures supply, FigureBook book) {
        Optional<Figure<Current>> standing = Optional.ofNullable(job.bank().standingDraw())
                .filter(draw -> draw.value() != null)
                .map(draw -> book.stated("bank.standing-draw", draw));
        List<Fuse> counted = way.averaged();
        Set<String> known = counted.stream()
                .flatMap(fuse -> Stream.concat(Stream.of(fuse.id()), fuse.through().stream()))
                .collect(Collectors.toUnmodifiableSet());
        Optional<Figure<Power>> standingPower = standing.map(it -> power("bank.standing-power", it, bank, book));
        Optional<Figure<Current>> whole = counted.isEmpty() ? standing : Optional.of(whole(standing, counted, book));
        return new SteadyDraw(
                standing,
                whole,
                standingPower,
                counted.isEmpty() ? standingPower : whole.map(it -> power("bank.steady-power", it, bank, book)),
                counted,
                way.branches().stream()
                        .filter(fuse -> !known.contains(fuse.id()))
                        .toList(),
                beside(standing, counted, way, supply));
    }

    /** What always draws and what some branches draw on average, as it draws beside the inverter. */
    static Beside beside(Optional<Figure<Current>> standing, List<Fuse> counted, SharedWay way, SupplyFigures supply) {
        return counted.stream()
                .map(fuse -> new Beside(BankFigures.seen(average(fuse).orElseThrow()), supply.of(way.passes(fuse))))
                .reduce(Beside.atBank(standing.map(Figure::value).orElse(new Current(0))), Beside::plus);
    }

    private static Figure<Current> whole(Optional<Figure<Current>> standing, List<Fuse> counted, FigureBook book) {
        List<Input> inputs = new ArrayList<>();
        standing.ifPresent(draw -> inputs.add(Input.of("I", draw)));
        Current sum = standing.map(Figure::value).orElse(new Current(0));
        for (Fuse fuse : counted) {
            Given<Current> average = average(fuse).orElseThrow();
            inputs.add(Input.of("I", average));
            sum = sum.plus(BankFigures.seen(average));
        }
        return book.enter("bank.steady-draw", sum, Rounding.UP, Formula.SUM_OF_CURRENTS, inputs);
    }

    /** What a branch draws on average; empty if nobody wrote it. */
    static Optional<Given<Current>> average(Fuse fuse) {
        return Optional.ofNullable(fuse.average()).filter(average -> average.value() != null);
    }

    /** As much as it takes at the volts of a full bank; counted behind the inverter's cables: a hair more than it is. */
    private static Figure<Power> power(String key, Figure<Current> draw, BankFigures bank, FigureBook book) {
        Figure<Voltage> full = bank.restFull();
        return book.enter(
                key,
                new Power(draw.value().amperes() * full.value().volts()),
                Rounding.UP,
                Formula.POWER_DRAWN,
                Input.of("E", full),
                Input.of("I_on", draw));
    }

    /** The whole as a power; 0 W where nobody wrote anything. */
    public Power asPower() {
        return asPower(power);
    }

    /** What always draws as a power; 0 W where nobody wrote it. */
    Power standingAsPower() {
        return asPower(standingPower);
    }

    private static Power asPower(Optional<Figure<Power>> figure) {
        return figure.map(Figure::value).orElse(new Power(0));
    }

    /** 0 A where nobody wrote anything. */
    Current current() {
        return whole.map(Figure::value).orElse(new Current(0));
    }

    /** What a figure that counts it as a current was worked out from besides. */
    List<Input> currentInputs() {
        return whole.map(draw -> List.of(Input.of("I_on", draw))).orElse(List.of());
    }

    /** What a figure that counts it as a power was worked out from besides. */
    List<Input> powerInputs() {
        return powerInputs(power);
    }

    /** The same of one that counts only what always draws. */
    List<Input> standingPowerInputs() {
        return powerInputs(standingPower);
    }

    private static List<Input> powerInputs(Optional<Figure<Power>> power) {
        return power.map(draw -> List.of(Input.of("P_on", draw))).orElse(List.of());
    }
}
