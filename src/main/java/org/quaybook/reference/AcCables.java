package org.quaybook.reference;

import java.util.List;
import java.util.Optional;
import org.quaybook.quantity.ConductorSize;
import org.quaybook.quantity.Current;
import org.quaybook.quantity.Temperature;

/** The current that AC cables of two or three cores may carry, by how they are laid (IEC 60364-5-52). */
public final class AcCables {

    private static final List<String> WAYS = List.of("in-insulation", "in-conduit", "on-surface");

    private static final AcCables STANDARD = of(TableShelf.standard());

    private final Table table;

    AcCables(Table table) {
        this.table = table;
        for (TableRow row : table.rows()) {
            if (WAYS.stream().anyMatch(way -> row.number(way) <= 0)
                    || row.number(WAYS.get(0)) > row.number(WAYS.get(1))
                    || row.number(WAYS.get(1)) > row.number(WAYS.get(2))) {
                throw new TableFault(table.name(), row.line(), "a way that cools better carries less");
            }
        }
    }

    /**
     * By an installer's copies.
     *
     * @throws TableFault if the tables do not go together
     */
    public static AcCables of(TableShelf shelf) {
        return new AcCables(shelf.table("ampacity-ac"));
    }

    /** The project's own table. */
    public static AcCables standard() {
        return STANDARD;
    }

    /** The ways of laying, the one that cools worst first. */
    public static List<String> ways() {
        return WAYS;
    }

    /**
     * Current of one of its lines.
     *
     * @param size metric size of its conductors
     * @param insulation temperature rating of the insulation; the rows of the highest rating not above it count
     * @param way one of {@link #ways()}
     * @return empty if the table has no such size, or nothing for insulation rated so low
     */
    public Optional<Found<Current>> allowed(ConductorSize size, Temperature insulation, String way) {
        return table.rows().stream()
                .filter(row -> row.number("insulation") <= insulation.celsius())
                .filter(row -> ConductorSize.metric(row.number("size")).equals(size))
                .reduce((lower, higher) -> higher)
                .map(row -> row.foundAt(
                        new Current(row.number(way)), size + ", " + row.text("insulation") + " °C, " + way));
    }
}
