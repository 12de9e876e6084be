package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.Given;
import org.quaybook.job.Source;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Voltage;

/**
 * The sources that can charge a bank at once. At the berth the engine rests, under way the shore lead is off,
 * but a generator may run.
 */
public final class ChargingAtOnce {

    private final List<Charging> sources;
    private final Voltage nominal;

    /**
     * @param sources all that charge
     * @param nominal of the bank
     */
    public ChargingAtOnce(List<Charging> sources, Voltage nominal) {
        this.sources = List.copyOf(sources);
        this.nominal = nominal;
    }

    /** The most that they give together: the larger of both sums. */
    public Current most() {
        return sum(hardest());
    }

    /** The most that one of them and those that can run with it give together. */
    Current mostWith(Charging source) {
        return Stream.of(atBerth(), underWay())
                .filter(running -> running.contains(source))
                .map(this::sum)
                .max(Comparator.naturalOrder())
                .orElseGet(() -> given(source, nominal));
    }

    private List<Charging> atBerth() {
        return those(source -> source.kind() != ChargeKind.ALTERNATOR);
    }

    private List<Charging> underWay() {
        return those(source -> !MainsCharger.fedBy(source, Source.SHORE));
    }

    /** Those that give the most together. */
    List<Charging> hardest() {
        List<Charging> atBerth = atBerth();
        List<Charging> underWay = underWay();
        return sum(atBerth).compareTo(sum(underWay)) > 0 ? atBerth : underWay;
    }

    /**
     * What to leave off so that the rest gives no more than a limit: the largest first, an alternator last because its
     * engine is needed for other things.
     */
    public List<Charging> tooMuchFor(Current limit) {
        List<Charging> left = new ArrayList<>(sources);
        List<Charging> off = new ArrayList<>();
        Comparator<Charging> engineLast = Comparator.comparing(source -> source.kind() == ChargeKind.ALTERNATOR);
        for (Charging source : sources.stream()
                .sorted(engineLast.thenComparing(it -> given(it, nominal), Comparator.reverseOrder()))
                .toList()) {
            if (new ChargingAtOnce(left, nominal).most().compareTo(limit) > 0
                    && given(source, nominal).amperes() > 0) {
                left.remove(source);
                off.add(source);
            }
        }
        return List.copyOf(off);
    }

    private List<Charging> those(Predicate<Charging> run) {
        return sources.stream().filter(run).toList();
    }

    private Current sum(List<Charging> running) {
        return running.stream().map(source -> given(source, nominal)).reduce(new Current(0), Current::plus);
    }

    /**
     * The most that a source gives: what is written, else of an alternator its rating and of panels their peak power at the
     * bank's nominal voltage; 0 if none of these is written.
     */
    public static Current given(Charging source, Voltage nominal) {
        return current(source)
                .map(BankFigures::seen)
                .or(() -> Given.maybe(source.peak()).map(peak -> peak.at(nominal)))
                .orElse(new Current(0));
    }

    /** The current that a source gives as the job writes it: its own, else, or where nothing limits it, the rating of an alternator. */
    static Optional<Given<Current>> current(Charging source) {
        Optional<Given<Current>> rated = written(source.rated()).filter(it -> source.kind() == ChargeKind.ALTERNATOR);
        Optional<Given<Current>> gives = written(source.current());
        boolean unlimited = Given.isNo(source.currentLimited())
                && rated.isPresent()
                && gives.filter(it -> BankFigures.seen(it).compareTo(BankFigures.seen(rated.get())) < 0)
                        .isPresent();
        return unlimited ? rated : gives.or(() -> rated);
    }

    /** The rating of an alternator that is written to give less, where nobody has written whether anything keeps it to that. */
    public static Optional<Current> perhaps(Charging source) {
        return Given.maybe(source.rated())
                .filter(rated -> source.kind() == ChargeKind.ALTERNATOR
                        && Given.maybe(source.currentLimited()).isEmpty()
                        && Given.maybe(source.current())
                                .filter(gives -> gives.compareTo(rated) < 0)
                                .isPresent());
    }

    private static Optional<Given<Current>> written(@Nullable Given<Current> given) {
        return Optional.ofNullable(given).filter(it -> it.value() != null);
    }
}
