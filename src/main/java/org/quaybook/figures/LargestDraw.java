package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.calc.Beside;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Voltage;

/**
 * A branch, such as a windlass, that takes its largest current, and what becomes of the inverter meanwhile. The inverter feeds
 * what stays on, all of it at once; the other branches draw their average, and nothing charges.
 *
 * @param key begins the names of its figures
 * @param fuse the branch
 * @param current the largest lasting current
 * @param alarmBelow state of charge below which the alarm sounds; empty if it does even when the bank is full
 * @param cutOutBelow state of charge below which the inverter cuts out; empty if it does even when the bank is full
 * @param mostQuiet what the branch may draw at the reserve so that the alarm stays quiet; 0 A if it does not even then
 * @param mostHolding what it may draw there so that the inverter does not cut out
 */
public record LargestDraw(
        String key,
        Fuse fuse,
        Given<Current> current,
        Optional<Figure<Ratio>> alarmBelow,
        Optional<Figure<Ratio>> cutOutBelow,
        Figure<Current> mostQuiet,
        Figure<Current> mostHolding) {

    /** Whether the alarm sounds above a state of charge; what holds at none does. */
    public boolean alarmsAbove(Ratio reserve) {
        return isAbove(alarmBelow, reserve);
    }

    /** Whether the inverter cuts out above a state of charge. */
    public boolean cutsOutAbove(Ratio reserve) {
        return isAbove(cutOutBelow, reserve);
    }

    private static boolean isAbove(Optional<Figure<Ratio>> below, Ratio reserve) {
        return below.map(it -> it.value().compareTo(reserve) > 0).orElse(true);
    }

    /** Each branch that draws more at times than it does on average. */
    static List<LargestDraw> of(RunSystem system, SharedWay way, List<ApplianceFigures> appliances) {
        List<Fuse> branches =
                way.branches().stream().filter(LargestDraw::drawsMoreAtTimes).toList();
        if (branches.isEmpty()) {
            return List.of();
        }
        Figure<Power> load = load(system, AbsenceFigures.leftOn(appliances));
        return branches.stream()
                .map(branch -> new Reckoning(system, way, branch, load).figures())
                .toList();
    }

    private static boolean drawsMoreAtTimes(Fuse branch) {
        double average = SteadyDraw.average(branch)
                .map(it -> BankFigures.seen(it).amperes())
                .orElse(0.0);
        return Given.maybe(branch.load())
                .filter(load -> load.amperes() > average)
                .isPresent();
    }

    /** All of it at once, as far as the inverter gives that. */
    private static Figure<Power> load(RunSystem system, List<ApplianceFigures> leftOn) {
        InverterFigures inverter = system.inverter();
        Power together = leftOn.stream().map(it -> it.power().value()).reduce(new Power(0), Power::plus);
        boolean gives = together.compareTo(inverter.output().value()) <= 0;
        List<Input> inputs = new ArrayList<>(
                gives
                        ? leftOn.stream().map(it -> Input.of("P", it.power())).toList()
                        : List.of(Input.of("P", inverter.output())));
        inputs.addAll(inverter.lossInputs());
        return system.book()
                .enter(
                        "absence.most-load",
                        AbsenceFigures.demand(leftOn, inverter).working(),
                        Rounding.UP,
                        Formula.INVERTER_LOAD_OF_ALL,
                        inputs);
    }

    private record Reckoning(RunSystem system, SharedWay way, Fuse branch, Figure<Power> load) {

        LargestDraw figures() {
            Given<Current> current = Objects.requireNonNull(branch.load());
            InverterFigures inverter = system.inverter();
            return new LargestDraw(
                    key(),
                    branch,
                    current,
                    below(".alarm-below", current, inverter.alarm()),
                    below(".cut-out-below", current, inverter.cutOut()),
                    most(".most-quiet", inverter.alarm()),
                    most(".most-holding", inverter.cutOut()));
        }

        private String key() {
            return "branch." + branch.id();
        }

        private Resistance shared() {
            return system.supply().of(way.passes(branch));
        }

        private List<Fuse> others() {
            return system.draw().counted().stream()
                    .filter(it -> !it.equals(branch) && !way.passes(it).contains(branch.id()))
                    .toList();
        }

        private Beside beside() {
            return SteadyDraw.beside(system.draw().standing(), others(), way, system.supply());
        }

        private Optional<Figure<Ratio>> below(String name, Given<Current> current, Figure<Voltage> limit) {
            Beside all = beside().plus(new Beside(BankFigures.seen(current), shared()));
            return system.now().lowestHolding(load.value(), limit.value(), all).map(soc -> {
                List<Input> inputs = new ArrayList<>(List.of(Input.of("I_b", current)));
                inputs.addAll(inputs(limit, soc));
                return system.book().enter(key() + name, soc, Rounding.UP, Formula.LOWEST_CHARGE_BESIDE, inputs);
            });
        }

        private Figure<Current> most(String name, Figure<Voltage> limit) {
            Figure<Ratio> reserve = system.bank().reserve();
            List<Input> inputs =
                    new ArrayList<>(List.of(Input.of("E", system.bank().restAtReserve())));
            inputs.addAll(inputs(limit, reserve.value()));
            return system.book()
                    .enter(
                            key() + name,
                            system.now().mostBeside(reserve.value(), load.value(), limit.value(), beside(), shared()),
                            Rounding.DOWN,
                            Formula.MOST_BESIDE,
                            inputs);
        }

        private List<Input> inputs(Figure<Voltage> limit, Ratio stateOfCharge) {
            List<Input> inputs = new ArrayList<>(List.of(
                    Input.of("P₁", load),
                    Input.of("R_i", system.bank().resistanceAt(stateOfCharge)),
                    Input.of("R", system.supply().resistance()),
                    Input.of("limit", limit),
                    shared("R_s", shared())));
            system.draw()
                    .standing()
                    .ifPresent(it ->
                            inputs.addAll(List.of(Input.of("I_on", it), shared("R_on", Beside.NOTHING.shared()))));
            others().forEach(it -> SteadyDraw.average(it)
                    .ifPresent(average -> inputs.addAll(List.of(
                            Input.of("I_on", average),
                            shared("R_on", system.supply().of(way.passes(it)))))));
            return inputs;
        }

        private static Input shared(String symbol, Resistance resistance) {
            return Input.usual(symbol, resistance, resistance.ohms() > 0 ? Reason.SHARED_RUN : Reason.NO_SHARED_RUN);
        }
    }
}
