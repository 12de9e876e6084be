package org.quaybook.figures;

import org.quaybook.reference.AcCables;
import org.quaybook.reference.Batteries;
import org.quaybook.reference.Breakers;
import org.quaybook.reference.CableDiameters;
import org.quaybook.reference.Conductors;
import org.quaybook.reference.Earths;
import org.quaybook.reference.Fuses;
import org.quaybook.reference.Inverters;
import org.quaybook.reference.RestVoltages;
import org.quaybook.reference.Rulebook;
import org.quaybook.reference.Spreads;
import org.quaybook.reference.TableShelf;

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
        Earths earths,
        CableDiameters diameters) {

    /** The tables that come with the program, and a rulebook by name. */
    public static Tables standard(String rulebook) {
        return of(rulebook, TableShelf.standard());
    }

    /**
     * The tables of a shelf, and a rulebook by name.
     *
     * @throws org.quaybook.reference.TableFault if the tables do not go together
     */
    public static Tables of(String rulebook, TableShelf shelf) {
        return new Tables(
                Rulebook.named(rulebook, shelf),
                Batteries.standard(),
                RestVoltages.standard(),
                Conductors.of(shelf),
                Fuses.of(shelf),
                Inverters.standard(),
                Spreads.standard(),
                AcCables.of(shelf),
                Breakers.of(shelf),
                Earths.of(shelf),
                CableDiameters.standard());
    }
}
