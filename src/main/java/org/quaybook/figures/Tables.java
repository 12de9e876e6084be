package org.quaybook.figures;

import org.quaybook.reference.AcCables;
import org.quaybook.reference.Batteries;
import org.quaybook.reference.Breakers;
import org.quaybook.reference.Conductors;
import org.quaybook.reference.Earths;
import org.quaybook.reference.Fuses;
import org.quaybook.reference.Inverters;
import org.quaybook.reference.RestVoltages;
import org.quaybook.reference.Rulebook;
import org.quaybook.reference.Spreads;

/** The tables that a job is calculated with. */
public record Tables(
        Rulebook rules,
        Batteries batteries,
        RestVoltages restVoltages,
        Conductors conductors,
        Fuses fuses,
        Inverters inverters,
        Spreads spreads,
        AcCables acCables,
        Breakers breakers,
        Earths earths) {

    /** The tables that come with the program, and a rulebook by name. */
    public static Tables standard(String rulebook) {
        return new Tables(
                Rulebook.named(rulebook),
                Batteries.standard(),
                RestVoltages.standard(),
                Conductors.standard(),
                Fuses.standard(),
                Inverters.standard(),
                Spreads.standard(),
                AcCables.standard(),
                Breakers.standard(),
                Earths.standard());
    }
}
