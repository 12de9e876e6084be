package org.quaybook.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.quaybook.job.Changeover;
import org.quaybook.job.ChangeoverKind;
import org.quaybook.job.Generator;
import org.quaybook.job.Given;
import org.quaybook.job.Job;
import org.quaybook.job.NeutralBond;
import org.quaybook.job.Shore;
import org.quaybook.job.Source;
import org.quaybook.job.Transformer;

/**
 * Where neutral and earth must be tied in each mode, and what the job says (ISO 13297:2020 6.8, seen: shore neutral is
 * earthed ashore only, that behind an isolating transformer at its secondary side, that of inverter or generator at that
 * source).
 *
 * @param modes the modes that the job has
 */
public record BondLogic(List<Mode> modes) {

    public BondLogic {
        modes = List.copyOf(modes);
    }

    /** Where the one bond belongs. */
    public enum BondPlace {
        AT_INVERTER,
        ASHORE,
        AT_TRANSFORMER,
        AT_GENERATOR,
        /** A single appliance at a floating output needs none. */
        NOT_NEEDED
    }

    /** What the job says against what must be. */
    public enum Verdict {
        RIGHT,
        WRONG,
        UNKNOWN
    }

    /**
     * One mode.
     *
     * @param mode what feeds
     * @param must where the one bond belongs
     * @param inverterBond whether the inverter's bond ties the live neutral then; empty if nobody knows
     * @param ownBond whether that of the generator or the transformer does; empty if nobody knows or neither feeds
     * @param verdict whether exactly the right bond is closed
     */
    public record Mode(
            SupplyMode mode,
            BondPlace must,
            Optional<Boolean> inverterBond,
            Optional<Boolean> ownBond,
            Verdict verdict) {}

    /** The mode, if the job has it. */
    public Optional<Mode> of(SupplyMode mode) {
        return modes.stream().filter(it -> it.mode() == mode).findFirst();
    }

    /** Whether any mode but the inverter's own and the generator's has the inverter's bond closed. */
    public boolean tiedOnShore() {
        return modes.stream()
                .filter(it -> it.must() == BondPlace.ASHORE || it.must() == BondPlace.AT_TRANSFORMER)
                .anyMatch(it -> it.inverterBond().orElse(false));
    }

    static BondLogic of(Job job) {
        Optional<NeutralBond> bond = Given.maybe(job.inverter().neutralBond());
        Optional<Changeover> changeover = Optional.ofNullable(job.inverter().changeover());
        Optional<ChangeoverKind> kind = changeover.flatMap(it -> it.kind().known());
        boolean automatic = kind.filter(ChangeoverKind.AUTOMATIC::equals).isPresent();
        List<Mode> modes = new ArrayList<>();
        modes.add(onInverter(job, bond));
        if (job.shore() != null) {
            modes.add(onShore(
                    automatic ? SupplyMode.PASS_THROUGH : SupplyMode.SHORE, job.shore(), elsewhere(bond, changeover)));
        }
        if (job.generator() != null) {
            modes.add(onGenerator(job.generator(), elsewhere(bond, changeover)));
        }
        return new BondLogic(modes);
    }

    private static Mode onInverter(Job job, Optional<NeutralBond> bond) {
        boolean fixedWiring =
                job.acCircuits().stream().anyMatch(circuit -> circuit.source().value() == Source.INVERTER);
        Optional<Boolean> closed = bond.map(it -> it != NeutralBond.NONE);
        return new Mode(
                SupplyMode.INVERTER,
                fixedWiring ? BondPlace.AT_INVERTER : BondPlace.NOT_NEEDED,
                closed,
                Optional.empty(),
                fixedWiring ? verdict(closed, true) : Verdict.RIGHT);
    }

    private static Mode onShore(SupplyMode mode, Shore shore, Optional<Boolean> inverterBond) {
        Transformer transformer = shore.transformer();
        if (transformer == null) {
            return new Mode(mode, BondPlace.ASHORE, inverterBond, Optional.empty(), verdict(inverterBond, false));
        }
        Optional<Boolean> own = Given.maybe(transformer.neutralTied());
        return new Mode(mode, BondPlace.AT_TRANSFORMER, inverterBond, own, ofTwo(inverterBond, own));
    }

    /** The tie of the source that feeds must be the only one. */
    private static Verdict ofTwo(Optional<Boolean> inverterBond, Optional<Boolean> own) {
        Verdict here = verdict(own, true);
        Verdict elsewhere = verdict(inverterBond, false);
        return here == Verdict.WRONG || elsewhere == Verdict.WRONG
                ? Verdict.WRONG
                : here == Verdict.UNKNOWN ? here : elsewhere;
    }

    private static Mode onGenerator(Generator generator, Optional<Boolean> inverterBond) {
        Optional<Boolean> own = Given.maybe(generator.neutralBond())
                .filter(it -> it != NeutralBond.INVERTER_ONLY)
                .map(it -> it == NeutralBond.ALWAYS);
        Verdict both = inverterBond.filter(closed -> closed).isPresent() ? Verdict.WRONG : verdict(own, true);
        return new Mode(SupplyMode.GENERATOR, BondPlace.AT_GENERATOR, inverterBond, own, both);
    }

    /** Whether the inverter's bond ties the neutral of another source: not where the changeover parts the neutrals. */
    private static Optional<Boolean> elsewhere(Optional<NeutralBond> bond, Optional<Changeover> changeover) {
        if (bond.isEmpty()) {
            return Optional.empty();
        }
        if (bond.get() != NeutralBond.ALWAYS) {
            return Optional.of(false);
        }
        return Optional.of(!changeover.map(BondLogic::partsNeutrals).orElse(false));
    }

    private static boolean partsNeutrals(Changeover changeover) {
        ChangeoverKind kind = changeover.kind().value();
        return kind == ChangeoverKind.NONE
                || (kind == ChangeoverKind.MANUAL && Given.isYes(changeover.switchesNeutral()));
    }

    private static Verdict verdict(Optional<Boolean> closed, boolean must) {
        return closed.map(it -> it == must ? Verdict.RIGHT : Verdict.WRONG).orElse(Verdict.UNKNOWN);
    }
}
