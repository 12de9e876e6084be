package org.quaybook.figures;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.calc.FuseRange;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseFamily;
import org.quaybook.job.Given;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Rounding;
import org.quaybook.reference.FuseFamilyRow;

/**
 * A fuse on the DC path: what it must be, what is fitted, what is proposed.
 *
 * @param fuse the job's entry; null for a main fuse that the job lacks
 * @param least least rating that bears the load
 * @param most largest rating that protects the conductors
 * @param mustInterrupt current that it must be able to interrupt
 * @param family fitted or proposed family; empty if no family of the table would do
 * @param familyFitted whether the job states the family
 * @param rating fitted or proposed rating; empty if no standard rating lies in the range
 * @param ratingFitted whether the job states the rating
 * @param interrupts what the family interrupts at the bank's voltage; empty if it is not made for that voltage
 * @param proposal the least standard rating of the family inside the range, for the remedy
 */
public record FuseFigures(
        @Nullable Fuse fuse,
        Figure<Current> least,
        Figure<Current> most,
        Figure<Current> mustInterrupt,
        Optional<FuseFamily> family,
        boolean familyFitted,
        Optional<Figure<Current>> rating,
        boolean ratingFitted,
        Optional<Figure<Current>> interrupts,
        Optional<Current> proposal) {

    /** Families in the order they are proposed: the most able to interrupt first. */
    private static final List<FuseFamily> PREFERENCE =
            List.of(FuseFamily.CLASS_T, FuseFamily.NH_GG, FuseFamily.MRBF, FuseFamily.ANL, FuseFamily.MEGA);

    /** The fuses of the job, or the main fuse to propose when it has none. */
    static List<FuseFigures> of(
            List<Fuse> fuses,
            BankFigures bank,
            InverterFigures inverter,
            SupplyFigures supply,
            Tables tables,
            FigureBook book) {
        Stream<@Nullable Fuse> all = fuses.isEmpty() ? Stream.of((Fuse) null) : fuses.stream();
        Set<String> guarded =
                fuses.stream().flatMap(fuse -> fuse.protects().stream()).collect(Collectors.toUnmodifiableSet());
        return all.map(fuse -> new Builder(fuse, guarded, bank, inverter, supply, tables, book).build())
                .toList();
    }

    private static final class Builder {
        private final @Nullable Fuse fuse;
        private final Set<String> guarded;
        private final String key;
        private final BankFigures bank;
        private final InverterFigures inverter;
        private final SupplyFigures supply;
        private final Tables tables;
        private final FigureBook book;

        Builder(
                @Nullable Fuse fuse,
                Set<String> guarded,
                BankFigures bank,
                InverterFigures inverter,
                SupplyFigures supply,
                Tables tables,
                FigureBook book) {
            this.fuse = fuse;
            this.guarded = guarded;
            this.key = "fuse." + (fuse == null ? "main" : fuse.id());
            this.bank = bank;
            this.inverter = inverter;
            this.supply = supply;
            this.tables = tables;
            this.book = book;
        }

        FuseFigures build() {
            Figure<Current> conductor = weakestConductor();
            var load = tables.rules().fuseLoad();
            var over = tables.rules().fuseOverAmpacity(bank.system().value());
            FuseRange range = FuseRange.of(
                    inverter.worstCurrent().value(),
                    load.value().fraction(),
                    conductor.value(),
                    over.value().fraction());
            Figure<Current> least = book.enter(
                    key + ".least",
                    range.least(),
                    Rounding.UP,
                    Formula.FUSE_LEAST,
                    Input.of("I_load", inverter.worstCurrent()),
                    Input.of("f", load));
            Figure<Current> most = book.enter(
                    key + ".most",
                    range.most(),
                    Rounding.DOWN,
                    Formula.FUSE_MOST,
                    Input.of("I_cable", conductor),
                    Input.of("q", over));
            Optional<FuseFamily> fittedFamily = Optional.ofNullable(fuse).flatMap(f -> Given.maybe(f.family()));
            Optional<FuseFamily> family = fittedFamily.or(() -> propose(range));
            Optional<Current> proposal = family.flatMap(f -> range.choose(row(f).ratings()));
            Optional<Given<Current>> fittedRating =
                    Optional.ofNullable(fuse).map(Fuse::rating).filter(given -> given.value() != null);
            return new FuseFigures(
                    fuse,
                    least,
                    most,
                    book.enter(
                            key + ".must-interrupt",
                            bank.shortCircuit().value(),
                            Rounding.UP,
                            Formula.MUST_INTERRUPT,
                            Input.of("I_k", bank.shortCircuit())),
                    family,
                    fittedFamily.isPresent(),
                    fittedRating
                            .map(given -> book.stated(key + ".rating", given))
                            .or(() -> proposal.map(rating -> book.enter(
                                    key + ".rating",
                                    rating,
                                    Rounding.NEAREST,
                                    Formula.FUSE_LEAST,
                                    Input.of("I_load", inverter.worstCurrent()),
                                    Input.of("f", load)))),
                    fittedRating.isPresent(),
                    interrupts(family),
                    proposal);
        }

        /**
         * The conductor that the fuse must protect: of its cables, and of those that no fuse names, the one that bears
         * least. The return carries the same current as the feed, so a thinner one counts though no fuse sits in it.
         */
        private Figure<Current> weakestConductor() {
            List<String> ids = fuse == null ? List.of() : fuse.protects();
            return supply.runs().stream()
                    .filter(run -> ids.contains(run.cable().id())
                            || !guarded.contains(run.cable().id()))
                    .map(SupplyFigures.RunFigures::allowed)
                    .min(Comparator.comparing(Figure::value))
                    .orElseGet(() -> supply.runs().get(0).allowed());
        }

        private FuseFamilyRow row(FuseFamily family) {
            return tables.fuses().of(Ids.of(family));
        }

        private Optional<FuseFamily> propose(FuseRange range) {
            return PREFERENCE.stream()
                    .filter(family -> canInterrupt(family)
                            && range.choose(row(family).ratings()).isPresent())
                    .findFirst();
        }

        private boolean canInterrupt(FuseFamily family) {
            return row(family)
                    .interruptingAt(bank.restFull().value())
                    .map(found -> found.value().compareTo(bank.shortCircuit().value()) >= 0)
                    .orElse(false);
        }

        private Optional<Figure<Current>> interrupts(Optional<FuseFamily> family) {
            Given<Current> stated = fuse == null ? null : fuse.interrupting();
            if (stated != null && stated.value() != null) {
                return Optional.of(book.stated(key + ".interrupts", stated));
            }
            return family.flatMap(f -> row(f).interruptingAt(bank.restFull().value()))
                    .map(found -> book.enter(
                            key + ".interrupts",
                            found.value(),
                            Rounding.DOWN,
                            Formula.INTERRUPTING,
                            Input.of("I", found)));
        }
    }

    /** The name on its tag; "main" for a fuse that the job lacks. */
    public String id() {
        return fuse == null ? "main" : Objects.requireNonNull(fuse).id();
    }
}
