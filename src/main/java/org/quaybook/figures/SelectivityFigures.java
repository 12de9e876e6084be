package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.quaybook.calc.Selectivity;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Rounding;
import org.quaybook.reference.Found;

/**
 * Two fuses in one path, and which opens first. Holds for overloads and moderate shorts; a dead short that exceeds what
 * both let through may open both.
 *
 * @param upstream the fuse nearer to the cells
 * @param downstream the fuse nearer to the fault
 * @param ratio rating of the one over that of the other, seen from the current through the other
 * @param needed ratio from which the downstream one surely opens first
 */
public record SelectivityFigures(
        FuseFigures upstream, FuseFigures downstream, Figure<Ratio> ratio, Figure<Ratio> needed) {

    /** Whether the fuse nearer to the fault surely opens first. */
    public boolean downstreamFirst() {
        return ratio.value().compareTo(needed.value()) >= 0;
    }

    static List<SelectivityFigures> of(List<FuseFigures> fuses, BankFigures bank, Tables tables, FigureBook book) {
        List<SelectivityFigures> pairs = new ArrayList<>();
        for (FuseFigures upstream : fuses) {
            for (FuseFigures downstream : fuses) {
                if (follows(upstream, downstream, fuses)) {
                    pair(upstream, downstream, bank, tables, book).ifPresent(pairs::add);
                }
            }
        }
        return List.copyOf(pairs);
    }

    /**
     * Strings feed main fuses, main fuses feed branches that are not known to be connected elsewhere; of two in one cable
     * the farther follows the nearer.
     */
    private static boolean follows(FuseFigures upstream, FuseFigures downstream, List<FuseFigures> all) {
        List<String> through =
                Optional.ofNullable(downstream.fuse()).map(Fuse::through).orElse(List.of());
        if (!through.isEmpty()) {
            return !upstream.id().equals(downstream.id())
                    && (upstream.role() == FuseRole.STRING
                            ? all.stream().noneMatch(it -> passes(through, it))
                            : passes(through, upstream));
        }
        if (upstream.role() != downstream.role()) {
            return upstream.role().compareTo(downstream.role()) != 0
                    && rank(upstream.role()) + 1 == rank(downstream.role());
        }
        return upstream.role() == FuseRole.MAIN
                && upstream.fuse() != null
                && downstream.fuse() != null
                && upstream.fuse().protects().stream()
                        .anyMatch(downstream.fuse().protects()::contains)
                && nearer(upstream, downstream);
    }

    /** What passes a cable passes the fuse in it. */
    private static boolean passes(List<String> through, FuseFigures fuse) {
        return through.contains(fuse.id())
                || (fuse.fuse() != null && fuse.fuse().protects().stream().anyMatch(through::contains));
    }

    private static int rank(FuseRole role) {
        return switch (role) {
            case STRING -> 0;
            case MAIN -> 1;
            case BRANCH -> 2;
        };
    }

    private static boolean nearer(FuseFigures one, FuseFigures other) {
        Optional<Length> near = Given.maybe(Objects.requireNonNull(one.fuse()).distance());
        Optional<Length> far = Given.maybe(Objects.requireNonNull(other.fuse()).distance());
        return near.isPresent() && far.isPresent() && near.get().compareTo(far.get()) < 0;
    }

    private static Optional<SelectivityFigures> pair(
            FuseFigures upstream, FuseFigures downstream, BankFigures bank, Tables tables, FigureBook book) {
        if (upstream.rating().isEmpty()
                || downstream.rating().isEmpty()
                || upstream.family().isEmpty()
                || downstream.family().isEmpty()) {
            return Optional.empty();
        }
        boolean shared = upstream.role() == FuseRole.STRING;
        Ratio share = shared ? bank.worstShare().value() : Ratio.WHOLE;
        String key = "selectivity." + upstream.id() + "-" + downstream.id();
        Figure<Ratio> ratio = book.enter(
                key + ".ratio",
                Selectivity.ratio(
                        upstream.rating().get().value(),
                        share,
                        downstream.rating().get().value()),
                Rounding.DOWN,
                Formula.SELECTIVITY,
                Input.of("a", upstream.rating().get()),
                Input.of("b", downstream.rating().get()),
                shared ? Input.of("share", bank.worstShare()) : Input.usual("share", share, Reason.WHOLE_CURRENT));
        Found<Double> from = tables.fuses()
                .selectiveFrom(
                        Ids.of(upstream.family().get()),
                        Ids.of(downstream.family().get()));
        Figure<Ratio> needed = book.enter(
                key + ".needed", new Ratio(from.value()), Rounding.UP, Formula.FROM_TABLE, Input.of("", from));
        return Optional.of(new SelectivityFigures(upstream, downstream, ratio, needed));
    }
}
