package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;

/**
 * What can run beside what, of so many appliances that nobody reads through every two of them. Says the same as
 * {@link TogetherFigures}: two of which each leaves as much as the other takes run together in any order; if only one leaves
 * too little, it must start first, and if that one starts again by itself, or both leave too little, they never do.
 *
 * @param most output that the inverter and a full bank can give
 * @param mostStarting the same for as long as a start lasts
 * @param appliances those that can run alone, in the job's order
 */
public record RoomFigures(Figure<Power> most, Figure<Power> mostStarting, List<Left> appliances) {

    private static final Comparator<Left> MOST_FIRST =
            Comparator.comparing((Left it) -> it.appliance().power().value()).reversed();

    public RoomFigures {
        appliances = List.copyOf(appliances);
    }

    /**
     * One appliance.
     *
     * @param left what another one may take while this one runs and while it starts; 0 if nothing may
     */
    public record Left(ApplianceFigures appliance, Figure<Power> left) {

        /** Whether another one may run already when this one starts. */
        public boolean admits(Left other) {
            return other.appliance().power().value().compareTo(left.value()) <= 0;
        }
    }

    /** Whether any two go together in any order: each with the one that takes most of the others. */
    public boolean isEnoughForAnyTwo() {
        List<Left> falling = appliances.stream().sorted(MOST_FIRST).toList();
        return falling.get(0).admits(falling.get(1))
                && falling.stream().skip(1).allMatch(it -> it.admits(falling.get(0)));
    }

    /**
     * Those of which no two ever run at once, the one that takes most first: each two next to each other take more than there
     * is, so any other two of them do all the more. Others may not go together either. Empty if the two largest can.
     */
    public List<Left> apart() {
        List<Left> falling = appliances.stream().sorted(MOST_FIRST).toList();
        int many = 1;
        while (many < falling.size() && takesTooMuch(falling.get(many - 1), falling.get(many))) {
            many++;
        }
        return many < 2 ? List.of() : falling.subList(0, many);
    }

    private boolean takesTooMuch(Left a, Left b) {
        return a.appliance().power().value().plus(b.appliance().power().value()).compareTo(most.value()) > 0;
    }

    /** Empty where every two are gone through. */
    static Optional<RoomFigures> of(RunSystem system, List<ApplianceFigures> appliances) {
        List<ApplianceFigures> able =
                appliances.stream().filter(ApplianceFigures::runs).toList();
        return able.size() <= TogetherFigures.MOST_APPLIANCES ? Optional.empty() : Optional.of(reckoned(system, able));
    }

    private static RoomFigures reckoned(RunSystem system, List<ApplianceFigures> able) {
        BankFigures bank = system.bank();
        InverterFigures inverter = system.inverter();
        FigureBook book = system.book();
        Power most = system.now().greatestHolding(Ratio.WHOLE, inverter.cutOut().value());
        Figure<Power> load = book.enter(
                "inverter.most-load",
                new Power(Math.max(0, most.watts() - system.standing().watts())),
                Rounding.DOWN,
                Formula.MOST_LOAD,
                system.withStanding(List.of(
                        Input.of("U", inverter.cutOut()),
                        bank.restTable().stream()
                                .filter(row -> row.stateOfCharge().equals(Ratio.WHOLE))
                                .findFirst()
                                .map(row -> Input.of("E", row.rest()))
                                .orElseThrow(),
                        Input.of("R", bank.resistance()),
                        Input.of("R", system.supply().resistance()))));
        Figure<Power> running = output("inverter.most-at-once", inverter.output(), load, inverter, book);
        Figure<Power> starting = output("inverter.most-while-starting", inverter.startOutput(), load, inverter, book);
        return new RoomFigures(
                running,
                starting,
                able.stream().map(it -> left(it, running, starting, book)).toList());
    }

    private static Figure<Power> output(
            String key, Figure<Power> rating, Figure<Power> load, InverterFigures inverter, FigureBook book) {
        Power carried = inverter.losses().outputFor(load.value());
        List<Input> inputs = new ArrayList<>(List.of(Input.of("P₂", rating), Input.of("P₁", load)));
        inputs.addAll(inverter.lossInputs());
        return book.enter(
                key,
                carried.compareTo(rating.value()) < 0 ? carried : rating.value(),
                Rounding.DOWN,
                Formula.MOST_OUTPUT,
                inputs);
    }

    private static Left left(ApplianceFigures it, Figure<Power> most, Figure<Power> mostStarting, FigureBook book) {
        double watts = Math.min(
                most.value().watts() - it.power().value().watts(),
                mostStarting.value().watts() - it.startPower().value().watts());
        return new Left(
                it,
                book.enter(
                        it.key() + ".left",
                        new Power(Math.max(0, watts)),
                        Rounding.DOWN,
                        Formula.LEFT_FOR_ANOTHER,
                        Input.of("P₂", most),
                        Input.of("P", it.power()),
                        Input.of("P₃", mostStarting),
                        Input.of("P₁", it.startPower())));
    }
}
