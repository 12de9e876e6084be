package org.quaybook.figures;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.quaybook.job.Fuse;
import org.quaybook.job.FuseFamily;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Length;
import org.quaybook.quantity.Ratio;
import org.quaybook.quantity.Voltage;

/**
 * A fuse on the DC side: what it must be, what is fitted, what is proposed.
 *
 * @param fuse the job's entry; null for a main fuse that the job lacks
 * @param role what it is there for
 * @param load largest lasting current through it
 * @param least least rating that bears the load
 * @param most largest rating that protects the conductors
 * @param mustInterrupt current that it must be able to interrupt, at its place
 * @param family fitted or proposed family; empty if no family of the table would do
 * @param familyFitted whether the job states the family
 * @param rating fitted or proposed rating; empty if no standard rating lies in the range
 * @param ratingFitted whether the job states the rating
 * @param interrupts what it interrupts at the bank's highest voltage, or in usual charging; empty if it is made for
 *     neither
 * @param usualVoltage what the bank reaches in usual charging, where the family is made for that alone and the job does
 *     not say what the chargers are set to
 * @param loading load over rating
 * @param margin largest rating that protects the conductors over the rating
 * @param mostDistance longest conductor before it; empty if the rulebook names none for this case
 * @param proposal the least standard rating of the family inside the range, for the remedy
 * @param other a family that has a rating inside the range and breaks what it must, where the fitted one has none
 * @param canBeBroken whether any family of the table breaks what it must
 */
public record FuseFigures(
        @Nullable Fuse fuse,
        FuseRole role,
        Figure<Current> load,
        Figure<Current> least,
        Figure<Current> most,
        Figure<Current> mustInterrupt,
        Optional<FuseFamily> family,
        boolean familyFitted,
        Optional<Figure<Current>> rating,
        boolean ratingFitted,
        Optional<Figure<Current>> interrupts,
        Optional<Figure<Voltage>> usualVoltage,
        Optional<Figure<Ratio>> loading,
        Optional<Figure<Ratio>> margin,
        Optional<Figure<Length>> mostDistance,
        Optional<Current> proposal,
        Optional<Other> other,
        boolean canBeBroken) {

    /** A fuse of another family. */
    public record Other(FuseFamily family, Current rating) {}

    /** Longer than any name a job may give, so that it clashes with none. */
    static final String MISSING = "main-fuse";

    /** The fuses of the job, and the main fuse to propose when it has none. */
    static List<FuseFigures> of(
            Job job,
            SharedWay way,
            BankFigures bank,
            FaultFigures fault,
            InverterFigures inverter,
            SupplyFigures supply,
            Tables tables,
            FigureBook book) {
        List<Fuse> fuses = job.fuses();
        Set<String> guarded =
                fuses.stream().flatMap(fuse -> fuse.protects().stream()).collect(Collectors.toUnmodifiableSet());
        Stream<@Nullable Fuse> all =
                hasMain(fuses, supply) ? fuses.stream() : Stream.concat(Stream.of((Fuse) null), fuses.stream());
        return all.map(fuse -> new FuseReckoning(
                                fuse, way, guarded, job.bank(), bank, fault, inverter, supply, tables, book)
                        .figures())
                .toList();
    }

    /** Whether a fuse sits in the feed: in a positive cable, or in any where none can be told to be positive. */
    private static boolean hasMain(List<Fuse> fuses, SupplyFigures supply) {
        Set<String> positive = supply.runs().stream()
                .filter(SupplyFigures.RunFigures::positive)
                .map(run -> run.cable().id())
                .collect(Collectors.toUnmodifiableSet());
        return fuses.stream()
                .filter(fuse -> roleOf(fuse) == FuseRole.MAIN)
                .anyMatch(fuse -> positive.isEmpty() || fuse.protects().stream().anyMatch(positive::contains));
    }

    static FuseRole roleOf(@Nullable Fuse fuse) {
        return fuse == null ? FuseRole.MAIN : Given.maybe(fuse.role()).orElse(FuseRole.MAIN);
    }

    /** The name on its tag; {@code main-fuse} for one that the job lacks. */
    public String id() {
        return fuse == null ? MISSING : Objects.requireNonNull(fuse).id();
    }
}
