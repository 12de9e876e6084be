package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Rounding;

/**
 * What can run on shore power at the weakest supply that the owner expects.
 *
 * @param available current that the house may take: the least of the supply, the input limit and what the changeover carries
 * @param charging what the chargers take of it while they charge hard; 0 where they give way
 * @param besideCharging what they leave of it; empty unless they take something and there are too many appliances for pairs
 * @param appliances each appliance, in the job's order
 * @param pairs every two of them; none of too many
 */
public record AtShoreFigures(
        Figure<Current> available,
        Current charging,
        Optional<Figure<Current>> besideCharging,
        List<Alone> appliances,
        List<Pair> pairs) {

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
    public record Alone(ApplianceFigures appliance, Figure<Current> current, Fit fit) {}

    /** Two appliances at once. */
    public record Pair(Alone first, Alone second, Fit fit) {}

    /** Whether something has to be left off, or charging to wait: one appliance, or the two that ask for most. */
    public boolean isTight() {
        Current most = appliances.stream()
                .map(it -> it.current().value())
                .sorted(Comparator.reverseOrder())
                .limit(2)
                .reduce(Current::plus)
                .orElseThrow();
        return fit(most, charging, available.value()) != Fit.ALWAYS;
    }

    /** Whether there are too many appliances to go through every two of them. */
    public boolean isSummedUp() {
        return appliances.size() > TogetherFigures.MOST_APPLIANCES;
    }

    /** Empty where the figures of returning shore power are, and without appliances. */
    static Optional<AtShoreFigures> of(
            Job job, Optional<ReturnFigures> shore, List<ApplianceFigures> appliances, FigureBook book) {
        return shore.filter(it -> !appliances.isEmpty()).map(it -> of(job, it, appliances, book));
    }

    private static AtShoreFigures of(Job job, ReturnFigures shore, List<ApplianceFigures> appliances, FigureBook book) {
        Figure<Current> available = available(job, shore, book);
        Current charging = shore.limited() ? new Current(0) : shore.charger().value();
        List<Alone> alone = new ArrayList<>();
        for (ApplianceFigures appliance : appliances) {
            Figure<Current> current = book.enter(
                    appliance.key() + ".shore-current",
                    appliance.power().value().at(shore.voltage().value()),
                    Rounding.UP,
                    Formula.CURRENT,
                    Input.of("P", appliance.power()),
                    Input.of("U", shore.voltage()));
            alone.add(new Alone(appliance, current, fit(current.value(), charging, available.value())));
        }
        return new AtShoreFigures(
                available,
                charging,
                charging.amperes() > 0 && alone.size() > TogetherFigures.MOST_APPLIANCES
                        ? Optional.of(besideCharging(available, shore.charger(), book))
                        : Optional.empty(),
                alone,
                pairs(alone, charging, available.value()));
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

    private static List<Pair> pairs(List<Alone> alone, Current charging, Current available) {
        if (alone.size() > TogetherFigures.MOST_APPLIANCES) {
            return List.of();
        }
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < alone.size(); i++) {
            for (int j = i + 1; j < alone.size(); j++) {
                Current sum = alone.get(i)
                        .current()
                        .value()
                        .plus(alone.get(j).current().value());
                pairs.add(new Pair(alone.get(i), alone.get(j), fit(sum, charging, available)));
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

    private static Fit fit(Current asked, Current charging, Current available) {
        if (asked.plus(charging).compareTo(available) <= 0) {
            return Fit.ALWAYS;
        }
        return asked.compareTo(available) <= 0 ? Fit.WITHOUT_CHARGING : Fit.NEVER;
    }
}
