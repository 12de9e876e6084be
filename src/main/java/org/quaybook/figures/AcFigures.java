package org.quaybook.figures;

import java.util.List;
import java.util.Optional;
import org.quaybook.job.AcCircuit;
import org.quaybook.job.Appliance;
import org.quaybook.job.Rcd;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Resistance;

/**
 * The AC side.
 *
 * @param inverterFault the most that the inverter gives into a short; empty if its output voltage is unknown
 * @param circuits each circuit
 * @param shoreCable the cable behind the shore inlet; empty if its size is unknown or no table holds it
 * @param rcds each RCD
 * @param bonds where neutral and earth are tied in each mode
 */
public record AcFigures(
        Optional<Figure<Current>> inverterFault,
        List<CircuitFigures> circuits,
        Optional<CableFigures> shoreCable,
        List<RcdFigures> rcds,
        BondLogic bonds) {

    public AcFigures {
        circuits = List.copyOf(circuits);
        rcds = List.copyOf(rcds);
    }

    /** What ends a fault. */
    public enum Opener {
        BREAKER,
        RCD,
        /** The inverter limits its current and switches off by itself (from memory). */
        INVERTER,
        NOBODY
    }

    /**
     * What an AC cable may carry.
     *
     * @param allowed as it is laid; where nobody has written how, as in the way that cools worst
     * @param laidKnown whether the job says how it is laid
     * @param allowedAtBest in the way that cools best
     * @param mostBreaker largest breaker on sale for it; empty where the table of breakers is not of its kind
     */
    public record CableFigures(
            Figure<Current> allowed, boolean laidKnown, Current allowedAtBest, Optional<Figure<Current>> mostBreaker) {}

    /**
     * One circuit.
     *
     * @param cable what its cable may carry; empty if its size is unknown or no table holds it
     * @param largest the appliance on it that takes most; empty if none is written to hang on it, or its voltage is unknown
     * @param trip current that surely trips its breaker at once; empty if the breaker is not known well enough
     * @param onShort what ends a short while the inverter feeds; empty if that cannot be told or does not happen
     * @param onEarthFault what ends an earth fault while the inverter feeds; empty as above
     */
    public record CircuitFigures(
            AcCircuit circuit,
            Optional<CableFigures> cable,
            Optional<Largest> largest,
            Optional<Figure<Current>> trip,
            Optional<Opener> onShort,
            Optional<Opener> onEarthFault) {}

    /** An appliance with what it takes of its circuit. */
    public record Largest(Appliance appliance, Figure<Current> current) {}

    /**
     * One RCD.
     *
     * @param standing leakage of all appliances that state one, as if all hung on it; empty if none does
     * @param budget what it should see at rest; empty if its rating is unknown
     * @param mostLoop largest earth loop at which a fault trips it before 50 V stand on metal; empty as above
     */
    public record RcdFigures(
            Rcd rcd,
            Optional<Figure<Current>> standing,
            Optional<Figure<Current>> budget,
            Optional<Figure<Resistance>> mostLoop) {}
}
