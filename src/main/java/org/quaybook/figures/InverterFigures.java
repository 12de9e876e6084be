package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
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
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.TimeSpan;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Found;

/**
 * The inverter in figures.
 *
 * @param continuous rated output, which conductors and fuse are held against
 * @param shortTime short-time output; the continuous one when the job states none
 * @param continuousHot what is left of the continuous output in the heat of its locker; empty where it is not that hot
 * @param shortTimeHot the same for the short-time output
 * @param cutOutAtOnce voltage at which it does not wait for its cut-out delay
 * @param fullInput input power at continuous output
 * @param nominalCurrent input current at continuous output and nominal voltage
 * @param worstCurrent input current at continuous output and cut-out voltage: what conductors and fuse must bear
 * @param loss what it loses besides the idle draw
 * @param reached the best efficiency that idle draw and efficiency at full output leave
 * @param losses the loss model
 */
public record InverterFigures(
        Figure<Power> continuous,
        Figure<Power> shortTime,
        Optional<Figure<Power>> continuousHot,
        Optional<Figure<Power>> shortTimeHot,
        Figure<Power> idle,
        Figure<Ratio> bestEfficiency,
        Figure<Ratio> fullEfficiency,
        Figure<Voltage> alarm,
        Figure<Voltage> cutOut,
        Optional<Figure<Voltage>> cutOutAtOnce,
        Optional<Figure<TimeSpan>> alarmDelay,
        Optional<Figure<TimeSpan>> cutOutDelay,
        @Nullable Figure<Voltage> restart,
        Optional<Figure<TimeSpan>> restartDelay,
        Figure<Power> fullInput,
        Figure<Current> nominalCurrent,
        Figure<Current> worstCurrent,
        Loss loss,
        Figure<Ratio> reached,
        InverterLosses losses) {

    /**
     * What it loses besides the idle draw.
     *
     * @param inProportion per watt of output
     * @param withSquare that grows with the square of the output, as a share of the output at full output
     */
    public record Loss(Figure<Ratio> inProportion, Figure<Ratio> withSquare) {}

    /** The continuous output that decides what can run: the derated one in a hot locker. */
    public Figure<Power> output() {
        return continuousHot.orElse(continuous);
    }

    /** The short-time output that decides what can start: the derated one in a hot locker. */
    public Figure<Power> startOutput() {
        return shortTimeHot.orElse(shortTime);
    }

    /** What it takes from the bank for an output. */
    Figure<Power> load(String key, Figure<Power> output, FigureBook book) {
        return load(key, losses.inputFor(output.value()), output, lossInputs(), book);
    }

    private static Figure<Power> load(
            String key, Power load, Figure<Power> output, List<Input> lossInputs, FigureBook book) {
        List<Input> inputs = new ArrayList<>(List.of(Input.of("P", output)));
        inputs.addAll(lossInputs);
        return book.enter(key, load, Rounding.UP, Formula.INVERTER_LOAD, inputs);
    }

    /** What input and output are worked out from besides each other. */
    List<Input> lossInputs() {
        return lossInputs(idle, loss, continuous);
    }

    private static List<Input> lossInputs(Figure<Power> idle, Loss loss, Figure<Power> continuous) {
        return List.of(
                Input.of("P₀", idle),
                Input.of("a", loss.inProportion()),
                Input.of("c", loss.withSquare()),
                Input.of("P_n", continuous));
    }

    static InverterFigures of(Inverter inverter, BankFigures bank, Tables tables, FigureBook book) {
        Figure<Power> continuous = book.stated("inverter.continuous", inverter.continuous());
        Figure<Power> idle = statedOr(
                book,
                "inverter.idle",
                inverter.idle(),
                () -> Unanswerable.lookedUpFor(
                        inverter.continuous().place(), () -> tables.inverters().idleDraw(continuous.value())),
                Rounding.UP);
        Figure<Ratio> full = fullEfficiency(inverter.efficiency(), tables, book);
        Figure<Ratio> best = bestEfficiency(inverter.efficiency(), full, tables, book);
        InverterLosses losses = InverterLosses.fit(continuous.value(), idle.value(), best.value(), full.value());
        Figure<Voltage> cutOut = book.stated("inverter.cut-out", inverter.cutOut());
        Loss loss = loss(losses, idle, best, full, continuous, book);
        Figure<Power> fullInput = load(
                "inverter.full-input",
                losses.inputFor(continuous.value()),
                continuous,
                lossInputs(idle, loss, continuous),
                book);
        Figure<Power> shortTime = shortTime(inverter, continuous, book);
        return new InverterFigures(
                continuous,
                shortTime,
                hot("inverter.continuous-hot", continuous, inverter, book),
                hot("inverter.short-time-hot", shortTime, inverter, book),
                idle,
                best,
                full,
                book.stated("inverter.alarm", inverter.alarm()),
                cutOut,
                stated("inverter.cut-out-at-once", inverter.cutOutAtOnce(), book),
                stated("inverter.alarm-delay", inverter.alarmDelay(), book),
                stated("inverter.cut-out-delay", inverter.cutOutDelay(), book),
                stated("inverter.restart", inverter.restart(), book).orElse(null),
                stated("inverter.restart-delay", inverter.restartDelay(), book),
                fullInput,
                current("inverter.nominal-current", fullInput, bank.nominal(), book),
                current("inverter.worst-current", fullInput, cutOut, book),
                loss,
                reached(losses, idle, loss, continuous, fullInput, book),
                losses);
    }

    /** Idle and square part are equal there, unless that lies beyond the full output. */
    private static Figure<Ratio> reached(
            InverterLosses losses,
            Figure<Power> idle,
            Loss loss,
            Figure<Power> continuous,
            Figure<Power> fullInput,
            FigureBook book) {
        boolean within = idle.value().watts()
                <= loss.withSquare().value().fraction() * continuous.value().watts();
        List<Input> inputs = within
                ? lossInputs(idle, loss, continuous)
                : List.of(Input.of("a", continuous), Input.of("b", fullInput));
        return book.enter(
                "inverter.reached-efficiency",
                losses.bestEfficiency(),
                Rounding.DOWN,
                within ? Formula.BEST_REACHED : Formula.SHARE,
                inputs);
    }

    private static Loss loss(
            InverterLosses losses,
            Figure<Power> idle,
            Figure<Ratio> best,
            Figure<Ratio> full,
            Figure<Power> continuous,
            FigureBook book) {
        boolean inProportion = losses.proportional() > 0;
        Figure<Ratio> withSquare = book.enter(
                "inverter.loss-with-square",
                new Ratio(losses.quadratic() * continuous.value().watts()),
                Rounding.UP,
                inProportion ? Formula.LOSS_WITH_SQUARE : Formula.LOSS_ALL_SQUARE,
                Input.of("P₀", idle),
                Input.of("P_n", continuous),
                Input.of("η", full),
                Input.of("η_best", best));
        return new Loss(
                book.enter(
                        "inverter.loss-in-proportion",
                        new Ratio(losses.proportional()),
                        Rounding.UP,
                        inProportion ? Formula.LOSS_IN_PROPORTION : Formula.LOSS_NOT_IN_PROPORTION,
                        Input.of("η_best", best),
                        Input.of("P₀", idle),
                        Input.of("P_n", continuous),
                        Input.of("c", withSquare)),
                withSquare);
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

    private static Optional<Figure<Power>> hot(String key, Figure<Power> rated, Inverter inverter, FigureBook book) {
        Given<Temperature> locker = inverter.locker();
        Temperature above = Given.maybe(inverter.derateAbove()).orElse(Practice.DERATE_ABOVE);
        if (locker == null || locker.value() == null || locker.value().compareTo(above) <= 0) {
            return Optional.empty();
        }
        Ratio perKelvin = Given.maybe(inverter.deratePerKelvin()).orElse(Practice.DERATE_PER_KELVIN);
        double left = 1 - perKelvin.fraction() * locker.value().kelvinAbove(above);
        return Optional.of(book.enter(
                key,
                rated.value().times(Math.max(0, left)),
                Rounding.DOWN,
                Formula.DERATED,
                Input.of("P", rated),
                Input.of("T", locker),
                Input.ofOr("T₀", inverter.derateAbove(), above, Reason.DERATING),
                Input.ofOr("a", inverter.deratePerKelvin(), perKelvin, Reason.DERATING)
                        .per("K")));
    }

    private static <Q extends Quantity> Optional<Figure<Q>> stated(
            String key, @Nullable Given<Q> given, FigureBook book) {
        return Optional.ofNullable(given).filter(it -> it.value() != null).map(it -> book.stated(key, it));
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
