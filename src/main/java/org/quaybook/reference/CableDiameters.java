package org.quaybook.reference;

import java.util.Optional;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Length;

/** Usual outside diameters of flexible single-core cables, for tags of cables that nobody has measured. */
public final class CableDiameters {

    private static final CableDiameters STANDARD = new CableDiameters(Table.load("cable-diameters"));

    private static final double MILLIMETRES = 1000;

    private final Table table;

    CableDiameters(Table table) {
        this.table = table.ascending("size").ascending("diameter");
    }

    /** The project's own table. */
    public static CableDiameters standard() {
        return STANDARD;
    }

    /**
     * The usual diameter: that of the row's size, else of the next larger one, so that a tag is rather too long.
     *
     * @return empty for a conductor larger than the table has
     */
    public Optional<Found<Length>> of(ConductorSize size) {
        return table.rows().stream()
                .filter(row -> row.number("size") >= size.area().squareMillimetres() - 1e-9)
                .findFirst()
                .map(row -> row.found(new Length(row.number("diameter") / MILLIMETRES)));
    }
}
