package org.quaybook.figures;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.InverterLosses;
import org.quaybook.job.Efficiency;
import org.quaybook.job.Given;
import org.quaybook.job.Inverter;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Quantity;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Found;

/**
 * The inverter in figures.
 *
 * @param shortTime short-time output; the continuous one when the job states none
 * @param fullInput input power at continuous output
 * @param nominalCurrent input current at continuous output and nominal voltage
 * @param worstCurrent input current at continuous output and cut-out voltage: what conductors and fuse must bear
 * @param losses the loss model
 */
public record InverterFigures(
        Figure<Power> continuous,
        Figure<Power> shortTime,
        Figure<Power> idle,
        Figure<Ratio> bestEfficiency,
        Figure<Ratio> fullEfficiency,
        Figure<Voltage> alarm,
        Figure<Voltage> cutOut,
        @Nullable Figure<Voltage> restart,
        Figure<Power> fullInput,
        Figure<Current> nominalCurrent,
        Figure<Current> worstCurrent,
        InverterLosses losses) {

    static InverterFigures of(Inverter inverter, BankFigures bank, Tables tables, FigureBook book) {
        Figure<Power> continuous = book.stated("inverter.continuous", inverter.continuous());
        Figure<Power> idle = statedOr(
                book,
                "inverter.idle",
                inverter.idle(),
                () -> tables.inverters().idleDraw(continuous.value()),
                Rounding.UP);
        Figure<Ratio> full = fullEfficiency(inverter.efficiency(), tables, book);
        Figure<Ratio> best = bestEfficiency(inverter.efficiency(), full, tables, book);
        InverterLosses losses = InverterLosses.fit(continuous.value(), idle.value(), best.value(), full.value());
        Figure<Voltage> cutOut = book.stated("inverter.cut-out", inverter.cutOut());
        Figure<Power> fullInput = book.enter(
                "inverter.full-input",
                losses.inputFor(continuous.value()),
                Rounding.UP,
                Formula.INVERTER_INPUT,
                Input.of("P", continuous),
                Input.of("P₀", idle),
                Input.of("η", full),
                Input.of("η_best", best));
        return new InverterFigures(
                continuous,
                shortTime(inverter, continuous, book),
                idle,
                best,
                full,
                book.stated("inverter.alarm", inverter.alarm()),
                cutOut,
                inverter.restart() == null || inverter.restart().value() == null
                        ? null
                        : book.stated("inverter.restart", inverter.restart()),
                fullInput,
                current("inverter.nominal-current", fullInput, bank.nominal(), book),
                current("inverter.worst-current", fullInput, cutOut, book),
                losses);
    }

    /** Not stated, it is the usual one, but never above a best efficiency that the job states. */
    private static Figure<Ratio> fullEfficiency(@Nullable Efficiency efficiency, Tables tables, FigureBook book) {
        Found<Ratio> usual = tables.inverters().fullLoadEfficiency();
        Given<Ratio> stated = efficiency == null ? null : efficiency.full();
        Optional<Given<Ratio>> best = Optional.ofNullable(efficiency).map(Efficiency::best);
        boolean unknown = stated == null || stated.value() == null;
        return best.filter(given -> unknown
                        && given.known()
                                .map(it -> it.compareTo(usual.value()) < 0)
                                .orElse(false))
                .map(given -> book.enter(
                        "inverter.full-efficiency",
                        BankFigures.seen(given),
                        Rounding.DOWN,
                        Formula.NOT_ABOVE_BEST,
                        Input.of("η_best", given)))
                .orElseGet(() -> statedOr(book, "inverter.full-efficiency", stated, () -> usual, Rounding.DOWN));
    }

    /** Not stated, it is the usual one, but never below the efficiency at full output. */
    private static Figure<Ratio> bestEfficiency(
            @Nullable Efficiency efficiency, Figure<Ratio> full, Tables tables, FigureBook book) {
        Found<Ratio> usual = tables.inverters().bestEfficiency();
        Given<Ratio> stated = efficiency == null ? null : efficiency.best();
        boolean unknown = stated == null || stated.value() == null;
        return unknown && full.value().compareTo(usual.value()) > 0
                ? book.enter(
                        "inverter.best-efficiency",
                        full.value(),
                        Rounding.DOWN,
                        Formula.NOT_BELOW_FULL,
                        Input.of("η", full))
                : statedOr(book, "inverter.best-efficiency", stated, () -> usual, Rounding.DOWN);
    }

    private static Figure<Power> shortTime(Inverter inverter, Figure<Power> continuous, FigureBook book) {
        return Optional.ofNullable(inverter.shortTime())
                .filter(shortTime -> shortTime.power().value() != null)
                .map(shortTime -> book.stated("inverter.short-time", shortTime.power()))
                .orElseGet(() -> book.enter(
                        "inverter.short-time",
                        continuous.value(),
                        Rounding.DOWN,
                        Formula.NO_MORE_THAN,
                        Input.of("P", continuous)));
    }

    private static Figure<Current> current(String key, Figure<Power> power, Figure<Voltage> voltage, FigureBook book) {
        return book.enter(
                key,
                power.value().at(voltage.value()),
                Rounding.UP,
                Formula.CURRENT,
                Input.of("P", power),
                Input.of("U", voltage));
    }

    /** The usual value is only looked up where it is needed: the table may end below what the job states itself. */
    private static <Q extends Quantity> Figure<Q> statedOr(
            FigureBook book, String key, @Nullable Given<Q> given, Supplier<Found<Q>> usual, Rounding rounding) {
        if (given != null && given.value() != null) {
            return book.stated(key, given);
        }
        Found<Q> found = usual.get();
        return book.enter(key, found.value(), rounding, Formula.FROM_TABLE, Input.of("", found));
    }
}
