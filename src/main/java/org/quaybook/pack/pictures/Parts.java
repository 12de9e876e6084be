package org.quaybook.pack.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.quaybook.figures.FuseFigures;
import org.quaybook.figures.SupplyFigures.RunFigures;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.ChargeKind;
import org.quaybook.job.Charging;
import org.quaybook.job.FuseRole;
import org.quaybook.job.Given;
import org.quaybook.job.Isolator;
import org.quaybook.job.Job;
import org.quaybook.job.Pole;
import org.quaybook.job.Rcd;
import org.quaybook.job.Socket;
import org.quaybook.job.Source;
import org.quaybook.record.ChargerName;

/** How the parts of a job hang together, as far as the job says it. */
final class Parts {

    private final Subject subject;
    private final Job job;
    private final List<RunFigures> plus;
    private final List<RunFigures> minus;

    Parts(Subject subject) {
        this.subject = subject;
        this.job = subject.job();
        this.plus = chain(subject.figures().supply().runs().stream()
                .filter(RunFigures::positive)
                .toList());
        this.minus = chain(subject.figures().supply().runs().stream()
                .filter(Parts::negative)
                .toList());
    }

    private static boolean negative(RunFigures run) {
        return run.cable().side().filter(Pole.NEGATIVE::equals).isPresent();
    }

    /** The cables that follow each other, from where none comes before; the longest such row. */
    private static List<RunFigures> chain(List<RunFigures> runs) {
        List<RunFigures> longest = List.of();
        for (RunFigures first : runs) {
            List<RunFigures> chain = follow(first, runs);
            if (chain.size() > longest.size()) {
                longest = chain;
            }
        }
        return longest;
    }

    private static List<RunFigures> follow(RunFigures first, List<RunFigures> runs) {
        List<RunFigures> chain = new ArrayList<>(List.of(first));
        Optional<RunFigures> next = Optional.of(first);
        while (next.isPresent()) {
            String end = name(next.get().cable().to());
            next = runs.stream()
                    .filter(run -> name(run.cable().from()).equals(end) && !chain.contains(run))
                    .findFirst();
            next.ifPresent(chain::add);
        }
        return chain;
    }

    private static String name(String end) {
        return end.strip().toLowerCase(Locale.ROOT);
    }

    /** Cables from the bank's plus to the inverter, in their order. */
    List<RunFigures> plus() {
        return plus;
    }

    /** Cables from the bank's minus to the inverter. */
    List<RunFigures> minus() {
        return minus;
    }

    /** Cables that lie in neither row. */
    List<RunFigures> others() {
        return subject.figures().supply().runs().stream()
                .filter(run -> !plus.contains(run) && !minus.contains(run))
                .toList();
    }

    /** Main fuses of a cable. */
    List<FuseFigures> fusesOf(RunFigures run) {
        return fuses(FuseRole.MAIN).stream()
                .filter(fuse -> fuse.fuse() != null
                        && fuse.fuse().protects().contains(run.cable().id()))
                .toList();
    }

    /** Main fuses that no cable of the way to the inverter has: what the job lacks is one of them. */
    List<FuseFigures> looseFuses() {
        return fuses(FuseRole.MAIN).stream()
                .filter(fuse -> plus.stream().noneMatch(run -> fusesOf(run).contains(fuse))
                        && minus.stream().noneMatch(run -> fusesOf(run).contains(fuse)))
                .toList();
    }

    List<FuseFigures> fuses(FuseRole role) {
        return subject.figures().fuses().stream()
                .filter(fuse -> fuse.role() == role)
                .toList();
    }

    /** Fuses of what hangs on the battery itself, of no charger. */
    List<FuseFigures> branches() {
        return fuses(FuseRole.BRANCH).stream()
                .filter(fuse -> chargers(fuse).isEmpty())
                .toList();
    }

    /** The fuse in a charger's own conductor. */
    Optional<FuseFigures> fuseOf(Charging charger) {
        return fuses(FuseRole.BRANCH).stream()
                .filter(fuse -> chargers(fuse).contains(charger))
                .findFirst();
    }

    /** The chargers in whose conductor a fuse sits. */
    List<Charging> chargers(FuseFigures fuse) {
        return fuse.fuse() == null ? List.of() : subject.figures().way().chargers(fuse.fuse());
    }

    /** Isolators that make one of these dead. */
    List<Isolator> isolatorsOf(Set<String> what) {
        return job.isolators().stream()
                .filter(isolator -> isolator.isolates().stream().anyMatch(what::contains))
                .toList();
    }

    boolean shore() {
        return job.shore() != null;
    }

    /** Whether an AC generator feeds circuits or a charger. */
    boolean generator() {
        return job.generator() != null
                || chargers(ChargeKind.GENERATOR).findAny().isPresent();
    }

    /** Whether the generator's current reaches outlets. */
    boolean generatorFeeds() {
        return job.generator() != null
                && job.sockets().stream()
                        .anyMatch(socket -> Given.maybe(socket.generatorOn())
                                .filter(Source.GENERATOR::equals)
                                .isPresent());
    }

    /** Whether the job says how the generator is chosen as source. */
    boolean generatorChoiceKnown() {
        return job.generator() != null && job.generator().chosenBy() != null;
    }

    /** Whether the outlets that the inverter never feeds hang on the generator too. */
    boolean generatorFeedsTheRest() {
        return generatorFeeds()
                && job.sockets().stream()
                        .filter(socket -> !Given.maybe(socket.shoreOff())
                                .filter(Source.INVERTER::equals)
                                .isPresent())
                        .anyMatch(socket -> Given.maybe(socket.generatorOn())
                                .filter(Source.GENERATOR::equals)
                                .isPresent());
    }

    private Stream<Charging> chargers(ChargeKind kind) {
        return job.charging().stream().filter(charging -> charging.kind() == kind);
    }

    /** Whether a charger runs on AC. */
    static boolean onMains(Charging charging) {
        return charging.kind() == ChargeKind.SHORE_CHARGER || charging.kind() == ChargeKind.GENERATOR;
    }

    /** What feeds a charger that runs on AC. */
    static Source fedBy(Charging charging) {
        return Given.maybe(charging.fedBy())
                .orElse(charging.kind() == ChargeKind.GENERATOR ? Source.GENERATOR : Source.SHORE);
    }

    List<Charging> mainsChargers(Source source) {
        return job.charging().stream()
                .filter(charging -> onMains(charging) && fedBy(charging) == source)
                .toList();
    }

    Optional<ChangeoverKind> changeover() {
        Changeover changeover = job.inverter().changeover();
        return changeover == null ? Optional.empty() : Given.maybe(changeover.kind());
    }

    /** Whether the circuits of the inverter can also be fed from outside. */
    boolean changesOver() {
        return (shore() || generatorFeeds())
                && changeover().filter(kind -> kind != ChangeoverKind.NONE).isPresent();
    }

    /** Whether the changeover is a switch of its own: turned by hand, and nothing passes through the inverter. */
    boolean changesOverOutside() {
        return changesOver()
                && changeover().filter(ChangeoverKind.MANUAL::equals).isPresent()
                && job.inverter().passThrough() == null;
    }

    /** The RCD that stands right after the shore inlet, before the changeover. */
    Optional<Rcd> shoreRcd() {
        return job.shore() == null
                ? Optional.empty()
                : job.rcds().stream()
                        .filter(rcd -> rcd.id().equals(job.shore().rcd())
                                && Given.maybe(rcd.source())
                                        .filter(Source.SHORE::equals)
                                        .isPresent())
                        .findFirst();
    }

    /**
     * Circuits that one RCD guards and one source feeds.
     *
     * @param rcd empty if none does, or if the one right after the shore inlet does
     */
    record Group(Source source, Optional<Rcd> rcd, List<AcCircuit> circuits) {
        Group {
            circuits = List.copyOf(circuits);
        }
    }

    /** All circuits and all RCDs behind the inlet, in groups. */
    List<Group> groups(Source source) {
        List<Group> groups = new ArrayList<>();
        List<AcCircuit> fed = job.acCircuits().stream()
                .filter(circuit -> Given.maybe(circuit.source()).orElse(Source.NOTHING) == source)
                .toList();
        Optional<Rcd> first = shoreRcd();
        for (Rcd rcd : job.rcds()) {
            List<AcCircuit> guarded = fed.stream()
                    .filter(circuit -> rcd.id().equals(circuit.rcd()))
                    .toList();
            boolean upstream = first.filter(rcd::equals).isPresent();
            boolean idle =
                    job.acCircuits().stream().noneMatch(circuit -> rcd.id().equals(circuit.rcd()))
                            && Given.maybe(rcd.source()).filter(source::equals).isPresent();
            if (!guarded.isEmpty() || (idle && !upstream)) {
                groups.add(new Group(source, upstream ? Optional.empty() : Optional.of(rcd), guarded));
            }
        }
        List<AcCircuit> bare =
                fed.stream().filter(circuit -> circuit.rcd() == null).toList();
        if (!bare.isEmpty()) {
            groups.add(new Group(source, Optional.empty(), bare));
        }
        return groups;
    }

    /** Outlets that the inverter feeds with shore power off. */
    List<String> inverterOutlets() {
        return outlets(true);
    }

    /** Outlets that are dead with shore power off. */
    List<String> shoreOutlets() {
        return outlets(false);
    }

    private List<String> outlets(boolean onInverter) {
        return job.sockets().stream()
                .filter(socket -> Given.maybe(socket.shoreOff())
                                .filter(Source.INVERTER::equals)
                                .isPresent()
                        == onInverter)
                .map(Socket::name)
                .toList();
    }

    /** The name that the job gives a charger, or what it is. */
    String nameOf(Charging charging) {
        return ChargerName.of(charging, subject.words());
    }
}
