package org.quaybook.figures;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.quaybook.job.Charging;
import org.quaybook.job.Fuse;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Power;
import org.quaybook.quantity.Rounding;

/**
 * Which branches and chargers share fuses and cables with the inverter, as far as the job says.
 *
 * @param fuses all of the job
 * @param charging all that charges the bank
 */
public record SharedWay(List<Fuse> fuses, List<Charging> charging) {

    /** What a switch of the whole bank names. */
    private static final String BANK = "bank";

    public SharedWay {
        fuses = List.copyOf(fuses);
        charging = List.copyOf(charging);
    }

    /** The branches that draw of the bank: none of a charger's, and none that another branch feeds and counts. */
    public List<Fuse> branches() {
        Set<String> drawing = fuses.stream().filter(this::draws).map(Fuse::id).collect(Collectors.toUnmodifiableSet());
        return fuses.stream()
                .filter(this::draws)
                .filter(fuse -> fuse.through().stream().noneMatch(drawing::contains))
                .toList();
    }

    /** Whether a fuse feeds something besides the inverter, and not a charger the bank. */
    private boolean draws(Fuse fuse) {
        return fuse.isBranch() && chargers(fuse).isEmpty();
    }

    /** The chargers in whose conductor a fuse sits; none for a fuse of a load or of the inverter's feed. */
    public List<Charging> chargers(Fuse fuse) {
        return charging.stream().filter(it -> it.isFusedBy(fuse)).toList();
    }

    /** The branches with an average, but none that is behind another with one: that counts it. */
    List<Fuse> averaged() {
        List<Fuse> averaged = fuses.stream()
                .filter(this::draws)
                .filter(fuse -> SteadyDraw.average(fuse).isPresent())
                .toList();
        Set<String> ids = averaged.stream().map(Fuse::id).collect(Collectors.toUnmodifiableSet());
        return averaged.stream()
                .filter(fuse -> fuse.through().stream().noneMatch(ids::contains))
                .toList();
    }

    /** The branches that pass any of some fuses or cables of the inverter. */
    private List<Fuse> branchesThrough(Set<String> ids) {
        return branches().stream()
                .filter(fuse -> isThrough(fuse.through(), ids))
                .toList();
    }

    private static boolean isAtBank(Fuse branch) {
        return !branch.through().isEmpty() && Fuse.parts(branch.through()).isEmpty();
    }

    private static boolean isThrough(List<String> way, Set<String> ids) {
        return Fuse.parts(way).stream().anyMatch(ids::contains);
    }

    /**
     * The branches whose current a switch carries: those it names, those behind a fuse or cable that it names, and of a
     * switch of the bank all that are not known to be connected before it.
     */
    public List<Fuse> branchesThrough(Isolator isolator) {
        Set<String> ids = Set.copyOf(isolator.isolates());
        return branches().stream()
                .filter(fuse -> ids.contains(fuse.id())
                        || fuse.through().stream()
                                .filter(id -> !id.equals(BANK))
                                .anyMatch(ids::contains)
                        || (ids.contains(BANK) && !isAtBank(fuse)))
                .toList();
    }

    /** All that the current of a branch passes on its way from the bank and back, whether it names it or what it is behind does. */
    Set<String> passes(Fuse branch) {
        Set<String> passed = new TreeSet<>(Fuse.parts(branch.through()));
        Deque<String> asked = new ArrayDeque<>(passed);
        while (!asked.isEmpty()) {
            String id = asked.remove();
            fuses.stream()
                    .filter(fuse -> fuse.id().equals(id) && fuse.isBranch())
                    .flatMap(fuse -> Fuse.parts(fuse.through()).stream())
                    .filter(passed::add)
                    .forEach(asked::add);
        }
        return passed;
    }

    /** What charges the bank through any of some fuses or cables of the inverter. */
    List<Charging> chargingThrough(Set<String> ids) {
        return charging.stream().filter(it -> passes(it, ids)).toList();
    }

    /** Whether the current of a charger passes any of some fuses or cables. */
    public boolean passes(Charging source, Set<String> ids) {
        return isThrough(way(source), ids);
    }

    /** The branches and chargers of which nobody has written where they are connected. */
    public SharedWay unplaced() {
        List<Charging> unplaced =
                charging.stream().filter(it -> way(it).isEmpty()).toList();
        return new SharedWay(
                branches().stream().filter(fuse -> fuse.through().isEmpty()).toList(), unplaced);
    }

    /** As written for the charger itself, else for its fuse. */
    private List<String> way(Charging source) {
        if (!source.through().isEmpty()) {
            return source.through();
        }
        return fuses.stream()
                .filter(fuse -> fuse.id().equals(source.fuse()))
                .findFirst()
                .map(Fuse::through)
                .orElse(List.of());
    }

    /** The largest lasting currents of some branches together; 0 for one that has none written. */
    public static Current drawn(List<Fuse> branches) {
        return branches.stream()
                .flatMap(fuse -> loads(fuse).stream())
                .map(BankFigures::seen)
                .reduce(new Current(0), Current::plus);
    }

    private static Optional<Given<Current>> loads(Fuse fuse) {
        return Optional.ofNullable(fuse.load()).filter(load -> load.value() != null);
    }

    /**
     * What a fuse or cable of the inverter carries.
     *
     * @param drawn the inverter at its worst and every branch through it
     * @param carried that, or what charges through it where that is more
     */
    record Carried(Figure<Current> drawn, Figure<Current> carried) {}

    /**
     * What passes any of some fuses or cables; where none is shared, the inverter's own figure.
     *
     * @param ids of one cable, or of a fuse and the cables that it is in
     */
    Carried carried(String key, Set<String> ids, Figure<Current> inverter, BankFigures bank, FigureBook book) {
        return carried(key, branchesThrough(ids), chargingThrough(ids), inverter, bank, book);
    }

    /** The same of some branches and some that charge. */
    Carried carried(
            String key,
            List<Fuse> branches,
            List<Charging> charging,
            Figure<Current> inverter,
            BankFigures bank,
            FigureBook book) {
        Figure<Current> drawn = drawn(key, branches, inverter, book);
        return charged(key + ".charged", charging, bank, book)
                .map(charged -> new Carried(
                        drawn,
                        book.enter(
                                key + ".carried",
                                charged.value().compareTo(drawn.value()) > 0 ? charged.value() : drawn.value(),
                                Rounding.UP,
                                Formula.LARGER,
                                Input.of("a", drawn),
                                Input.of("b", charged))))
                .orElse(new Carried(drawn, drawn));
    }

    /** The inverter at its worst and some branches; its own figure where there are none. */
    static Figure<Current> drawn(String key, List<Fuse> branches, Figure<Current> inverter, FigureBook book) {
        if (branches.isEmpty()) {
            return inverter;
        }
        List<Input> inputs = new ArrayList<>(List.of(Input.of("I_load", inverter)));
        branches.forEach(branch -> loads(branch).ifPresent(load -> inputs.add(Input.of("I_b", load))));
        return book.enter(
                key + ".drawn", inverter.value().plus(drawn(branches)), Rounding.UP, Formula.SHARED_LOAD, inputs);
    }

    /** What some sources give at most at once; empty where they give nothing. */
    static Optional<Figure<Current>> charged(String key, List<Charging> sources, BankFigures bank, FigureBook book) {
        ChargingAtOnce atOnce = new ChargingAtOnce(sources, bank.nominal().value());
        if (atOnce.most().amperes() <= 0) {
            return Optional.empty();
        }
        List<Input> inputs =
                atOnce.hardest().stream().flatMap(it -> inputs(it, bank)).toList();
        return Optional.of(book.enter(key, atOnce.most(), Rounding.UP, Formula.CHARGED_AT_ONCE, inputs));
    }

    private static Stream<Input> inputs(Charging source, BankFigures bank) {
        Given<Power> peak = source.peak();
        return ChargingAtOnce.current(source)
                .map(current -> Stream.of(Input.of("I_c", current)))
                .orElseGet(() -> peak == null || peak.value() == null
                        ? Stream.empty()
                        : Stream.of(Input.of("P", peak), Input.of("U", bank.nominal())));
    }
}
