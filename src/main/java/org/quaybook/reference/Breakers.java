package org.quaybook.reference;

import java.util.Optional;
import org.quaybook.quantity.Current;

/** Rated currents of circuit breakers for household and similar use (IEC 60898-1). */
public final class Breakers {

    private static final Breakers STANDARD = of(TableShelf.standard());

    private final Table table;

    Breakers(Table table) {
        this.table = table;
    }

    /**
     * By an installer's copies.
     *
     * @throws TableFault if the tables do not go together
     */
    public static Breakers of(TableShelf shelf) {
        return new Breakers(shelf.table("breaker-ratings"));
    }

    /** The project's own table. */
    public static Breakers standard() {
        return STANDARD;
    }

    /** The largest rating on sale that is not above a current; empty below the smallest. */
    public Optional<Found<Current>> largest(Current most) {
        TableRow row = table.row("household");
        return row.numbers("ratings-a").stream()
                .map(Current::new)
                .filter(rating -> rating.compareTo(most) <= 0)
                .reduce((smaller, larger) -> larger)
                .map(row::found);
    }
}
