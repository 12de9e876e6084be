package org.quaybook.reference;

import org.quaybook.quantity.Area;
import org.quaybook.quantity.Temperature;

/** Smallest earth and bonding conductors. */
public final class Earths {

    private static final Earths STANDARD = of(TableShelf.standard());

    private final Table protective;
    private final Table least;
    private final Table adiabatic;

    Earths(Table protective, Table least, Table adiabatic) {
        this.protective = protective.ascending("line-above-mm2");
        this.least = least;
        this.adiabatic = adiabatic;
    }

    /**
     * By an installer's copies.
     *
     * @throws TableFault if the tables do not go together
     */
    public static Earths of(TableShelf shelf) {
        return new Earths(shelf.table("protective-conductors"), shelf.table("earths"), shelf.table("adiabatic"));
    }

    /** The project's own table. */
    public static Earths standard() {
        return STANDARD;
    }

    /**
     * Smallest copper protective conductor for a line conductor of the same material (IEC 60364-5-54 Table 54.2).
     *
     * @param line cross-section of the line conductor, more than zero
     * @throws NotInTable for no cross-section at all
     */
    public Found<Area> protective(Area line) {
        TableRow row = protective.rows().stream()
                .filter(candidate -> candidate.number("line-above-mm2") < line.squareMillimetres())
                .reduce((thinner, thicker) -> thicker)
                .orElseThrow(() -> new NotInTable(
                        protective.name(), line.squareMillimetres() + " mm²", "line conductors above 0 mm²"));
        return row.found(new Area(row.number("fixed-mm2") + row.number("share-of-line") * line.squareMillimetres()));
    }

    /** Smallest protective conductor that is no core of its cable. */
    public Found<Area> separate() {
        return least("protective-separate");
    }

    /** Smallest conductor from a case to earth, whatever the positive. */
    public Found<Area> ofCase() {
        return least("case");
    }

    /**
     * Smallest bond of hull, body or metalwork.
     *
     * @throws NotInTable if the table says nothing for the rulebook
     */
    public Found<Area> bond(String rulebook) {
        return least("bond-" + rulebook);
    }

    /**
     * Factor k of S = I √t / k for copper.
     *
     * @param inCable whether the conductor is a core of a cable
     * @param insulation temperature rating of its insulation; the row of the highest rating not above it counts
     * @throws NotInTable for insulation rated below the first row
     */
    public Found<Double> k(boolean inCable, Temperature insulation) {
        String laid = inCable ? "core" : "separate";
        return adiabatic.rows().stream()
                .filter(row -> row.text("laid").equals(laid) && row.number("insulation") <= insulation.celsius())
                .reduce((lower, higher) -> higher)
                .map(row -> row.found(row.number("k")))
                .orElseThrow(() -> new NotInTable(adiabatic.name(), insulation.celsius() + " °C", adiabatic.keys()));
    }

    private Found<Area> least(String item) {
        TableRow row = least.row(item);
        return row.found(new Area(row.number("least-mm2")));
    }
}
