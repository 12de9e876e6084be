package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Rounding;

/**
 * What can run on shore power at the weakest supply that the owner expects.
 *
 * @param available current that may go through the inverter: the least of the supply, the input limit and what the changeover carries
 * @param whole current that all may take, what hangs past the inverter too
 * @param charging what the chargers take of it while they charge hard; 0 where they give way
 * @param besideCharging what they leave of it; empty unless they take something and there are too many appliances for pairs
 * @param appliances each appliance, in the job's order
 * @param pairs every two of them; none of too many
 * @param tight whether something has to be left off, or charging to wait: one appliance, or two at once
 */
public record AtShoreFigures(
        Figure<Current> available,
        Figure<Current> whole,
        Current charging,
        Optional<Figure<Current>> besideCharging,
        List<Alone> appliances,
        List<Pair> pairs,
        boolean tight) {

    public AtShoreFigures {
        appliances = List.copyOf(appliances);
        pairs = List.copyOf(pairs);
    }

    /** Whether something fits. */
    public enum Fit {
        /** Whatever the chargers do. */
        ALWAYS,
        /** Only while the chargers are off or nearly done. */
        WITHOUT_CHARGING,
        /** It asks for more than there is. */
        NEVER
    }

    /** One appliance. */
    public record Alone(MainsLoad appliance, Figure<Current> current, Fit fit) {}

    /** Two appliances at once. */
    public record Pair(Alone first, Alone second, Fit fit) {}

    /** Whether there are too many appliances to go through every two of them. */
    public boolean isSummedUp() {
        return appliances.size() > TogetherFigures.MOST_APPLIANCES;
    }

    /** Empty where the figures of returning shore power are, and without appliances. */
    static Optional<AtShoreFigures> of(
            Job job, Optional<ReturnFigures> shore, List<MainsLoad> appliances, FigureBook book) {
        return shore.filter(it -> !appliances.isEmpty()).map(it -> of(job, it, appliances, book));
    }

    private static AtShoreFigures of(Job job, ReturnFigures shore, List<MainsLoad> appliances, FigureBook book) {
        Figure<Current> available = available(job, shore, book);
        Taken taken = new Taken(shore, available.value());
        List<Alone> alone = new ArrayList<>();
        for (MainsLoad appliance : appliances) {
            Figure<Current> current = book.enter(
                    appliance.key() + ".shore-current",
                    appliance.power().value().at(shore.voltage().value()),
                    Rounding.UP,
                    Formula.CURRENT,
                    Input.of("P", appliance.power()),
                    Input.of("U", shore.voltage()));
            alone.add(new Alone(appliance, current, taken.of(List.of(new Asked(appliance, current)))));
        }
        List<Asked> asked = alone.stream()
                .map(it -> new Asked(it.appliance(), it.current()))
                .toList();
        boolean many = alone.size() > TogetherFigures.MOST_APPLIANCES;
        return new AtShoreFigures(
                available,
                shore.supply(),
                taken.charging(),
                taken.charging().amperes() > 0 && many
                        ? Optional.of(besideCharging(available, shore.charger(), book))
                        : Optional.empty(),
                alone,
                many ? List.of() : pairs(alone, taken),
                tight(asked, taken));
    }

    /** The two that ask for most, through the inverter or past it, are the worst two. */
    private static boolean tight(List<Asked> asked, Taken taken) {
        List<Asked> worst = Stream.of(true, false)
                .flatMap(past -> asked.stream()
                        .filter(it -> it.isPastInverter() == past)
                        .sorted(Comparator.comparing((Asked it) -> it.current().value())
                                .reversed())
                        .limit(2))
                .toList();
        return worst.stream()
                .anyMatch(first -> worst.stream()
                        .map(second -> first.equals(second) ? List.of(first) : List.of(first, second))
                        .anyMatch(both -> taken.of(both) != Fit.ALWAYS));
    }

    /** An appliance and what it takes. */
    private record Asked(MainsLoad appliance, Figure<Current> current) {

        boolean isPastInverter() {
            return appliance instanceof PastInverterFigures;
        }
    }

    /** What appliances on shore leave of the supply. */
    private record Taken(ReturnFigures shore, Current available) {

        /** What the chargers take beside loads of the inverter that fill its input; 0 where they give way. */
        Current charging() {
            return shore.limited() ? new Current(0) : shore.charger().value();
        }

        Fit of(List<Asked> asked) {
            Current through = sum(asked, false);
            Current past = sum(asked, true);
            if (through.plus(charging()).compareTo(available) <= 0
                    && (past.amperes() == 0 || isWithin(past.plus(whileCharging(through))))) {
                return Fit.ALWAYS;
            }
            return through.compareTo(available) <= 0 && isWithin(past.plus(through)) ? Fit.WITHOUT_CHARGING : Fit.NEVER;
        }

        private static Current sum(List<Asked> asked, boolean past) {
            return asked.stream()
                    .filter(it -> it.isPastInverter() == past)
                    .map(it -> it.current().value())
                    .reduce(new Current(0), Current::plus);
        }

        private boolean isWithin(Current all) {
            return all.compareTo(shore.supply().value()) <= 0;
        }

        /** The input limit knows nothing of what hangs past the inverter: up to it the chargers go on. */
        private Current whileCharging(Current through) {
            Current both = through.plus(shore.charger().value());
            return shore.limit()
                    .map(Figure::value)
                    .filter(limit -> limit.compareTo(both) < 0)
                    .map(limit -> limit.compareTo(through) < 0 ? through : limit)
                    .orElse(both);
        }
    }

    private static Figure<Current> besideCharging(Figure<Current> available, Figure<Current> charger, FigureBook book) {
        return book.enter(
                "return.beside-charging",
                new Current(Math.max(
                        0, available.value().amperes() - charger.value().amperes())),
                Rounding.DOWN,
                Formula.LEFT_BESIDE_CHARGING,
                Input.of("I₁", available),
                Input.of("I_charger", charger));
    }

    private static List<Pair> pairs(List<Alone> alone, Taken taken) {
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < alone.size(); i++) {
            for (int j = i + 1; j < alone.size(); j++) {
                Alone first = alone.get(i);
                Alone second = alone.get(j);
                pairs.add(new Pair(
                        first,
                        second,
                        taken.of(List.of(
                                new Asked(first.appliance(), first.current()),
                                new Asked(second.appliance(), second.current())))));
            }
        }
        return pairs;
    }

    private static Figure<Current> available(Job job, ReturnFigures shore, FigureBook book) {
        Given<Current> passThrough = job.inverter().passThrough();
        Optional<Current> carried = Given.maybe(passThrough);
        List<Current> bounds = new ArrayList<>(List.of(shore.supply().value()));
        List<Input> inputs = new ArrayList<>(List.of(Input.of("I", shore.supply())));
        shore.limit().ifPresent(limit -> {
            bounds.add(limit.value());
            inputs.add(Input.of("I", limit));
        });
        if (passThrough != null && carried.isPresent()) {
            bounds.add(carried.get());
            inputs.add(Input.of("I", passThrough));
        }
        return book.enter(
                "return.available",
                bounds.stream().min(Current::compareTo).orElseThrow(),
                Rounding.DOWN,
                Formula.LEAST,
                inputs);
    }
}
