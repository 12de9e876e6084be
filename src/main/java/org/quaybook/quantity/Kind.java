package org.quaybook.quantity;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A dimension: its name, the units it may be written in (the main one first) and how a record of it is made.
 *
 * @param name the dimension in English, for messages about a program's mistake and for the schema
 * @param units accepted units, the main one first
 * @param make from the canonical value to the quantity
 */
public record Kind<Q extends Quantity>(String name, List<Unit> units, DoubleFunction<Q> make) {

    public Kind {
        units = List.copyOf(units);
    }

    static <Q extends Quantity> Kind<Q> of(String name, DoubleFunction<Q> make, Unit... units) {
        return new Kind<>(name, List.of(units), make);
    }

    /** The unit that programs are told values in: what {@link Quantity#canonical()} counts in, and per cent for a share. */
    public Unit mainUnit() {
        return units.get(0);
    }

    /** The accepted unit of this spelling, if there is one. */
    public Optional<Unit> unit(String spelling) {
        return units.stream().filter(unit -> unit.isWritten(spelling)).findFirst();
    }

    /**
     * The quantity for a number written in a unit of this kind.
     *
     * @throws IllegalArgumentException if the value is not finite, or negative where that is meaningless
     */
    public Q of(double written, Unit unit) {
        return make.apply(unit.toCanonical(written));
    }

    @Override
    public String toString() {
        return name;
    }
}
