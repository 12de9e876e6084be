package org.quaybook.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.DcRun;
import org.quaybook.calc.FuseRange;
import org.quaybook.calc.ShortCircuit;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.Bank;
import org.quaybook.job.Charging;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseFamily;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.quantity.Conductor;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Resistance;
import org.quaybook.quantity.Rounding;
import org.quaybook.quantity.Temperature;
import org.quaybook.quantity.Voltage;
import org.quaybook.reference.Found;
import org.quaybook.reference.FuseFamilyRow;

/** Works out the figures of one fuse. */
final class FuseReckoning {

    /** Families in the order they are proposed: the most able to interrupt first, knife blades where nothing smaller does. */
    private static final List<FuseFamily> PREFERENCE =
            List.of(FuseFamily.CLASS_T, FuseFamily.MRBF, FuseFamily.ANL, FuseFamily.MEGA, FuseFamily.NH_GG);

    private static final Temperature COLD = new Temperature(20);

    private static final Comparator<RunFigures> BY_COPPER =
            Comparator.comparing(run -> run.rating().conductor().copper());

    private final @Nullable Fuse fuse;
    private final FuseRole role;
    private final SharedWay way;
    private final Set<String> guarded;
    private final String key;
    private final Bank fitted;
    private final BankFigures bank;
    private final FaultFigures fault;
    private final InverterFigures inverter;
    private final SupplyFigures supply;
    private final Tables tables;
    private final FigureBook book;

    FuseReckoning(
            @Nullable Fuse fuse,
            SharedWay way,
            Set<String> guarded,
            Bank fitted,
            BankFigures bank,
            FaultFigures fault,
            InverterFigures inverter,
            SupplyFigures supply,
            Tables tables,
            FigureBook book) {
        this.fuse = fuse;
        this.role = FuseFigures.roleOf(fuse);
        this.way = way;
        this.guarded = guarded;
        this.key = "fuse." + id();
        this.fitted = fitted;
        this.bank = bank;
        this.fault = fault;
        this.inverter = inverter;
        this.supply = supply;
        this.tables = tables;
        this.book = book;
    }

    FuseFigures figures() {
        Figure<Current> load = load();
        Figure<Current> conductor = weakestConductor();
        var share = tables.rules().fuseLoad();
        var over = tables.rules().fuseOverAmpacity(bank.system().value());
        FuseRange range = FuseRange.of(
                load.value(),
                share.value().fraction(),
                conductor.value(),
                over.value().fraction());
        Figure<Current> least = book.enter(
                key + ".least",
                range.least(),
                Rounding.UP,
                Formula.FUSE_LEAST,
                Input.of("I_load", load),
                Input.of("f", share));
        Figure<Current> most = book.enter(
                key + ".most",
                range.most(),
                Rounding.DOWN,
                Formula.FUSE_MOST,
                Input.of("I_cable", conductor),
                Input.of("q", over));
        Figure<Current> mustInterrupt = mustInterrupt();
        Optional<FuseFamily> fittedFamily = Optional.ofNullable(fuse).flatMap(f -> Given.maybe(f.family()));
        Optional<FuseFamily> family = fittedFamily.or(() -> propose(range, mustInterrupt.value()));
        Optional<Current> proposal = family.flatMap(f -> range.choose(row(f).ratings()));
        Optional<Given<Current>> fittedRating =
                Optional.ofNullable(fuse).map(Fuse::rating).filter(given -> given.value() != null);
        Optional<Figure<Current>> rating = fittedRating
                .map(given -> book.stated(key + ".rating", given))
                .or(() -> proposal.map(proposed -> book.enter(
                        key + ".rating", proposed, Rounding.NEAREST, Formula.FUSE_CHOSEN, Input.of("I", least))));
        Optional<Figure<Voltage>> usualVoltage = family.flatMap(this::usualVoltage);
        Optional<FuseFamily> otherFamily =
                proposal.isPresent() ? Optional.empty() : propose(range, mustInterrupt.value());
        return new FuseFigures(
                fuse,
                role,
                load,
                least,
                most,
                mustInterrupt,
                family,
                fittedFamily.isPresent(),
                rating,
                fittedRating.isPresent(),
                interrupts(family, usualVoltage.orElse(fault.highestVoltage())),
                usualVoltage,
                rating.map(it -> share("loading", load, it, Rounding.UP)),
                rating.map(it -> share("margin", most, it, Rounding.DOWN)),
                mostDistance(),
                proposal,
                otherFamily.flatMap(f -> range.choose(row(f).ratings()).map(it -> new FuseFigures.Other(f, it))),
                PREFERENCE.stream().anyMatch(f -> canInterrupt(f, mustInterrupt.value())));
    }

    private Figure<Ratio> share(String name, Figure<Current> a, Figure<Current> b, Rounding rounding) {
        return book.enter(
                key + "." + name,
                new Ratio(a.value().ratioTo(b.value())),
                rounding,
                Formula.SHARE,
                Input.of("a", a),
                Input.of("b", b));
    }

    private Figure<Current> load() {
        return switch (role) {
            case STRING -> stringLoad();
            case MAIN ->
                way.carried(key, passed(), inverter.worstCurrent(), bank, book).carried();
            case BRANCH -> branchLoad();
        };
    }

    /** What it feeds, or what charges the bank through it where that is more; of a charger's fuse nobody need write a load. */
    private Figure<Current> branchLoad() {
        Optional<Figure<Current>> charged = SharedWay.charged(key + ".charged", way.chargers(fuse()), bank, book);
        if (charged.isPresent() && Given.maybe(fuse().load()).isEmpty()) {
            return charged.get();
        }
        Figure<Current> drawn = book.stated(key + ".load", stated("load", fuse().load()));
        return charged.map(given -> book.enter(
                        key + ".carried",
                        given.value().compareTo(drawn.value()) > 0 ? given.value() : drawn.value(),
                        Rounding.UP,
                        Formula.LARGER,
                        Input.of("a", drawn),
                        Input.of("b", given)))
                .orElse(drawn);
    }

    private String id() {
        return fuse == null ? FuseFigures.MISSING : fuse.id();
    }

    /** What passes a cable passes the fuse in it, whether the job names both or one. */
    private Set<String> passed() {
        return fuse == null
                ? Set.of()
                : Stream.concat(Stream.of(fuse.id()), fuse.protects().stream()).collect(Collectors.toUnmodifiableSet());
    }

    private Figure<Current> stringLoad() {
        Figure<Current> worst = inverter.worstCurrent();
        List<Fuse> branches = way.branches();
        List<Input> inputs = new ArrayList<>(List.of(Input.of("I_load", worst)));
        branches.stream()
                .flatMap(branch -> Stream.ofNullable(branch.load()))
                .filter(load -> load.value() != null)
                .forEach(load -> inputs.add(Input.of("I_b", load)));
        inputs.add(Input.of("share", bank.worstShare()));
        return book.enter(
                key + ".load",
                worst.value()
                        .plus(SharedWay.drawn(branches))
                        .times(bank.worstShare().value().fraction()),
                Rounding.UP,
                Formula.STRING_LOAD,
                inputs);
    }

    /**
     * The conductor that the fuse must protect. Of its cables, and for a main fuse of those that no fuse names, the one
     * that bears least: the return carries the same current as the feed, so a thinner one counts though no fuse sits in
     * it. For a string or a branch its own conductor.
     */
    private Figure<Current> weakestConductor() {
        if (role != FuseRole.MAIN) {
            return runs().min(Comparator.comparing(RunFigures::allowed, Comparator.comparing(Figure::value)))
                    .map(RunFigures::allowed)
                    .orElseGet(this::ownConductor);
        }
        List<String> ids = fuse == null ? List.of() : fuse.protects();
        return supply.runs().stream()
                .filter(run -> ids.contains(run.cable().id())
                        || !guarded.contains(run.cable().id()))
                .map(this::leftToFuse)
                .min(Comparator.comparing(Figure::value))
                .orElseGet(() -> supply.runs().get(0).allowed());
    }

    /** A charger that joins between the fuse and a run feeds an overload there besides what the fuse lets through. */
    private Figure<Current> leftToFuse(RunFigures run) {
        List<Charging> through = way.chargingThrough(Set.of(run.cable().id()));
        List<Charging> between = way.chargingThrough(passed()).stream()
                .filter(it -> !through.contains(it))
                .toList();
        String pair = key + "-" + run.cable().id();
        return SharedWay.charged(pair + ".charged-between", between, bank, book)
                .map(charged -> book.enter(
                        pair + ".left",
                        new Current(Math.max(
                                0,
                                run.allowed().value().amperes()
                                        - charged.value().amperes())),
                        Rounding.DOWN,
                        Formula.BEHIND_JOINT,
                        Input.of("I", run.allowed()),
                        Input.of("I_c", charged)))
                .orElse(run.allowed());
    }

    private Stream<RunFigures> runs() {
        return fuse == null
                ? Stream.empty()
                : supply.runs().stream()
                        .filter(run -> fuse.protects().contains(run.cable().id()));
    }

    private Figure<Current> ownConductor() {
        Given<ConductorSize> size = stated("conductor", fuse().conductor());
        Found<Current> base = Unanswerable.lookedUpFor(
                size.place(), () -> tables.rules().ampacity().base(BankFigures.seen(size), Practice.PVC));
        return book.enter(
                key + ".conductor-allowed",
                base.value(),
                Rounding.DOWN,
                Formula.FROM_TABLE,
                Input.of("S", size),
                Input.usual("T₁", Practice.PVC, Reason.PVC),
                Input.of("I₁", base));
    }

    private Fuse fuse() {
        return Optional.ofNullable(fuse).orElseThrow();
    }

    /** What a string or branch fuse cannot be judged without. */
    private <T> Given<T> stated(String name, @Nullable Given<T> given) {
        if (given == null || given.value() == null) {
            throw new Unanswerable(
                    fuse().place(), FiguresMessage.FUSE_OPEN, FiguresMessage.FUSE_OPEN_HINT, fuse().id(), name);
        }
        return given;
    }

    private Figure<Current> mustInterrupt() {
        if (role == FuseRole.STRING) {
            int strings = bank.sharing().shares().size();
            return book.enter(
                    key + ".must-interrupt",
                    bank.shortCircuit().value().times(Math.max(1, strings - 1) / (double) strings),
                    Rounding.UP,
                    Formula.STRING_FAULT,
                    Input.of("I_k", bank.shortCircuit()),
                    Input.usual("m", strings, Reason.STRINGS_OF_JOB));
        }
        Optional<Given<Length>> distance =
                Optional.ofNullable(fuse).map(Fuse::distance).filter(given -> given.value() != null);
        RunFigures feed = feed();
        Conductor conductor = feed.rating().conductor();
        Found<Resistance> perMetre = tables.conductors().perMetreAt20(conductor.size(), false);
        Resistance cable = DcRun.resistance(
                perMetre.value(), conductor, distance.map(BankFigures::seen).orElse(new Length(0)), COLD);
        return book.enter(
                key + ".must-interrupt",
                ShortCircuit.prospective(
                        bank.restFull().value(), fault.resistance().value().plus(cable)),
                Rounding.UP,
                Formula.MUST_INTERRUPT,
                Input.of("E", bank.restFull()),
                Input.of("R", fault.resistance()),
                Input.of("r", perMetre).per("m"),
                feed.conductor(),
                distance.map(given -> Input.of("L", given))
                        .orElseGet(() -> Input.usual("L", new Length(0), Reason.AT_THE_TERMINAL)));
    }

    /** Between battery and fuse: of its cables, for a branch of the feed, the one that resists least. */
    private RunFigures feed() {
        return runs().max(BY_COPPER)
                .or(() -> supply.runs().stream().max(BY_COPPER))
                .orElseThrow();
    }

    private FuseFamilyRow row(FuseFamily family) {
        return tables.fuses().of(Ids.of(family));
    }

    private Optional<FuseFamily> propose(FuseRange range, Current mustInterrupt) {
        return PREFERENCE.stream()
                .filter(family -> canInterrupt(family, mustInterrupt)
                        && range.choose(row(family).ratings()).isPresent())
                .findFirst();
    }

    private boolean canInterrupt(FuseFamily family, Current current) {
        return row(family)
                .interruptingAt(fault.highestVoltage().value())
                .map(found -> found.value().compareTo(current) >= 0)
                .orElse(false);
    }

    private Optional<Figure<Voltage>> usualVoltage(FuseFamily family) {
        if (stated().isPresent() || bears(family, fault.highestVoltage())) {
            return Optional.empty();
        }
        return FaultFigures.inUsualCharging(key + ".usual-voltage", fitted, bank, book)
                .filter(it -> bears(family, it));
    }

    private boolean bears(FuseFamily family, Figure<Voltage> voltage) {
        return row(family).interruptingAt(voltage.value()).isPresent();
    }

    private Optional<Given<Current>> stated() {
        return Optional.ofNullable(fuse).map(Fuse::interrupting).filter(given -> given.value() != null);
    }

    private Optional<Figure<Current>> interrupts(Optional<FuseFamily> family, Figure<Voltage> voltage) {
        if (stated().isPresent()) {
            return Optional.of(book.stated(key + ".interrupts", stated().get()));
        }
        return family.flatMap(f -> row(f).interruptingAt(voltage.value()))
                .map(found -> book.enter(
                        key + ".interrupts",
                        found.value(),
                        Rounding.DOWN,
                        Formula.INTERRUPTING,
                        Input.of("U", voltage),
                        Input.of("I", found)));
    }

    private Optional<Figure<Length>> mostDistance() {
        boolean sheathed = runs().anyMatch(run -> Given.isYes(run.cable().sheathed()));
        return tables.rules()
                .unfused()
                .longest(sheathed, role != FuseRole.BRANCH)
                .map(found -> book.enter(
                        key + ".most-distance",
                        found.value(),
                        Rounding.DOWN,
                        Formula.FROM_TABLE,
                        Input.of("L", found)));
    }
}
